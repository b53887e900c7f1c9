using ClosedXML.Excel;

namespace Batch.EndToEnd.Tests;

/// <summary>The starter books edited as people edit them, run with the real program: the week book comes back marked whatever was done to it.</summary>
public sealed class RealEditsTests
{
    private static readonly XLColor Red = XLColor.FromArgb(0xEF, 0x53, 0x50);

    [Fact]
    public void The_same_trip_and_leg_twice_is_marked_at_the_second_and_faults_nothing()
    {
        using var folder = new TemporaryFolder();
        var (status, errors) = Run(folder, legs => legs.Row(3).CopyTo(legs.Row(5)));
        Assert.Equal((1, ""), (status, errors));
        using var book = Checked(folder);
        var second = book.Worksheet("Legs").Cell("B5");
        Assert.Equal(Red, second.Style.Fill.BackgroundColor);
        Assert.Contains("T1/1 stands twice", second.Comment.Text, StringComparison.Ordinal);
        Assert.Contains(book.Worksheet("Findings").RowsUsed(), row => row.Cell(5).GetString() == "Legs B5" && row.Cell(1).GetString() == "fail");
    }

    private static (int Status, string Errors) Run(TemporaryFolder folder, Action<IXLWorksheet> edit)
    {
        SampleRun.Run("new", folder.Path, "--made-at", SampleRun.MadeAt);
        using (var book = new XLWorkbook(Path.Combine(folder.Path, "week.xlsx")))
        {
            edit(book.Worksheet("Legs"));
            book.Save();
        }

        var (status, _, errors) = SampleRun.Run(["run", folder.Path, "--no-pdf", "--out", Path.Combine(folder.Path, "out"), "--made-at", SampleRun.MadeAt]);
        return (status, string.Join('\n', errors.Split('\n').Where(line => !line.EndsWith(" done", StringComparison.Ordinal))).Trim());
    }

    private static XLWorkbook Checked(TemporaryFolder folder) => new(Path.Combine(folder.Path, "out", "checked.xlsx"));
}
