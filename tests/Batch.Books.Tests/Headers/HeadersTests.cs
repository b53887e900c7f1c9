using Batch.Books.Tests.Support;

namespace Batch.Books.Tests.Headers;

public sealed class HeadersTests
{
    [Fact]
    public void Case_spacing_punctuation_and_other_names_do_not_matter()
    {
        var week = GoodBooks.Read((operatorBook, book) =>
        {
            book["Legs"][0][3] = "OFF-BLOCKS *";
            book["Legs"][0][4] = "registration";
            book["Legs"][0][16] = "Second  Pilot";
            operatorBook["Types"][0][10] = "Maximum take-off weight [lb]";
            operatorBook["Types"][0][12] = "Zero-fuel maximum weight (lb)";
        });
        Assert.DoesNotContain(week.Problems, problem => problem.State != State.Note);
        Assert.Equal((3, new Pounds(10400), new Pounds(9000)), (week.Legs.Length, week.Types["Skua 9"].MaximumTakeoff, week.Types["Skua 9"].MaximumZeroFuel));
    }

    [Fact]
    public void A_file_with_a_delimiter_that_is_not_known_says_so()
    {
        using var folder = new TempFolder();
        var book = GoodBooks.Week();
        book["Cargo"].Insert(0, ["Cargo, one piece or lot a row, of the week"]);
        var csv = book.SaveCsv(folder.File("week"), '|', only: "Cargo");
        var problem = ProblemsTests.Only(BookReader.Read(
            [GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx")), csv, GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"))]), State.Fail, "week/Cargo");
        Assert.EndsWith("its rows could not be read; its cells are parted by |: save it with commas, semicolons or tabs", problem.Text,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_misspelled_column_is_pointed_out()
    {
        var week = GoodBooks.Read((_, book) => book["Legs"][0][7] = "Alternte");
        var problem = ProblemsTests.Only(week, State.Caution, "week.xlsx/Legs/H1");
        Assert.Equal("Alternte is not a column of Legs and was not read; did you mean Alternate?", problem.Text);
        Assert.Equal("XCOR", week.Legs[0].Extra["Alternte"]);
    }

    [Fact]
    public void A_starred_column_that_is_missing_breaks_every_leg_and_is_complained_of_once()
    {
        var week = GoodBooks.Read((_, book) => book["Legs"][0][15] = "Commander");
        var problem = ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/1");
        Assert.Contains("no column Captain", problem.Text, StringComparison.Ordinal);
        Assert.All(week.BrokenLegs, leg => Assert.Contains(problem, leg.Problems));
        Assert.Equal(3, week.BrokenLegs.Length);
    }

    [Fact]
    public void A_column_that_stands_twice_is_a_caution_and_the_first_is_read()
    {
        var week = GoodBooks.Read((_, book) => book["Legs"][0][10] = "Route");
        Assert.Contains("column J is read", ProblemsTests.Only(week, State.Caution, "week.xlsx/Legs/K1").Text, StringComparison.Ordinal);
        Assert.Equal("NORRA V12 TIDES", week.Legs[0].Route);
    }

    [Fact]
    public void A_sheet_without_a_header_row_is_complained_of()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            for (var column = 0; column < book["Cargo"][0].Length; column++) book["Cargo"][0][column] = "x";
        });
        Assert.Contains("no header row", ProblemsTests.Only(week, State.Fail, "week.xlsx/Cargo").Text, StringComparison.Ordinal);
        Assert.Equal(3, week.Legs.Length);
    }

    // Cargo that was not read weighs nothing, and a runway that a notice closes is open: figures that leave it out must not pass.
    [Theory]
    [InlineData("Cargo", State.Fail)]
    [InlineData("Notices", State.Fail)]
    [InlineData("Winds", State.Caution)]
    public void What_stands_in_a_sheet_without_a_header_row_is_missing_from_every_leg(string name, State expected)
    {
        var week = GoodBooks.Read((_, book) =>
        {
            for (var column = 0; column < book[name][0].Length; column++) book[name][0][column] = "x";
        });
        Assert.All(week.Legs, leg => Assert.Contains(leg.Doubts, doubt => doubt.State == expected && doubt.Cell == "week.xlsx/" + name));
    }

    [Fact]
    public void A_second_sheet_of_passengers_without_a_header_row_is_missing_from_every_leg_too()
    {
        var week = GoodBooks.Read((_, book) => book.Sheets.Add(("Manifest ", [["T101|all|Adra Ashmoor|168"], ["T101|all|Bevin Dunwharf|125"]])));
        Assert.All(week.Legs,
            leg => Assert.Contains(leg.Doubts, doubt => doubt.State == State.Fail && doubt.Text.Contains("parted by |", StringComparison.Ordinal)));
    }

    [Fact]
    public void Sheets_that_are_not_known_are_noted_and_near_names_pointed_out()
    {
        var week = GoodBooks.Read((operatorBook, book) =>
        {
            book.Sheets.Add(("Holidays", [["Who", "When"], ["all", "never"]]));
            book.Sheets.RemoveAll(sheet => sheet.Name == "Notices");
            book.Sheets.Add(("Notises", [["About"], ["XAND"]]));
        });
        Assert.Equal(State.Note, ProblemsTests.Only(week, State.Note, "week.xlsx/Holidays").State);
        Assert.Contains("did you mean Notices?", ProblemsTests.Only(week, State.Caution, "week.xlsx/Notises").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_sheet_in_two_books_is_joined()
    {
        using var folder = new TempFolder();
        var operatorBook = GoodBooks.Operator();
        operatorBook.Sheets.Add(("legs", [["Trip", "Leg", "Date", "Off blocks", "Aircraft", "From", "To", "Captain"],
            ["T300", 1, new DateTime(2026, 12, 9), "0800", "X-PLOV", "XBEL", "XCOR", "MOR"]]));
        var week = BookReader.Read([operatorBook.SaveXlsx(folder.File("a.xlsx")), GoodBooks.Week().SaveXlsx(folder.File("b.xlsx"))]);
        Assert.Equal(["T300/1", "T101/1", "T101/2", "T102/1"], week.Legs.Select(leg => leg.Key.ToString()));
        Assert.Equal("a.xlsx/legs/A2", week.Legs[0].Origin.Cell("Trip"));
    }

    [Fact]
    public void A_misspelled_item_of_the_operator_is_pointed_out_and_kept()
    {
        var week = GoodBooks.Read((operatorBook, _) => operatorBook.Add("Operator", "Turnarond [min]", 50).Add("Operator", "Report [min]", 75));
        Assert.Contains("did you mean Turnaround?", ProblemsTests.Only(week, State.Caution, "operator.xlsx/Operator/A17").Text, StringComparison.Ordinal);
        Assert.Contains("stands twice", ProblemsTests.Only(week, State.Caution, "operator.xlsx/Operator/A18").Text, StringComparison.Ordinal);
        Assert.Equal("50", week.Operator.Items["Turnarond [min]"]);
        Assert.Equal(Duration.FromMinutes(60), week.Operator.Report);
    }
}
