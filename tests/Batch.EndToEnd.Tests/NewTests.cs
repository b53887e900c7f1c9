using System.Text.Json;
using ClosedXML.Excel;

namespace Batch.EndToEnd.Tests;

public sealed class NewTests
{
    [Fact]
    public void What_new_writes_runs_at_once_and_every_leg_passes()
    {
        using var folder = new TemporaryFolder();
        var (made, output, _) = SampleRun.Run("new", folder.Path, "--made-at", SampleRun.MadeAt);
        Assert.Equal(0, made);
        Assert.Contains("not for navigation", output, StringComparison.Ordinal);
        var into = Path.Combine(folder.Path, "out");
        Assert.Equal(0, SampleRun.Run("run", folder.Path, "--templates", Path.Combine(folder.Path, "templates"), "--out", into).Status);
        using var run = JsonDocument.Parse(File.ReadAllText(Path.Combine(into, "run.json")));
        Assert.Equal(["pass", "pass"], run.RootElement.Legs().Select(leg => leg.State()));
        Assert.Empty(run.RootElement.Items("problems"));
        Assert.Contains("sheets/T1.pdf", folder.Files().Select(file => file.Replace("out/", "", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_third_leg_typed_under_the_example_is_planned()
    {
        using var folder = new TemporaryFolder();
        SampleRun.Run("new", folder.Path, "--made-at", SampleRun.MadeAt);
        var path = Path.Combine(folder.Path, "week.xlsx");
        using (var book = new XLWorkbook(path))
        {
            var legs = book.Worksheet("Legs");
            var headers = legs.Row(2).CellsUsed().ToDictionary(cell => cell.GetString(), cell => cell.Address.ColumnNumber, StringComparer.Ordinal);
            void Put(string header, object value) => legs.Cell(5, headers[header]).SetValue(value);
            Put("Trip", "T2");
            Put("Leg", 1);
            Put("Date", new DateTime(2026, 12, 8));
            Put("Off blocks", new TimeSpan(9, 30, 0));
            Put("Aircraft", "Q-ONE");
            Put("From", "XONE");
            Put("To", "XTRI");
            Put("Alternate", "XTWO");
            Put("Level", "auto");
            Put("Captain", "BEN");
            Put("Second pilot", "ANA");
            book.Save();
        }

        var into = Path.Combine(folder.Path, "out");
        Assert.Equal(0, SampleRun.Run("run", folder.Path, "--no-pdf", "--out", into).Status);
        using var run = JsonDocument.Parse(File.ReadAllText(Path.Combine(into, "run.json")));
        Assert.Equal(["T1/1", "T1/2", "T2/1"], run.RootElement.Legs().Select(leg => leg.Key()));
        Assert.DoesNotContain("unplanned", run.RootElement.Legs().Select(leg => leg.State()));
    }

    [Fact]
    public void New_overwrites_nothing()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.Path);
        File.WriteAllText(Path.Combine(folder.Path, "week.xlsx"), "mine");
        var (status, _, errors) = SampleRun.Run("new", folder.Path, "--made-at", SampleRun.MadeAt);
        Assert.Equal(2, status);
        Assert.Contains("week.xlsx", errors, StringComparison.Ordinal);
        Assert.Equal(["week.xlsx"], folder.Files());
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder.Path, "week.xlsx")));
    }
}
