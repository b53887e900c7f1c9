namespace Batch.Books.Cells;

/// <summary>Cells that a spreadsheet shows as one; only the first holds a value.</summary>
/// <param name="Name">As the file names it, such as <c>E5:E8</c>.</param>
/// <param name="FirstRow">Row of the first cell, 1 or more.</param>
/// <param name="FirstColumn">Column of the first cell, A = 1.</param>
/// <param name="LastRow">Row of the last cell.</param>
/// <param name="LastColumn">Column of the last cell.</param>
internal sealed record MergedArea(string Name, int FirstRow, int FirstColumn, int LastRow, int LastColumn)
{
    /// <summary>Whether it stands in one column over several rows, so that the value shown once holds for every row.</summary>
    public bool IsOverRows => FirstColumn == LastColumn && LastRow > FirstRow;

    /// <summary>Whether a cell is one of those that are not seen because the first stands for them.</summary>
    /// <param name="row">Row, 1 or more.</param>
    /// <param name="column">Column, A = 1.</param>
    public bool Hides(int row, int column) => Covers(row, column) && (row > FirstRow || column > FirstColumn);

    /// <summary>Whether a cell is one of the area.</summary>
    /// <param name="row">Row, 1 or more.</param>
    /// <param name="column">Column, A = 1.</param>
    public bool Covers(int row, int column) => row >= FirstRow && row <= LastRow && column >= FirstColumn && column <= LastColumn;
}
