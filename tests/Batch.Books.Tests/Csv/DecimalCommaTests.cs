using Batch.Books.Tests.Support;

namespace Batch.Books.Tests.Csv;

public sealed class DecimalCommaTests
{
    [Fact]
    public void Decimal_commas_of_a_file_with_commas_cost_one_caution_a_column()
    {
        using var folder = new TempFolder();
        var book = GoodBooks.Week();
        for (var row = 1; row <= 3; row++)
            book.Set("Manifest", row, "Weight", new[] { "171,5", "172,5", "173,5" }[row - 1]).Set("Manifest", row, "Bags", row == 1 ? "20,5" : null);
        var week = BookReader.Read([GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx")), book.SaveCsv(folder.File("week"))]);
        Assert.Equal([171.5, 172.5, 173.5], week.Manifest.Select(line => line.Weight?.Value));
        var cautions = week.Problems.Where(problem => problem.Text.Contains("decimal comma", StringComparison.Ordinal)).ToArray();
        Assert.Equal(["week/Manifest/E2", "week/Manifest/F2"], cautions.Select(problem => problem.Cell));
        Assert.Equal(["Weight is read with a decimal comma: 171.5; likewise E3, E4", "Bags is read with a decimal comma: 20.5"],
            cautions.Select(problem => problem.Text));
    }

    [Fact]
    public void A_column_whose_unit_is_asked_about_says_its_decimal_comma_too()
    {
        using var folder = new TempFolder();
        var book = GoodBooks.Week();
        (book["Manifest"][0][4], book["Manifest"][0][5]) = ("Weight", "Bags [kg]");
        book.Set("Manifest", 1, "Weight", "171,5");
        var week = BookReader.Read([GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx")), book.SaveCsv(folder.File("week"))]);
        var said = week.Problems.Where(problem => problem.Cell == "week/Manifest/E2").Select(problem => problem.Text.Split(':', ';')[0])
            .Order(StringComparer.Ordinal);
        Assert.Equal(["Weight has no unit here and is read in lb, but Bags is in kg", "Weight is read with a decimal comma"], said);
    }
}
