using ClosedXML.Excel;

namespace Batch.EndToEnd.Tests;

/// <summary>The week book that a run gives back.</summary>
public sealed class CheckedWorkbookTests(SampleRun sample) : IClassFixture<SampleRun>
{
    private static readonly XLColor Red = XLColor.FromArgb(0xEF, 0x53, 0x50);

    [Fact]
    public void The_offending_cells_of_the_sample_are_filled_commented_and_linked()
    {
        using var book = new XLWorkbook(new MemoryStream(sample.Bytes("checked.xlsx")));
        var misspelt = book.Worksheet("Legs").Cell("G71");
        Assert.Equal(Red, misspelt.Style.Fill.BackgroundColor);
        Assert.Contains("did you mean XAND?", misspelt.Comment.Text, StringComparison.Ordinal);
        Assert.Equal("XADN", misspelt.GetString());
        var findings = book.Worksheet("Findings");
        var first = findings.Row(5);
        Assert.Equal(("fail", "Legs G71", "'Legs'!G71"), (first.Cell(1).GetString(), first.Cell(5).GetString(), first.Cell(5).Hyperlink.InternalAddress));
        Assert.Equal("T131/2", first.Cell(2).GetString());
        Assert.Single(findings.RowsUsed(), row => row.Cell(2).GetString() == "T131/2" || row.Cell(6).GetString().Contains("XADN", StringComparison.Ordinal));
        var fuel = book.Worksheet("Legs").Cell("R39");
        Assert.Equal(Red, fuel.Style.Fill.BackgroundColor);
        Assert.Contains("Would help: ", fuel.Comment.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_week_run_from_the_checked_workbook_gives_the_same_checked_workbook_and_findings()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.Path);
        File.Copy(Testing.RepositoryRoot.PathOf("input-samples/operator.xlsx"), Path.Combine(folder.Path, "operator.xlsx"));
        File.WriteAllBytes(Path.Combine(folder.Path, "week.xlsx"), sample.Bytes("checked.xlsx"));
        var into = Path.Combine(folder.Path, "out");
        SampleRun.Run("run", folder.Path, "--no-pdf", "--out", into, "--made-at", SampleRun.MadeAt);
        Assert.Equal(sample.Bytes("checked.xlsx"), File.ReadAllBytes(Path.Combine(into, "checked.xlsx")));
        Assert.Equal(sample.Bytes("findings.csv"), File.ReadAllBytes(Path.Combine(into, "findings.csv")));
    }

    [Fact]
    public void An_airport_from_a_list_can_be_flown_to()
    {
        using var folder = new TemporaryFolder();
        SampleRun.Run("new", folder.Path, "--made-at", SampleRun.MadeAt);
        File.WriteAllText(Path.Combine(folder.Path, "airports.csv"),
            "ident,type,name,latitude_deg,longitude_deg,elevation_ft\nXNEW,small_airport,New Field (invented),41.2,-38.9,200\n");
        File.WriteAllText(Path.Combine(folder.Path, "runways.csv"),
            "airport_ident,length_ft,surface,lighted,closed,le_ident,le_heading_degT,he_ident,he_heading_degT\nXNEW,5000,ASPH,1,0,10,90,28,270\n");
        var (status, output, errors) = SampleRun.Run(
            "import", "airports", Path.Combine(folder.Path, "airports.csv"), Path.Combine(folder.Path, "operator.xlsx"), "--runways",
            Path.Combine(folder.Path, "runways.csv"), "--within", "200", "xone", "--time-zone", "Atlantic/Azores");
        Assert.Equal((0, ""), (status, errors));
        Assert.Contains("Airports: 1 added (XNEW)", output, StringComparison.Ordinal);
        using (var book = new XLWorkbook(Path.Combine(folder.Path, "week.xlsx")))
        {
            var legs = book.Worksheet("Legs");
            var to = legs.Row(2).CellsUsed().First(cell => cell.GetString() == "To").Address.ColumnNumber;
            var from = legs.Row(2).CellsUsed().First(cell => cell.GetString() == "From").Address.ColumnNumber;
            var route = legs.Row(2).CellsUsed().First(cell => cell.GetString() == "Route").Address.ColumnNumber;
            legs.Cell(3, to).SetValue("XNEW");
            legs.Cell(4, from).SetValue("XNEW");
            legs.Cell(3, route).SetValue("");
            legs.Cell(4, route).SetValue("");
            book.Save();
        }

        var (run, answer, _) = SampleRun.Run("check", folder.Path);
        Assert.Equal(0, run);
        Assert.Contains("0 fail, 0 unplanned", answer, StringComparison.Ordinal);
    }
}
