using Batch.Books.Editing;

namespace Batch.Books.Import;

/// <summary>
/// A sheet of a workbook that takes imported rows. A new row looks like the last one that is filled; the columns of an empty sheet give their own look.
/// </summary>
/// <param name="edit">The changes to it.</param>
/// <param name="last">The last filled row; 0 where there is none.</param>
internal sealed class SheetTarget(SheetEdit edit, int last) : RowTarget
{
    /// <summary>The changes.</summary>
    public SheetEdit Edit => edit;

    /// <inheritdoc/>
    public override bool HasFormula(int row, int column) =>
        Cell(row, column) is { } cell
            && edit.Sheet.Text.AsSpan(cell.Tag.Start, cell.End - cell.Tag.Start).Contains($"<{edit.Sheet.Prefix}f", StringComparison.Ordinal);

    /// <inheritdoc/>
    public override void Put(int row, int column, CellValue value) =>
        edit.Put(row, column, Cell(row, column)?.Style ?? edit.Sheet.StyleAt(last > 0 && row > last ? last : row, column), value);

    private CellPlace? Cell(int row, int column) => edit.Sheet.Rows.TryGetValue(row, out var place) ? place.Cell(column) : null;
}
