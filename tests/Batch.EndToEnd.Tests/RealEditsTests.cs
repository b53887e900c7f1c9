using ClosedXML.Excel;

namespace Batch.EndToEnd.Tests;

/// <summary>The starter books edited as people edit them, run with the real program: the week book comes back marked whatever was done to it.</summary>
public sealed class RealEditsTests
{
    private static readonly XLColor Red = XLColor.FromArgb(0xEF, 0x53, 0x50);

    [Fact]
    public void What_is_wrong_with_merged_cells_is_marked_where_it_is_seen()
    {
        using var folder = new TemporaryFolder();
        var (status, _, errors) = Run(folder, legs =>
        {
            legs.Cell("E3").SetValue("X-NONE");
            legs.Range("E3:E4").Merge();
        });
        Assert.Equal((1, ""), (status, errors));
        using var book = Checked(folder);
        var seen = book.Worksheet("Legs").Cell("E3");
        Assert.Equal(Red, seen.Style.Fill.BackgroundColor);
        Assert.Contains("X-NONE is not in Aircraft", seen.Comment.Text, StringComparison.Ordinal);
        Assert.False(book.Worksheet("Legs").Cell("E4").HasComment);
    }

    [Fact]
    public void A_week_without_a_leg_says_so_and_has_status_2()
    {
        using var folder = new TemporaryFolder();
        var (status, output, errors) = Run(folder, legs => legs.Rows(3, 4).Delete());
        Assert.Equal((2, ""), (status, errors));
        Assert.Contains("week.xlsx/Legs  no legs were found here, so nothing is planned", output, StringComparison.Ordinal);
        var board = File.ReadAllText(Path.Combine(folder.Path, "out", "index.html"));
        Assert.Contains("These books hold no leg.", board, StringComparison.Ordinal);
        Assert.DoesNotContain("every leg passes", board, StringComparison.Ordinal);
        Assert.Equal(2, SampleRun.Run("check", folder.Path).Status);
    }

    [Fact]
    public void Two_legs_without_their_numbers_are_two_on_the_board_and_in_the_findings()
    {
        using var folder = new TemporaryFolder();
        var (status, output, errors) = Run(folder, legs => legs.Range("B3:B4").Value = "");
        Assert.Equal((1, ""), (status, errors));
        Assert.Contains("T1, row 3  UNPLANNED", output, StringComparison.Ordinal);
        Assert.DoesNotContain("T1/0", output, StringComparison.Ordinal);
        var board = File.ReadAllText(Path.Combine(folder.Path, "out", "index.html"));
        Assert.Single(board.Split("id=\"leg=T1/0-row-3\"")[1..]);
        Assert.Single(board.Split("id=\"leg=T1/0-row-4\"")[1..]);
        using var book = Checked(folder);
        Assert.Contains(book.Worksheet("Findings").CellsUsed(), cell => cell.GetString() == "T1, row 4");
    }

    [Theory]
    [InlineData("--from", "2031-01-01")]
    [InlineData("--to", "2001-01-01")]
    public void Days_without_a_leg_are_refused_and_leave_the_last_run(string option, string day)
    {
        using var folder = new TemporaryFolder();
        Run(folder, _ => { });
        var before = File.ReadAllText(Path.Combine(folder.Path, "out", "run.json"));
        var (status, _, errors) = Run(folder, _ => { }, option, day);
        Assert.Equal(2, status);
        Assert.Contains("No leg is left by --only, --from and --to", errors, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllText(Path.Combine(folder.Path, "out", "run.json")));
    }

    private static (int Status, string Output, string Errors) Run(TemporaryFolder folder, Action<IXLWorksheet> edit, params string[] more)
    {
        if (!File.Exists(Path.Combine(folder.Path, "week.xlsx"))) SampleRun.Run("new", folder.Path, "--made-at", SampleRun.MadeAt);
        using (var book = new XLWorkbook(Path.Combine(folder.Path, "week.xlsx")))
        {
            edit(book.Worksheet("Legs"));
            book.Save();
        }

        var (status, output, errors) =
            SampleRun.Run(["run", folder.Path, "--no-pdf", "--out", Path.Combine(folder.Path, "out"), "--made-at", SampleRun.MadeAt, .. more]);
        return (status, output, string.Join('\n', errors.Split('\n').Where(line => !line.EndsWith(" done", StringComparison.Ordinal))).Trim());
    }

    private static XLWorkbook Checked(TemporaryFolder folder) => new(Path.Combine(folder.Path, "out", "checked.xlsx"));
}
