using System.Globalization;
using Batch.Books.Packages;

namespace Batch.Books.Editing;

/// <summary>The text of a worksheet part with the places of its rows, cells and columns.</summary>
internal sealed class SheetText
{
    /// <summary>Last row of a sheet (ECMA-376 leaves it open; spreadsheet programs have 2^20).</summary>
    public const int LastRow = 1_048_576;

    /// <summary>Width of a column that says nothing of it [characters] (the usual one of spreadsheet programs).</summary>
    private const double UsualWidth = 8.43;

    private readonly List<(int First, int Last, int Style, double Width)> _columns = [];

    /// <summary>Finds the places.</summary>
    /// <param name="text">The part.</param>
    /// <exception cref="System.Xml.XmlException">It holds no sheet data.</exception>
    public SheetText(string text)
    {
        Text = text;
        var root = XmlTags.Root(text);
        var name = text[root.NameStart..root.NameEnd];
        Prefix = name[..(name.IndexOf(':', StringComparison.Ordinal) + 1)];
        Root = root;
        var found = false;
        for (var tag = XmlTags.Next(text, root.End); tag is { } at; tag = XmlTags.Next(text, at.End))
        {
            if (at.IsClose && at.Is(text, Prefix + "cols")) ColumnsClose = at;
            if (at.IsClose) continue;
            if (at.Is(text, Prefix + "col")) ReadColumn(at);
            if (!at.Is(text, Prefix + "sheetData")) continue;
            (Data, found) = (at, true);
            DataClose = at.IsEmpty ? at : ReadRows(at.End);
            break;
        }

        if (!found) throw new System.Xml.XmlException("it holds no rows");
    }

    /// <summary>The part.</summary>
    public string Text { get; }

    /// <summary>The prefix of the sheet's own names with its colon; empty for none.</summary>
    public string Prefix { get; }

    /// <summary>The tag of the root element.</summary>
    public XmlTag Root { get; }

    /// <summary>The tag that opens the rows.</summary>
    public XmlTag Data { get; }

    /// <summary>The tag that closes the rows; the opening tag again where there is none.</summary>
    public XmlTag DataClose { get; }

    /// <summary>The tag that closes the widths of columns; null where there are none.</summary>
    public XmlTag? ColumnsClose { get; }

    /// <summary>The rows by number.</summary>
    public SortedDictionary<int, RowPlace> Rows { get; } = [];

    /// <summary>Whether the sheet is of the strict edition of the standard.</summary>
    public bool IsStrict => Text.AsSpan(Root.Start, Root.End - Root.Start).Contains("http://purl.oclc.org/ooxml/spreadsheetml/main", StringComparison.Ordinal);

    /// <summary>The style an absent cell is shown with: of its row, else of its column, else 0.</summary>
    public int StyleAt(int row, int column)
    {
        if (Rows.TryGetValue(row, out var place))
        {
            if (place.Cell(column) is { } cell) return cell.Style;
            if (place.Style is { } style) return style;
        }

        return _columns.Find(span => span.First <= column && column <= span.Last).Style;
    }

    /// <summary>The last of the columns from one on that together are at least so wide.</summary>
    /// <param name="column">The first.</param>
    /// <param name="characters">Width [characters].</param>
    public int ColumnsWide(int column, double characters)
    {
        const int Most = 40;
        var last = column;
        for (var width = WidthOf(last); width < characters && last < column + Most; width += WidthOf(last)) last++;
        return last;
    }

    /// <summary>Whether a width is set for a column.</summary>
    public bool HasWidth(int column) => _columns.Exists(span => span.First <= column && column <= span.Last);

    private double WidthOf(int column) => _columns.Find(span => span.First <= column && column <= span.Last) is { Width: > 0 } span ? span.Width : UsualWidth;

    private void ReadColumn(XmlTag tag) => _columns.Add((
        Number(tag, "min", 0), Number(tag, "max", 0), Number(tag, "style", 0),
        double.TryParse(tag.Value(Text, "width"), NumberStyles.Float, CultureInfo.InvariantCulture, out var width) ? width : 0));

    private XmlTag ReadRows(int from)
    {
        var (rowName, dataName) = (Prefix + "row", Prefix + "sheetData");
        var number = 0;
        for (var tag = XmlTags.Next(Text, from); tag is { } at; tag = XmlTags.Next(Text, at.End))
        {
            if (at.IsClose && at.Is(Text, dataName)) return at;
            if (at.IsClose || !at.Is(Text, rowName)) continue;
            number = Number(at, "r", number + 1);
            var cells = new List<CellPlace>();
            var close = at.IsEmpty ? at : ReadCells(at.End, rowName, cells);
            int? style = at.Value(Text, "customFormat") is "1" or "true" ? Number(at, "s", 0) : null;
            if (!Rows.TryAdd(number, new RowPlace(number, at, close, style, cells)))
                throw new System.Xml.XmlException($"row {number.ToString(CultureInfo.InvariantCulture)} stands twice");
            at = close;
        }

        throw new System.Xml.XmlException("its rows do not end");
    }

    private XmlTag ReadCells(int from, string rowName, List<CellPlace> cells)
    {
        var cellName = Prefix + "c";
        var column = 0;
        for (var tag = XmlTags.Next(Text, from); tag is { } at; tag = XmlTags.Next(Text, at.End))
        {
            if (at.IsClose && at.Is(Text, rowName)) return at;
            if (at.IsClose || !at.Is(Text, cellName)) continue;
            column = at.Value(Text, "r") is { } reference ? ColumnOf(reference) : column + 1;
            var close = XmlTags.Close(Text, at);
            cells.Add(new CellPlace(column, at, close.End, Number(at, "s", 0)));
            at = close;
        }

        throw new System.Xml.XmlException("a row does not end");
    }

    /// <summary>The column of a reference such as <c>AB12</c>, A = 1; 0 where it has none.</summary>
    public static int ColumnOf(string reference)
    {
        var column = 0;
        foreach (var letter in reference)
        {
            if (!char.IsAsciiLetterUpper(letter) || column > 20_000) break;
            column = (column * 26) + letter - 'A' + 1;
        }

        return column;
    }

    private int Number(XmlTag tag, string name, int otherwise) =>
        tag.ValueRange(Text, name) is { } range && int.TryParse(Text.AsSpan()[range], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : otherwise;
}
