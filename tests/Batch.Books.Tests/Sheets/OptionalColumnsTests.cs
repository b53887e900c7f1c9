using Batch.Books.Tests.Support;

namespace Batch.Books.Tests.Sheets;

/// <summary>Columns that a book may leave out.</summary>
public sealed class OptionalColumnsTests
{
    private static void AddColumn(SomeBook book, string sheet, string header, params object?[] values)
    {
        var rows = book[sheet];
        rows[0] = [.. rows[0], header];
        for (var row = 1; row < rows.Count; row++) rows[row] = [.. rows[row], values[(row - 1) % values.Length]];
    }

    [Fact]
    public void Accelerate_stop_distances_become_the_third_value_of_the_takeoff_table()
    {
        var table = GoodBooks.Read((op, _) => AddColumn(op, "Takeoff", "Accelerate-stop [m]", 1000)).Types["Skua 9"].Tables.Takeoff["15"];
        Assert.Equal("accelerate-stop distance [ft]", table.ValueNames[2]);
        Span<double> values = stackalloc double[3];
        Assert.True(table.Read([9000, 0, 0], values).IsInside);
        Assert.Equal(1000 / 0.3048, values[2], 0.001);
        Assert.Equal(2, GoodBooks.Read().Types["Skua 9"].Tables.Takeoff["15"].ValueNames.Length);
    }

    [Fact]
    public void Accelerate_stop_distances_in_some_rows_only_are_a_fault_of_the_table()
    {
        var week = GoodBooks.Read((op, _) => AddColumn(op, "Takeoff", "Accelerate-stop [ft]", 3000, null));
        Assert.Contains(week.Problems, problem => problem.State == State.Fail && problem.Cell.Contains("/Takeoff/", StringComparison.Ordinal));
    }

    [Fact]
    public void The_chord_takes_both_columns()
    {
        var chord = Assert.NotNull(GoodBooks.Read((op, _) =>
        {
            AddColumn(op, "Types", "LEMAC [in]", 150);
            AddColumn(op, "Types", "MAC [in]", 60);
        }).Types["Skua 9"].Chord);
        Assert.Equal(50, chord.PercentAt(new Inches(180)), 9);
        Assert.Null(GoodBooks.Read((op, _) => AddColumn(op, "Types", "MAC [in]", 60)).Types["Skua 9"].Chord);
    }

    [Fact]
    public void An_automatic_level_is_told_from_an_empty_cell()
    {
        var auto = GoodBooks.Read((_, week) => week.Set("Legs", 1, "Level", "auto")).Legs[0];
        var empty = GoodBooks.Read((_, week) => week.Set("Legs", 1, "Level", null)).Legs[0];
        Assert.Equal((null, true), (auto.Level, auto.IsLevelAuto));
        Assert.Equal((null, false), (empty.Level, empty.IsLevelAuto));
    }
}
