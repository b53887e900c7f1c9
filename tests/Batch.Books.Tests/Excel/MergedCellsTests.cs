using Batch.Books.Tests.Support;
using ClosedXML.Excel;

namespace Batch.Books.Tests.Excel;

public sealed class MergedCellsTests
{
    [Fact]
    public void A_cell_merged_over_rows_holds_for_each_of_them_and_is_noted()
    {
        var week = Read(book =>
        {
            book.Worksheet("Legs").Range("A2:A3").Merge();
            book.Worksheet("Legs").Range("Q2:Q3").Merge();
            book.Worksheet("Manifest").Range("A2:A4").Merge();
        });
        Assert.Equal(["T101/1", "T101/2", "T102/1"], week.Legs.Select(leg => leg.Key.ToString()));
        Assert.Equal("TAN", week.Legs[1].SecondPilot);
        Assert.Equal(["T101", "T101", "T101"], week.Manifest.Select(line => line.Trip));
        Assert.All(week.Legs, leg => Assert.Empty(leg.Doubts));
        Assert.Equal("the value of cells merged over rows was read in each row: A2:A3, Q2:Q3", ProblemsTests.Only(week, State.Note, "week.xlsx/Legs").Text);
    }

    [Fact]
    public void Cells_merged_across_and_rows_without_anything_else_stay_as_they_were()
    {
        var week = Read(book =>
        {
            var legs = book.Worksheet("Legs");
            legs.Row(1).InsertRowsAbove(2);
            legs.Cell("A1").SetValue("Week 50");
            legs.Range("A1:F2").Merge();
            legs.Range("W4:X4").Merge();
            legs.Range("A6:A9").Merge();
        });
        Assert.Equal(3, week.Legs.Length);
        Assert.Empty(week.BrokenLegs);
        Assert.Empty(week.Legs[0].Override);
    }

    [Theory]
    [InlineData("Manifest", "Weight")]
    [InlineData("Manifest", "Bags")]
    [InlineData("Manifest", "Bag count")]
    public void An_amount_merged_over_several_passengers_is_asked_about_and_not_read(string sheet, string header)
    {
        var made = GoodBooks.Week();
        var (first, second) = (made.Cell(sheet, 1, header), made.Cell(sheet, 2, header));
        var week = Read(book => book.Worksheet(sheet).Range($"{first}:{second}").Merge());
        var problem = ProblemsTests.Only(week, State.Fail, $"week.xlsx/{sheet}/{first}");
        Assert.Equal($"{header} is one cell merged over several rows ({first}:{second}): the amount of each, or of all together? It was not read",
            problem.Text);
        Assert.Equal("an amount in each row; unmerge the cells", problem.Expected);
        Assert.All(week.Manifest.Take(2),
            line => Assert.False(header switch { "Weight" => line.Weight.HasValue, "Bags" => line.Bags.HasValue, _ => line.BagCount.HasValue }));
        Assert.Contains(problem, week.Legs.Single(leg => leg.Key.ToString() == "T101/1").Doubts);
        Assert.DoesNotContain(week.Problems, note => note.State == State.Note && note.Text.Contains("merged", StringComparison.Ordinal));
    }

    [Fact]
    public void Weights_and_bags_merged_as_one_block_are_asked_about_once()
    {
        var made = GoodBooks.Week();
        var (first, last) = (made.Cell("Manifest", 1, "Weight"), made.Cell("Manifest", 2, "Bags"));
        var week = Read(book => book.Worksheet("Manifest").Range($"{first}:{last}").Merge());
        Assert.StartsWith("Weight is one cell merged over several rows", ProblemsTests.Only(week, State.Fail, "week.xlsx/Manifest/" + first).Text,
            StringComparison.Ordinal);
        Assert.All(week.Manifest.Take(2), line => Assert.Equal((null, null), (line.Weight, line.Bags)));
    }

    private static Flight.Week.OperatorWeek Read(Action<XLWorkbook> change)
    {
        using var folder = new TempFolder();
        return BookReader.Read([GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx")), GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"), change)]);
    }
}
