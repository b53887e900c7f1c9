using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace Batch.Sheets.Tests;

public class RunRecordTests
{
    private static readonly byte[] Bytes = RunRecord.Json(SampleWeek.Made, SampleWeek.Facts);

    private static JsonNode Root => JsonNode.Parse(Bytes) ?? throw new InvalidOperationException("run.json is null");

    [Fact]
    public void It_satisfies_its_published_schema()
    {
        var schema = JsonSchema.FromText(RunRecord.Schema);
        var result = schema.Evaluate(Root, new EvaluationOptions { OutputFormat = OutputFormat.List });
        var wrong = result.Details.Where(detail => detail.HasErrors)
            .Select(detail => detail.InstanceLocation + ": " + string.Join("; ", detail.Errors?.Values ?? []));
        Assert.True(result.IsValid, string.Join("\n", wrong));
    }

    [Theory]
    [InlineData("legs/0/fuelLb/required", "fuelLb without required")]
    [InlineData("legs/0/log/0/overUtc", "log line without time over")]
    [InlineData("legs/3/why", "unplanned leg without why")]
    [InlineData("madeAt", "record without made at")]
    public void The_schema_refuses_a_record_without_a_fixed_name(string path, string why)
    {
        var root = Root;
        var parts = path.Split('/');
        var parent = parts[..^1].Aggregate(root, (node, part) => (int.TryParse(part, System.Globalization.CultureInfo.InvariantCulture, out var index)
            ? node[index]
            : node[part]) ?? throw new InvalidOperationException(path));
        parent.AsObject().Remove(parts[^1]);
        Assert.False(JsonSchema.FromText(RunRecord.Schema).Evaluate(root).IsValid, why);
    }

    [Fact]
    public void It_is_indented_UTF_8_with_line_feeds_and_no_byte_order_mark()
    {
        var text = Encoding.UTF8.GetString(Bytes);
        Assert.StartsWith("{\n  \"schema\": \"tripbatch-run/1\",\n  \"madeAt\": \"2026-12-03T16:20:00Z\",", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', text);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_week_gives_the_same_bytes() => Assert.Equal(Bytes, RunRecord.Json(SampleWeek.Made, SampleWeek.Facts));

    /// <summary>A route that begins at one level and steps up to another has both; the sheet says them too.</summary>
    [Fact]
    public void A_step_to_a_higher_level_is_there()
    {
        var first = SampleWeek.Made.Legs[0];
        var plan = (Batch.Flight.Plan.LegPlan.Planned)first.Plan;
        var cruise = plan.Profile.Slices.First(slice => slice.Phase == Batch.Flight.Plan.FlightPhase.Cruise);
        var step = plan with { Profile = plan.Profile with { Slices = [.. plan.Profile.Slices, cruise with { StartFt = 21_000, EndFt = 21_000 }] } };
        var leg = JsonNode.Parse(
            RunRecord.Json(SampleWeek.Made with { Legs = SampleWeek.Made.Legs.SetItem(0, first with { Plan = step }) }, SampleWeek.Facts))?["legs"]?[0];
        Assert.Equal((plan.Profile.Level.Value, 21_000.0), (leg?["levelFt"]?.GetValue<double>(), leg?["highestLevelFt"]?.GetValue<double>()));
        Assert.Equal(21_000, Views.RouteView.Of(step).StepTo?.Value);
        Assert.Null(Views.RouteView.Of(plan).StepTo);
        Assert.Equal(21_000, Views.CardView.Of(step).StepTo?.Value);
    }

    [Fact]
    public void Legs_that_could_not_be_planned_appear_with_the_reason()
    {
        var leg = Root["legs"]?[3];
        Assert.Equal("unplanned", leg?["state"]?.GetValue<string>());
        Assert.Equal("The route element NORRO is not known.", leg?["why"]?.GetValue<string>());
        Assert.Equal("row 17", Root["legs"]?[4]?["trip"]?.GetValue<string>());
    }

    [Fact]
    public void Every_leg_of_the_week_is_there_in_its_order() =>
        Assert.Equal(["T101/1", "T101/2", "T102/1", "T103/1", "row 17/0"], (Root["legs"]?.AsArray() ?? []).Select(leg => leg?["trip"] + "/" + leg?["leg"]));

    [Fact]
    public void Names_of_passengers_are_not_in_it()
    {
        var text = Encoding.UTF8.GetString(Bytes);
        Assert.All(SampleWeek.Made.Plan.Input.Manifest, line => Assert.DoesNotContain(line.Name, text, StringComparison.Ordinal));
        Assert.DoesNotContain("Mia", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_short_answer_says_of_every_leg_what_the_record_says_under_the_same_names()
    {
        var answer = (JsonNode.Parse(RunRecord.Answer(SampleWeek.Made, SampleWeek.Facts)) ?? throw new InvalidOperationException("The answer is null"))
            .AsObject();
        Assert.Equal(["schema", "madeAt", "toolVersion", "ruleSet", "problems", "counts", "legs"], answer.Select(member => member.Key));
        Assert.Equal("tripbatch-check/1", answer["schema"]?.GetValue<string>());
        Assert.All(answer.Where(member => member.Key is not ("schema" or "legs")),
            member => Assert.True(JsonNode.DeepEquals(Root[member.Key], member.Value), member.Key));
        var legs = Root["legs"]?.AsArray() ?? [];
        Assert.Equal(legs.Count, answer["legs"]?.AsArray().Count);
        foreach (var (whole, part) in legs.Zip(answer["legs"]?.AsArray() ?? []))
        {
            Assert.All(part?.AsObject() ?? [],
                member => Assert.True(whole?.AsObject().ContainsKey(member.Key) == true && JsonNode.DeepEquals(whole[member.Key], member.Value), member.Key));
            Assert.Contains("findings", part?.AsObject().Select(member => member.Key) ?? []);
            Assert.Contains(part?["state"]?.GetValue<string>() == "unplanned" ? "why" : "weightsLb", part?.AsObject().Select(member => member.Key) ?? []);
        }
    }

    [Fact]
    public void It_is_the_record_that_was_looked_through() => Golden.Matches("run.json", Encoding.UTF8.GetString(Bytes));

    [Fact]
    public void Letters_of_other_scripts_stay_readable()
    {
        var week = SampleWeek.Made with { RuleSet = "Ærø – Θ" };
        Assert.Contains("Ærø – Θ", Encoding.UTF8.GetString(RunRecord.Json(week, SampleWeek.Facts)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_schema_is_itself_JSON()
    {
        using var schema = JsonDocument.Parse(RunRecord.Schema);
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema.RootElement.GetProperty("$schema").GetString());
    }
}
