using Batch.Books.Tests.Support;

namespace Batch.Books.Tests.Headers;

public sealed class StraySheetsTests
{
    [Theory]
    [InlineData("Manifest", "Pax")]
    [InlineData("Manifest", "Manifests")]
    [InlineData("Cargo", "Freight wk 50")]
    [InlineData("Winds", "Winds Monday")]
    [InlineData("Notices", "NOTAM")]
    [InlineData("Bulletins", "Bulletin")]
    public void A_sheet_under_another_name_leaves_no_leg_without_doubt(string name, string written)
    {
        var week = GoodBooks.Read((_, book) => Rename(book, name, written));
        var problem = ProblemsTests.Only(week, State.Fail, "week.xlsx/" + written);
        Assert.Equal($"{written} has the columns of {name}, but no sheet is called {name}, so it was not read", problem.Text);
        Assert.Equal((written, $"the name {name}; hide the sheet if it is not meant"), (problem.Read, problem.Expected));
        Assert.Equal(3, week.Legs.Length);
        Assert.All(week.Legs, leg => Assert.Contains(problem, leg.Doubts));
    }

    [Fact]
    public void A_sheet_of_the_operator_book_under_another_name_is_told_too()
    {
        var week = GoodBooks.Read((operatorBook, _) => Rename(operatorBook, "Logged", "Hours flown"));
        var problem = ProblemsTests.Only(week, State.Fail, "operator.xlsx/Hours flown");
        Assert.All(week.Legs, leg => Assert.Contains(problem, leg.Doubts));
    }

    [Fact]
    public void A_copy_beside_the_sheet_and_a_page_of_ones_own_are_only_noted()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Sheets.Add(("Manifest (2)", [.. book["Manifest"]]));
            book.Sheets.Add(("Phones", [["Name", "Telephone", "Notes"], ["Home Ramp", "12", null]]));
        });
        Assert.All(week.Legs, leg => Assert.Empty(leg.Doubts));
        ProblemsTests.Only(week, State.Note, "week.xlsx/Manifest (2)");
        ProblemsTests.Only(week, State.Note, "week.xlsx/Phones");
    }

    [Fact]
    public void A_Legs_sheet_under_another_name_is_named_in_the_refusal()
    {
        var refused = Assert.Throws<BookException>(() => GoodBooks.Read((_, book) => Rename(book, "Legs", "Week 50")));
        Assert.Equal("no book has a sheet Legs (operator.xlsx, week.xlsx); week.xlsx/Week 50 has its columns: call that sheet Legs", refused.Message);
    }

    private static void Rename(SomeBook book, string name, string written)
    {
        var index = book.Sheets.FindIndex(sheet => sheet.Name == name);
        book.Sheets[index] = (written, book.Sheets[index].Rows);
    }
}
