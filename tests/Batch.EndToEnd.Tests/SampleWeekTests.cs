using System.Text.Json;
using Batch.Testing;
using Json.Schema;

namespace Batch.EndToEnd.Tests;

/// <summary>The sample week through the real program.</summary>
public sealed class SampleWeekTests(SampleRun sample) : IClassFixture<SampleRun>
{
    private static readonly string[] NotPlanned = ["unplanned"];

    private JsonElement Json => JsonDocument.Parse(sample.Bytes("run.json")).RootElement;

    [Fact]
    public void The_run_ends_with_status_1_because_legs_fail_on_purpose() => Assert.Equal(1, sample.Status);

    [Fact]
    public void Every_planned_trip_has_a_sheet_in_html_and_pdf()
    {
        var trips = Json.Legs().Where(leg => !NotPlanned.Contains(leg.State())).Select(leg => leg.GetProperty("trip").GetString()).Distinct().ToArray();
        Assert.True(trips.Length >= 25, $"{trips.Length} trips");
        foreach (var trip in trips)
        {
            Assert.StartsWith("<!doctype html", sample.Text($"sheets/{trip}.html"), StringComparison.OrdinalIgnoreCase);
            Assert.Equal("%PDF-"u8.ToArray(), sample.Bytes($"sheets/{trip}.pdf")[..5]);
        }
    }

    [Fact]
    public void Each_deliberate_failure_is_found_by_the_check_meant_and_no_other_leg_fails()
    {
        var expected = ExpectedFailures().Where(row => row.Check != "unplanned")
            .SelectMany(row => row.Also.Prepend(row.Check).Select(check => $"{row.Trip}/{row.Leg} {check}"))
            .Order(StringComparer.Ordinal).ToArray();
        var found = Json.Legs().Where(leg => leg.State() != "unplanned")
            .SelectMany(leg => leg.Items("findings").Where(finding => finding.State() == "fail")
                .Select(finding => $"{leg.Key()} {finding.GetProperty("check").GetString()}"))
            .Order(StringComparer.Ordinal);
        Assert.Equal(expected, found);
        Assert.True(expected.Select(row => row.Split(' ')[1]).Distinct(StringComparer.Ordinal).Count() >= 10);
    }

    [Fact]
    public void The_broken_row_is_named_with_its_cell_and_its_near_miss_and_only_that_leg_is_unplanned()
    {
        var unplanned = Json.Legs().Where(leg => leg.State() == "unplanned").Select(leg => leg.Key());
        Assert.Equal(ExpectedFailures().Where(row => row.Check == "unplanned").Select(row => $"{row.Trip}/{row.Leg}"), unplanned);
        var problem = Assert.Single(Json.Items("problems"), problem => problem.State() == "fail");
        Assert.Matches(@"^week\.xlsx/Legs/[A-Z]+\d+$", problem.GetProperty("cell").GetString());
        Assert.Contains("XADN", problem.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Contains("XAND", problem.GetProperty("text").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_record_of_the_run_follows_its_schema()
    {
        var schema = JsonSchema.FromText(Sheets.RunRecord.Schema);
        var result = schema.Evaluate(Json, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join('\n', result.Details.Where(detail => detail.HasErrors).SelectMany(detail => detail.Errors
            ?? new Dictionary<string, string>(StringComparer.Ordinal)).Select(error => error.Value).Take(10)));
    }

    [Fact]
    public void The_log_sums_to_the_leg_and_fuel_loaded_is_fuel_burned_and_left()
    {
        foreach (var leg in Json.Legs().Where(leg => leg.State() != "unplanned"))
        {
            var fuel = leg.GetProperty("fuelLb");
            var lines = leg.Items("log").Skip(1).ToArray();
            Assert.Equal(leg.Number("distanceNm"), lines.Sum(line => line.Number("legNm")), 0.1 * lines.Length);
            Assert.Equal(fuel.Number("trip"), lines.Sum(line => line.Number("burnLb")), 0.1 * lines.Length);
            Assert.Equal(fuel.Number("aboard"), fuel.Number("taxi") + fuel.Number("trip") + fuel.Number("landing"), 0.3);
            var weights = leg.GetProperty("weightsLb");
            Assert.Equal(weights.Number("ramp"), weights.Number("zeroFuel") + fuel.Number("aboard"), 0.3);
        }
    }

    [Fact]
    public void What_one_leg_leaves_in_the_tanks_is_what_the_next_leg_of_the_aircraft_finds()
    {
        var links = 0;
        foreach (var aircraft in Json.Legs().Where(leg => leg.State() != "unplanned").GroupBy(leg => leg.GetProperty("aircraft").GetString()))
        {
            var legs = aircraft.OrderBy(leg => leg.GetProperty("offBlocksUtc").GetString(), StringComparer.Ordinal).ToArray();
            foreach (var (before, after) in legs.Zip(legs.Skip(1)))
            {
                var found = after.GetProperty("fuelLb").Number("aboard") - after.GetProperty("fuelLb").Number("uplift");
                if (Math.Abs(found - before.GetProperty("fuelLb").Number("landing")) <= 0.3) links++;
            }
        }

        Assert.InRange(links, 30, int.MaxValue);
    }

    [Fact]
    public void One_worker_and_two_give_the_same_bytes()
    {
        using var one = new TemporaryFolder();
        using var two = new TemporaryFolder();
        SampleRun.Run("run", RepositoryRoot.PathOf("input-samples"), "--out", one.Path, "--made-at", SampleRun.MadeAt, "--jobs", "1", "--only",
            "T101,T102,T103");
        SampleRun.Run("run", RepositoryRoot.PathOf("input-samples"), "--out", two.Path, "--made-at", SampleRun.MadeAt, "--jobs", "2", "--only",
            "T101,T102,T103");
        var files = one.Files();
        Assert.Equal(files, two.Files());
        Assert.Contains(files, file => file.EndsWith(".pdf", StringComparison.Ordinal));
        foreach (var file in files)
            Assert.Equal(File.ReadAllBytes(System.IO.Path.Combine(one.Path, file)), File.ReadAllBytes(System.IO.Path.Combine(two.Path, file)));
    }

    [Fact]
    public void The_same_week_as_csv_gives_the_same_record()
    {
        using var csv = new TemporaryFolder();
        var (status, _, _) = SampleRun.Run(
            "run", RepositoryRoot.PathOf("input-samples", "csv", "operator"), RepositoryRoot.PathOf("input-samples", "csv", "week"),
            "--out", csv.Path, "--made-at", SampleRun.MadeAt, "--no-pdf");
        Assert.Equal(1, status);
        Assert.Equal(WithoutBooks(sample.Text("run.json")), WithoutBooks(File.ReadAllText(System.IO.Path.Combine(csv.Path, "run.json"))));
    }

    /// <summary>The record without the list of books and with cells named by sheet: the only places where Excel and CSV may differ.</summary>
    private static string WithoutBooks(string json)
    {
        var start = json.IndexOf("\"inputs\"", StringComparison.Ordinal);
        var end = json.IndexOf("\"problems\"", StringComparison.Ordinal);
        return (json[..start] + json[end..]).Replace(".xlsx/", "/", StringComparison.Ordinal);
    }

    private static IEnumerable<(string Trip, string Leg, string Check, string[] Also)> ExpectedFailures() =>
        File.ReadLines(RepositoryRoot.PathOf("input-samples", "expected-failures.csv"))
            .Where(line => line.Length > 0 && !line.StartsWith('#')).Skip(1)
            .Select(line => line.Split(','))
            .Select(fields => (fields[0], fields[1], fields[2], fields[3].Split(' ', StringSplitOptions.RemoveEmptyEntries)));
}
