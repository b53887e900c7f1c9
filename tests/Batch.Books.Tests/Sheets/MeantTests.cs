using Batch.Books.Tests.Support;

namespace Batch.Books.Tests.Sheets;

/// <summary>What dispatchers type that is not quite what is understood: what it may mean is shown, and nothing is taken for granted.</summary>
public sealed class MeantTests
{
    [Theory]
    [InlineData("Off blocks", "19.30", "is not a time", "19:30")]
    [InlineData("Date", "3.12.26", "has a year of two digits", "2026-12-03")]
    [InlineData("Date", "4 Dec 26", "has a year of two digits", "2026-12-04")]
    [InlineData("Level", "9.000", "is the sign in it meant to part the thousands?", "9000")]
    public void The_complaint_shows_what_may_be_meant(string column, string typed, string says, string expected)
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 1, column, typed));
        var problem = week.Problems.First(problem => problem.State == State.Fail);
        Assert.Contains(says, problem.Text, StringComparison.Ordinal);
        Assert.Equal(typed, problem.Read);
        Assert.Equal(expected, problem.Expected);
    }

    [Theory]
    [InlineData("19h30")]
    [InlineData("19H30")]
    public void An_h_between_hours_and_minutes_is_read(string typed) =>
        Assert.Equal(new LocalTime(19, 30), GoodBooks.Read((_, book) => book.Set("Legs", 1, "Off blocks", typed)).Legs[0].OffBlocksLocal.TimeOfDay);

    [Fact]
    public void A_wind_that_cannot_be_read_is_a_caution_of_the_legs_of_its_time()
    {
        var good = GoodBooks.Read();
        Assert.All(good.Legs, leg => Assert.Empty(leg.Doubts));
        var week = GoodBooks.Read((_, book) => book.Set("Winds", 1, "Direction", "WNW"));
        Assert.Equal(good.Winds.Length - 1, week.Winds.Length);
        var doubt = Assert.Single(week.Legs[0].Doubts);
        Assert.Equal(State.Caution, doubt.State);
        Assert.StartsWith("A row of Winds could not be read, and the leg is planned without it: Direction is not a number", doubt.Text,
            StringComparison.Ordinal);
        Assert.Contains("/Winds/", doubt.Cell, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wind_of_another_day_does_not_touch_a_leg()
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Set("Winds", 1, "From", "2020-01-01T00:00Z");
            book.Set("Winds", 1, "To", "2020-01-02T00:00Z");
            book.Set("Winds", 1, "Speed", "22G35");
        });
        Assert.All(week.Legs, leg => Assert.Empty(leg.Doubts));
    }

    [Fact]
    public void A_sheet_of_legs_under_another_name_is_named()
    {
        var error = Assert.Throws<BookException>(() => GoodBooks.Read((_, book) => book.Rename("Legs", "Legs week 49")));
        Assert.Contains("week.xlsx/Legs week 49 has its columns: call that sheet Legs", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_leg_that_leaves_before_the_one_before_is_asked_about_at_its_date()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Legs", 2, "Off blocks", new TimeSpan(0, 30, 0)));
        var problem = Assert.Single(week.Problems, problem => problem.Text.Contains("leaves before", StringComparison.Ordinal));
        Assert.Equal((State.Caution, "T101/2 leaves before T101/1; is it the next day, 8 Dec?", "2026-12-08"), (problem.State, problem.Text, problem.Expected));
        Assert.EndsWith("/Legs/C3", problem.Cell, StringComparison.Ordinal);
        Assert.Equal(3, week.Legs.Length);
    }

    [Fact]
    public void A_workbook_of_another_program_is_not_passed_over_in_silence()
    {
        using var folder = new TempFolder();
        GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx"));
        File.WriteAllText(folder.File("week.ods"), "");
        var missing = Assert.Throws<BookException>(() => BookReader.Read([Path.GetDirectoryName(folder.File("x")) ?? ""]));
        Assert.Contains("week.ods stands in the folder and is not read; open it in a spreadsheet program and save it as .xlsx", missing.Message,
            StringComparison.Ordinal);
        Assert.Contains("save it as .xlsx", Assert.Throws<BookException>(() => BookReader.Read([folder.File("week.ods")])).Message, StringComparison.Ordinal);

        GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"));
        var problem = Assert.Single(BookReader.Read([Path.GetDirectoryName(folder.File("x")) ?? ""]).Problems, problem => problem.Cell == "week.ods");
        Assert.Equal(State.Caution, problem.State);
    }
}
