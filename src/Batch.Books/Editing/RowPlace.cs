using Batch.Books.Packages;

namespace Batch.Books.Editing;

/// <summary>Where a row stands in the text of its sheet.</summary>
/// <param name="Number">Row number, 1 or more.</param>
/// <param name="Tag">Its opening tag.</param>
/// <param name="Close">Its closing tag; the opening tag again where the row is empty.</param>
/// <param name="Style">The style its cells begin with; null where it sets none.</param>
/// <param name="Cells">Its cells in order.</param>
internal sealed record RowPlace(int Number, XmlTag Tag, XmlTag Close, int? Style, List<CellPlace> Cells)
{
    /// <summary>The cell of a column; null where the row has none.</summary>
    public CellPlace? Cell(int column)
    {
        var at = Cells.FindIndex(cell => cell.Column == column);
        return at < 0 ? null : Cells[at];
    }
}
