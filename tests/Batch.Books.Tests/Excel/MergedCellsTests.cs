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

    private static Flight.Week.OperatorWeek Read(Action<XLWorkbook> change)
    {
        using var folder = new TempFolder();
        return BookReader.Read([GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx")), GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"), change)]);
    }
}
