using System.Text;
using Batch.Books.Tests.Support;

namespace Batch.Books.Tests;

public sealed class SameWeekTests
{
    private static readonly Encoding Windows1252 = CodePagesEncodingProvider.Instance.GetEncoding(1252) ?? throw new InvalidOperationException();

    public static TheoryData<char, string, bool, string> Ways => new()
    {
        { ',', "utf-8", false, "\r\n" }, { ',', "utf-8 with mark", false, "\n" }, { ',', "windows-1252", false, "\r\n" },
        { ';', "utf-8", true, "\r\n" }, { ';', "utf-8 with mark", true, "\n" }, { ';', "windows-1252", true, "\n" }, { ';', "utf-8", false, "\n" },
        { '\t', "utf-8", false, "\n" }, { '\t', "utf-16", false, "\r\n" },
    };

    [Theory]
    [MemberData(nameof(Ways))]
    public void The_same_week_as_workbook_and_as_csv_gives_the_same_data_and_cells(char delimiter, string encodingName, bool decimalComma, string newLine)
    {
        var encoding = encodingName switch
        {
            "utf-8" => new UTF8Encoding(false),
            "utf-8 with mark" => new UTF8Encoding(
            true),
            "utf-16" => Encoding.Unicode,
            _ => Windows1252
        };
        using var folder = new TempFolder();
        var (operatorBook, week) = (GoodBooks.Operator(), GoodBooks.Week());
        operatorBook.Set("Airports", 2, "Name", "Bøllport, \"the north\"; quay");
        week.Set("Legs", 1, "Remarks", "first line\nsecond line").Set("Manifest", 2, "Weight", "abc").Set("Legs", 3, "Alternate", "XBLE")
            .Set("Legs", 2, "Level", 9500.5);
        var fromWorkbooks = BookReader.Read([operatorBook.SaveXlsx(folder.File("operator.xlsx")), week.SaveXlsx(folder.File("week.xlsx"))]);
        var fromCsv = BookReader.Read([operatorBook.SaveCsv(folder.File("operator"), delimiter, encoding, decimalComma, newLine),
            week.SaveCsv(folder.File("week"), delimiter, encoding, decimalComma, newLine)]);
        var expected = Dump.Of(fromWorkbooks).Replace(".xlsx", "", StringComparison.Ordinal).Split('\n').Order(StringComparer.Ordinal);
        var actual = Dump.Of(fromCsv).Split('\n').Order(StringComparer.Ordinal);
        Assert.InRange(expected.Count(), 500, 5000);
        Assert.Equal(Problemless(expected), Problemless(actual));
        Assert.Equal(
            fromWorkbooks.Problems.Select(problem => (problem.State, problem.Cell.Replace(".xlsx", "", StringComparison.Ordinal),
                problem.Text.Replace(".xlsx", "", StringComparison.Ordinal), problem.Read, problem.Expected)).Order(),
            fromCsv.Problems.Select(problem => (problem.State, problem.Cell, problem.Text, problem.Read, problem.Expected)).Order());
    }

    // Sheets of a folder come in name order, so the complaints of two sheets may come in another order.
    private static IEnumerable<string> Problemless(IEnumerable<string> lines) => lines.Where(line => !line.StartsWith(".Problems", StringComparison.Ordinal));
}
