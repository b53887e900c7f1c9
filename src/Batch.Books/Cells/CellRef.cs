using System.Globalization;

namespace Batch.Books.Cells;

/// <summary>The place of a cell, of a row (column 0) or of a sheet (row 0).</summary>
/// <param name="Book">Number of the book in the order given.</param>
/// <param name="Sheet">Number of the sheet in its book.</param>
/// <param name="Path">Book and sheet, such as <c>week.xlsx/Legs</c>.</param>
/// <param name="Row">Row, 1 or more; 0 for the sheet.</param>
/// <param name="Column">Column, A = 1; 0 for the row.</param>
internal readonly record struct CellRef(int Book, int Sheet, string Path, int Row = 0, int Column = 0) : IComparable<CellRef>
{
    /// <summary>Before.</summary>
    public static bool operator <(CellRef a, CellRef b) => a.CompareTo(b) < 0;

    /// <summary>After.</summary>
    public static bool operator >(CellRef a, CellRef b) => a.CompareTo(b) > 0;

    /// <summary>Before or the same.</summary>
    public static bool operator <=(CellRef a, CellRef b) => a.CompareTo(b) <= 0;

    /// <summary>After or the same.</summary>
    public static bool operator >=(CellRef a, CellRef b) => a.CompareTo(b) >= 0;

    /// <summary>The cell in this sheet.</summary>
    public CellRef At(int row, int column = 0) => this with { Row = row, Column = column };

    /// <inheritdoc/>
    public int CompareTo(CellRef other) => (Book, Sheet, Row, Column).CompareTo((other.Book, other.Sheet, other.Row, other.Column));

    /// <summary>Column letters, such as <c>AB</c> for 28; empty for 0.</summary>
    public static string Letters(int column)
    {
        var letters = "";
        for (; column > 0; column = (column - 1) / 26) letters = (char)('A' + ((column - 1) % 26)) + letters;
        return letters;
    }

    /// <summary>Such as <c>week.xlsx/Legs/F7</c>, <c>week.xlsx/Legs/7</c> or <c>week.xlsx/Legs</c>.</summary>
    public override string ToString() => Row == 0 ? Path : Path + "/" + Letters(Column) + Row.ToString(CultureInfo.InvariantCulture);
}
