using System.Globalization;
using Batch.Testing;

namespace Batch.EndToEnd.Tests;

/// <summary>The command line: statuses, complaints, help.</summary>
public sealed class CommandLineTests
{
    [Theory]
    [InlineData("2026-12-03T15:00Z", 0)]
    [InlineData("2026-12-03T15:00:00Z", 0)]
    [InlineData("2026-12-03", 2)]
    public void The_instant_of_a_run_may_be_given_to_the_minute(string instant, int expected)
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(expected, SampleRun.Run("new", folder.Path, "--made-at", instant).Status);
    }

    // A missing column keeps every leg from being planned: it is said once, below the legs.
    [Fact]
    public void Legs_that_one_cause_keeps_from_being_planned_stand_above_it_in_the_order_of_their_rows()
    {
        using var folder = new TemporaryFolder();
        CsvCells.Copy(RepositoryRoot.PathOf("input-samples", "csv"), folder.Path);
        var legs = Path.Combine(folder.Path, "week", "Legs.csv");
        File.WriteAllText(legs, File.ReadAllText(legs).Replace("Trip,Leg,", "Voyage,Leg,", StringComparison.Ordinal));
        var (_, output, _) = SampleRun.Run("check", Path.Combine(folder.Path, "operator"), Path.Combine(folder.Path, "week"), "--no-remedies");
        var lines = output.Split('\n');
        Assert.InRange(lines.Count(line => line.StartsWith("    Legs has no column Trip", StringComparison.Ordinal)), 1, 10);
        string[] heads = [.. lines.Where(line => line.Contains("  UNPLANNED  ", StringComparison.Ordinal)).Select(line => line.Split('/')[0])];
        Assert.True(heads.Length > 60);
        Assert.Equal(heads.Order(Comparer<string>.Create((a, b) => int.Parse(a[4..], CultureInfo.InvariantCulture)
            .CompareTo(int.Parse(b[4..], CultureInfo.InvariantCulture)))), heads);
        Assert.DoesNotContain("week/Legs/2, week/Legs/2", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Help_of_every_command_shows_an_example()
    {
        foreach (var command in new[] { "run", "send", "check", "explain", "new", "import", "templates", "templates check", "templates values" })
        {
            var (status, output, _) = SampleRun.Run([.. command.Split(' '), "--help"]);
            Assert.Equal(0, status);
            Assert.Contains("tripbatch " + command, output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("run", "")]
    [InlineData("new", " ")]
    [InlineData("import", "airports", "", "operator.xlsx")]
    [InlineData("send", "out", "--only", "")]
    [InlineData("send", "out", "--only=")]
    public void An_empty_name_means_neither_all_nor_here(params string[] args)
    {
        var (status, output, errors) = SampleRun.Run(args);
        Assert.Equal((2, ""), (status, output));
        Assert.StartsWith("A name or value on the command line is empty", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_misspelt_command_ends_with_status_2_and_names_the_near_one()
    {
        var (status, output, errors) = SampleRun.Run("chekc", "week.xlsx");
        Assert.Equal(2, status);
        Assert.Empty(output);
        Assert.Contains("check", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_book_that_is_not_there_ends_with_status_2_and_is_named()
    {
        var (status, _, errors) = SampleRun.Run("check", "no-such-book.xlsx");
        Assert.Equal(2, status);
        Assert.Contains("no-such-book.xlsx", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_a_run_is_not_written_over()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.Path);
        File.WriteAllText(Path.Combine(folder.Path, "holiday.txt"), "mine");
        var (status, _, errors) = SampleRun.Run("run", RepositoryRoot.PathOf("input-samples"), "--out", folder.Path, "--no-pdf");
        Assert.Equal(2, status);
        Assert.Contains("--out", errors, StringComparison.Ordinal);
        Assert.Equal(["holiday.txt"], folder.Files());
    }

    [Theory]
    [InlineData("t101")]
    [InlineData("T101")]
    public void A_trip_is_chosen_however_its_name_is_written(string only)
    {
        using var folder = new TemporaryFolder();
        using var csv = new TemporaryFolder();
        Directory.CreateDirectory(csv.Path);
        foreach (var file in Directory.GetFiles(RepositoryRoot.PathOf("input-samples/csv/week")))
            File.WriteAllText(Path.Combine(csv.Path, Path.GetFileName(file)), File.ReadAllText(file).Replace("T101", "t101", StringComparison.Ordinal));
        var (status, _, errors) =
            SampleRun.Run("run", csv.Path, RepositoryRoot.PathOf("input-samples/csv/operator"), "--out", folder.Path, "--no-pdf", "--only", only);
        Assert.True(status == 0, errors);
        Assert.Contains("sheets/t101.html", folder.Files());
    }

    [Fact]
    public void A_run_that_lacks_a_sheet_says_so_at_its_end_and_ends_with_status_3()
    {
        using var folder = new TemporaryFolder();
        var templates = Directory.CreateDirectory(Path.Combine(folder.Path, "templates")).FullName;
        File.WriteAllText(Path.Combine(templates, "crew-packet.html"), "{{ if person.code == 'RIM' }}{{ nothing }}{{ end }}");
        string[] run = ["run", RepositoryRoot.PathOf("input-samples"), "--out", Path.Combine(folder.Path, "out"), "--only", "T101", "--no-pdf"];
        var whole = SampleRun.Run(run);
        var (status, output, errors) = SampleRun.Run([.. run, "--templates", templates]);
        Assert.Equal((0, 3), (whole.Status, status));
        Assert.DoesNotContain("Not written", whole.Output, StringComparison.Ordinal);
        Assert.EndsWith("Not written: packets/RIM. Why stands above.", output.TrimEnd(), StringComparison.Ordinal);
        Assert.Contains("crew-packet.html(1,", errors, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder.Path, "out", "packets", "RIM.html")));
    }

    [Fact]
    public void Explain_shows_formula_inputs_and_cells()
    {
        var (_, output, _) = SampleRun.Run("explain", RepositoryRoot.PathOf("input-samples"), "--leg", "T101/1");
        Assert.Contains("taxi + trip + contingency + alternate + final reserve + additional", output, StringComparison.Ordinal);
        Assert.Matches(@"basic empty = [\d,.]+ lb   \(operator\.xlsx/Aircraft/[A-Z]\d+\)", output);
        Assert.Contains("time: takeoff = 09:38:00 UTC", output, StringComparison.Ordinal);
        Assert.Contains("latitude from = 40.604100 deg N", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_as_json_holds_every_part_with_its_inputs_and_cells()
    {
        var (_, output, _) = SampleRun.Run("explain", RepositoryRoot.PathOf("input-samples"), "--leg", "T101/1", "--json");
        using var json = System.Text.Json.JsonDocument.Parse(output);
        Assert.Equal("T101/1", json.RootElement.GetProperty("leg").GetString());
        var steps = json.RootElement.GetProperty("steps").EnumerateArray().ToArray();
        Assert.Equal(
            ["daylight", "fuel", "limit", "log", "option", "profile", "route", "runway", "time", "weight"],
            steps.Select(step => step.GetProperty("part").GetString()).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
        Assert.All(steps, step => Assert.NotEqual("", step.GetProperty("formula").GetString()));
        var most = Assert.Single(steps, step => step.GetProperty("name").GetString() == "most fuel");
        Assert.Contains(most.GetProperty("inputs").EnumerateArray(),
            input => input.GetProperty("name").GetString() == "left by tank"
                && input.GetProperty("cell").GetString()?.StartsWith("operator.xlsx/Types/", StringComparison.Ordinal) == true);
    }

    [Fact]
    public void Explain_of_an_unknown_leg_names_the_near_one()
    {
        var (status, _, errors) = SampleRun.Run("explain", RepositoryRoot.PathOf("input-samples"), "--leg", "T101/11");
        Assert.Equal(2, status);
        Assert.Contains("T101/1", errors, StringComparison.Ordinal);
    }
}
