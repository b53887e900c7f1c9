using Batch.Books.Tests.Support;
using ClosedXML.Excel;

namespace Batch.Books.Tests;

public sealed class StarterBooksTests
{
    [Fact]
    public void The_books_read_without_a_complaint_and_hold_the_example()
    {
        using var folder = new TempFolder();
        var week = BookReader.Read(Written(folder));
        Assert.Empty(week.Problems);
        Assert.Equal(["T1/1", "T1/2"], week.Legs.Select(leg => leg.Key.ToString()));
        Assert.Equal(["XONE", "XTRI", "XTWO"], week.Airports.Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_known_sheet_has_its_headers_with_units_and_an_explanation_on_each()
    {
        using var folder = new TempFolder();
        using var operatorBook = new XLWorkbook(Written(folder)[0]);
        using var weekBook = new XLWorkbook(Written(folder)[1]);
        foreach (var sheet in ColumnCatalogue.Sheets)
        {
            var page = (sheet.Book == "week" ? weekBook : operatorBook).Worksheet(sheet.Name);
            for (var i = 0; i < sheet.Columns.Length; i++)
            {
                Assert.Equal(sheet.Columns[i].Header, page.Cell(2, i + 1).GetString());
                Assert.Contains(sheet.Columns[i].Meaning, page.Cell(2, i + 1).Comment.Text, StringComparison.Ordinal);
            }

            Assert.Equal(2, page.SheetView.SplitRow);
        }
    }

    [Fact]
    public void Both_books_say_that_they_are_invented()
    {
        using var folder = new TempFolder();
        foreach (var path in Written(folder))
        {
            using var book = new XLWorkbook(path);
            Assert.Contains("INVENTED EXAMPLE, NOT FOR NAVIGATION", book.Worksheet("Read me").Cell(3, 2).GetString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Drop_downs_offer_words_and_idents()
    {
        using var folder = new TempFolder();
        using var book = new XLWorkbook(Written(folder)[1]);
        var legs = book.Worksheet("Legs");
        Assert.Equal("\"IFR,VFR\"", Offered(legs, "Rules"));
        Assert.Contains("Lists!$A$3", Offered(legs, "Aircraft"), StringComparison.Ordinal);
        Assert.Contains("Lists!$B$3", Offered(legs, "Second alternate"), StringComparison.Ordinal);
        Assert.Equal("Q-ONE", book.Worksheet("Lists").Cell(3, 1).GetString());
    }

    [Fact]
    public void Text_such_as_1_3_stays_text_where_legs_are_named()
    {
        using var folder = new TempFolder();
        using var book = new XLWorkbook(Written(folder)[1]);
        Assert.Equal("@", book.Worksheet("Manifest").Cell(40, 2).Style.NumberFormat.Format);
    }

    [Fact]
    public void The_same_day_gives_the_same_bytes()
    {
        var today = new LocalDate(2027, 5, 9);
        Assert.Equal(StarterBooks.Make(today).SelectMany(book => book.Content), StarterBooks.Make(today).SelectMany(book => book.Content));
    }

    [Theory]
    [InlineData(2026, 12, 6, 2026, 12, 7)]
    [InlineData(2026, 12, 7, 2026, 12, 14)]
    [InlineData(2028, 2, 26, 2028, 2, 28)]
    public void The_example_flies_on_the_coming_Monday_and_all_its_dates_move_along(int year, int month, int day, int onYear, int onMonth, int onDay)
    {
        using var folder = new TempFolder();
        var books = StarterBooks.Make(new LocalDate(year, month, day));
        foreach (var book in books) File.WriteAllBytes(folder.File(book.Name), [.. book.Content]);
        var week = BookReader.Read([.. books.Select(book => folder.File(book.Name))]);
        Assert.Empty(week.Problems);
        var monday = new LocalDate(onYear, onMonth, onDay);
        Assert.All(week.Legs, leg => Assert.Equal(monday, leg.OffBlocksLocal.Date));
        Assert.Equal(monday.AtMidnight().InUtc().ToInstant(), week.Winds[0].From);
        Assert.Equal(monday.PlusDays(-4), week.Logged[0].Date);
        Assert.Equal(["XTWO", "XONE"], week.Logged[0].Airports.ToArray());
        Assert.Equal("with allowances", week.Operator.PassengerWeights);
        Assert.Equal("30 days", week.Operator.VorCheck);
    }

    private static string[] Written(TempFolder folder)
    {
        var books = StarterBooks.Make(new LocalDate(2026, 12, 3));
        foreach (var book in books) File.WriteAllBytes(folder.File(book.Name), [.. book.Content]);
        return [.. books.Select(book => folder.File(book.Name))];
    }

    private static string Offered(IXLWorksheet page, string header)
    {
        var column = page.Row(2).Cells().First(cell => cell.GetString() == header).Address.ColumnNumber;
        return page.DataValidations.First(validation => validation.Ranges.Any(range => range.Contains(page.Cell(30, column).AsRange()))).MinValue;
    }
}
