namespace Batch.Books.Cells;

/// <summary>One row of a sheet.</summary>
/// <param name="Number">Row number as the spreadsheet shows it, 1 or more.</param>
/// <param name="Cells">Cells from column A on; may end early.</param>
/// <param name="Hidden">Whether the row is hidden or filtered away.</param>
internal sealed record RawRow(int Number, RawCell[] Cells, bool Hidden = false)
{
    /// <summary>The cell of a column, A = 1; blank beyond the end.</summary>
    public RawCell this[int column] => column >= 1 && column <= Cells.Length ? Cells[column - 1] : RawCell.Blank;

    /// <summary>Whether every cell is blank.</summary>
    public bool IsBlank => Array.TrueForAll(Cells, cell => cell.IsBlank);
}
