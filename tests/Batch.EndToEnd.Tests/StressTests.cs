using System.Globalization;
using System.Text.Json;
using Batch.Testing;

namespace Batch.EndToEnd.Tests;

/// <summary><c>check --stress</c>: the numbers are those of a week in which the stress is typed into the cells.</summary>
public sealed class StressTests
{
    [Fact]
    public void Heavy_persons_give_what_weights_typed_ten_per_cent_heavier_give()
    {
        using var week = new TemporaryFolder();
        using var heavier = new TemporaryFolder();
        CsvCells.Copy(RepositoryRoot.PathOf("input-samples", "csv"), week.Path);
        // A standard weight is typed out: a heavier one could not be told from a weight that was asked for.
        foreach (var file in Persons(week.Path)) CsvCells.TypeColumn(file, "Weight", weight => weight.Length > 0 ? weight : "190");
        CsvCells.Copy(week.Path, heavier.Path);
        foreach (var file in Persons(heavier.Path))
            CsvCells.TypeColumn(file, "Weight",
                weight => (1.1 * double.Parse(weight, CultureInfo.InvariantCulture)).ToString("R", CultureInfo.InvariantCulture));

        var breaks = SameAsTyped("heavy", week.Path, heavier.Path);
        Assert.Contains("T111/1 WB-05", breaks);
    }

    [Fact]
    public void A_late_week_gives_what_times_typed_an_hour_later_give()
    {
        using var later = new TemporaryFolder();
        CsvCells.Copy(RepositoryRoot.PathOf("input-samples", "csv"), later.Path);
        CsvCells.TypeColumn(
            Path.Combine(later.Path, "week", "Legs.csv"),
            "Off blocks",
            time => TimeOnly.TryParseExact(time, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var clock)
                ? clock.AddHours(1).ToString("HH:mm", CultureInfo.InvariantCulture)
                : time);
        SameAsTyped("late", RepositoryRoot.PathOf("input-samples", "csv"), later.Path);
    }

    [Fact]
    public void All_scenarios_answer_in_text_worst_first_with_the_margins_that_are_left()
    {
        var (status, output, _) = SampleRun.Run("check", RepositoryRoot.PathOf("input-samples"), "--stress", "all");
        Assert.Equal(1, status);
        Assert.Equal(["hot:", "headwind:", "heavy:", "late:", "squall-line:"],
            output.Split('\n').Select(line => line.Split(' ')[0]).Where(word => word.EndsWith(':') && word.Length > 1));
        Assert.Matches(@"heavy: every person 10 % heavier\s+3 legs fail a check that they meet as planned, worst first:\s+T121/1 .*\s+WB-05  Landing weight",
            output);
        Assert.Contains("Thinnest margins of the legs that pass:", output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_scenario_of_the_Operator_sheet_is_planned_by_its_name()
    {
        var (_, output, _) = SampleRun.Run("check", RepositoryRoot.PathOf("input-samples"), "--stress", "Squall-line");
        Assert.Contains("squall-line: headwind 35 kt stronger on every course, every leg 45 min later", output, StringComparison.Ordinal);
        Assert.DoesNotContain("hot:", output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_scenario_is_refused_and_the_near_one_named()
    {
        var (status, output, errors) = SampleRun.Run("check", RepositoryRoot.PathOf("input-samples"), "--stress", "heavi");
        Assert.Equal(2, status);
        Assert.Empty(output);
        Assert.Contains("--stress heavi: did you mean heavy?", errors, StringComparison.Ordinal);
        Assert.Contains("one of hot, headwind, heavy, late, squall-line, all was expected",
            SampleRun.Run("check", RepositoryRoot.PathOf("input-samples"), "--stress", "earthquake").Errors, StringComparison.Ordinal);
    }

    private static string[] Persons(string folder) => [Path.Combine(folder, "week", "Manifest.csv"), Path.Combine(folder, "operator", "Crew.csv")];

    private static string[] Books(string folder) => [Path.Combine(folder, "operator"), Path.Combine(folder, "week")];

    /// <summary>Compares the answer of a scenario with the difference of two weeks.</summary>
    private static string[] SameAsTyped(string scenario, string week, string typed)
    {
        using var stress = JsonDocument.Parse(SampleRun.Run(["check", .. Books(week), "--stress", scenario, "--json"]).Output);
        var answer = Assert.Single(stress.RootElement.Items("scenarios"));
        Assert.Equal(scenario, answer.GetProperty("name").GetString());
        using var before = JsonDocument.Parse(SampleRun.Run(["check", .. Books(week), "--no-remedies", "--json"]).Output);
        using var after = JsonDocument.Parse(SampleRun.Run(["check", .. Books(typed), "--no-remedies", "--json"]).Output);
        foreach (var state in new[] { "pass", "caution", "fail", "unplanned" })
        {
            Assert.Equal(before.RootElement.Legs().Count(leg => leg.State() == state), stress.RootElement.GetProperty("asPlanned").Number(state));
            Assert.Equal(after.RootElement.Legs().Count(leg => leg.State() == state), answer.GetProperty("legs").Number(state));
        }

        var known = Failures(before).Select(failure => failure.Name).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(
            Failures(after).Where(failure => !known.Contains(failure.Name)).Select(failure => failure.Name + ": " + failure.Text).Order(StringComparer.Ordinal),
            answer.Items("breaks").Select(one => $"{one.Key()} {one.GetProperty("check").GetString()}: {one.GetProperty("text").GetString()}")
                .Order(StringComparer.Ordinal));
        var thinnest = answer.Items("thinnest").ToArray();
        Assert.Equal(thinnest.Select(one => one.Number("share")).Order(), thinnest.Select(one => one.Number("share")));
        Assert.NotEmpty(thinnest);
        Assert.All(thinnest, one => Assert.InRange(one.Number("margin"), 0, double.MaxValue));
        var landing = after.RootElement.Legs().Where(leg => leg.State() != "unplanned")
            .ToDictionary(leg => leg.Key(), leg => leg.GetProperty("weightsLb").Number("landing"), StringComparer.Ordinal);
        var weights = thinnest.Where(one => one.GetProperty("check").GetString() == "WB-05" && one.GetProperty("unit").GetString() == "lb").ToArray();
        Assert.NotEmpty(weights);
        Assert.All(weights, one => Assert.Equal(landing[one.Key()], one.Number("actual"), 0.06));
        return [.. answer.Items("breaks").Select(one => $"{one.Key()} {one.GetProperty("check").GetString()}")];
    }

    private static IEnumerable<(string Name, string Text)> Failures(JsonDocument run) => run.RootElement.Legs().SelectMany(leg => leg.Items("findings")
        .Where(finding => finding.State() == "fail")
        .Select(finding => ($"{leg.Key()} {finding.GetProperty("check").GetString()}", finding.GetProperty("text").GetString() ?? "")));
}
