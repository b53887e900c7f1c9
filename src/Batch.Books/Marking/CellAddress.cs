using System.Globalization;
using Batch.Books.Editing;

namespace Batch.Books.Marking;

/// <summary>A cell as complaints and findings name it.</summary>
/// <param name="Book">Name of the book.</param>
/// <param name="Sheet">Name of the sheet.</param>
/// <param name="Row">Row; 0 for the sheet.</param>
/// <param name="Column">Column, A = 1; 0 for the row.</param>
internal readonly record struct CellAddress(string Book, string Sheet, int Row, int Column)
{
    /// <summary>Takes apart what <see cref="Cells.CellRef"/> puts together; null where the text is none.</summary>
    /// <param name="text">Such as <c>week.xlsx/Legs/F7</c>.</param>
    public static CellAddress? Of(string text)
    {
        var first = text.IndexOf('/', StringComparison.Ordinal);
        if (first <= 0 || first == text.Length - 1) return null;
        var last = text.LastIndexOf('/');
        if (last == first) return new CellAddress(text[..first], text[(first + 1)..], 0, 0);
        var place = text[(last + 1)..];
        var letters = place.TakeWhile(char.IsAsciiLetterUpper).Count();
        return int.TryParse(place.AsSpan(letters), NumberStyles.None, CultureInfo.InvariantCulture, out var row) && row is >= 1 and <= SheetText.LastRow
            ? new CellAddress(text[..first], text[(first + 1)..last], row, SheetText.ColumnOf(place))
            : null;
    }
}
