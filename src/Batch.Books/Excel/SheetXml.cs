using System.Globalization;
using System.Xml;
using Batch.Books.Cells;
using DocumentFormat.OpenXml.Packaging;

namespace Batch.Books.Excel;

/// <summary>Reads the rows of one worksheet in one forward pass, without building its styles, drawings or formulas.</summary>
internal sealed class SheetXml(IReadOnlyList<string> texts, NumberLook[] looks, bool from1904, string book)
{
    /// <summary>Most cells of one sheet that are read.</summary>
    public const int GreatestCells = 3_000_000;

    /// <summary>Days from day zero of the 1900 system to that of the 1904 system (ECMA-376 part 1, 18.17.4.1).</summary>
    private const int DaysTo1904 = 1462;

    private readonly List<RawCell> _cells = [];
    private readonly MergedCells _merged = new(book);
    private int _read;

    /// <summary>The merged cells whose value was put into other rows, once the rows are read.</summary>
    public ImmutableArray<MergedArea> Spread { get; private set; } = [];

    /// <summary>The merged cells, once the rows are read.</summary>
    public ImmutableArray<MergedArea> Merged => _merged.Areas;

    /// <summary>The rows that hold anything.</summary>
    public IReadOnlyList<RawRow> Rows(WorksheetPart part)
    {
        var rows = new List<RawRow>();
        using var reader = PartReader.Open(part, book);
        var number = 0;
        while (reader.Read())
        {
            if (reader.NodeType != XmlNodeType.Element) continue;
            if (reader.LocalName == "mergeCell") _merged.Add(reader.GetAttribute("ref"));
            if (reader.LocalName != "row") continue;
            number = Number(reader.GetAttribute("r")) is > 0 and var written ? written : number + 1;
            var hidden = reader.GetAttribute("hidden") is "1" or "true";
            ReadCells(reader);
            if (_cells.Exists(cell => !cell.IsBlank)) rows.Add(new RawRow(number, [.. _cells], hidden));
        }

        Spread = _merged.Spread(rows);
        return rows;
    }

    /// <summary>The number of the column that a cell such as <c>AB7</c> stands in; 0 where it names none.</summary>
    public static int Column(string? reference)
    {
        var column = 0;
        foreach (var letter in reference ?? "")
        {
            if (!char.IsAsciiLetterUpper(letter)) break;
            column = (column * 26) + letter - 'A' + 1;
            if (column > 20000) break;
        }

        return column;
    }

    private void ReadCells(XmlReader reader)
    {
        _cells.Clear();
        if (reader.IsEmptyElement) return;
        var depth = reader.Depth;
        while (reader.Read() && reader.Depth > depth)
        {
            if (reader.NodeType != XmlNodeType.Element || reader.LocalName != "c") continue;
            var column = Column(reader.GetAttribute("r"));
            if (column == 0) column = _cells.Count + 1;
            if (++_read > GreatestCells || column > 16384) throw new BookException($"{book} has more cells than a week's book could need");
            var cell = ReadCell(reader, reader.GetAttribute("t"), NumberFormats.Style(reader.GetAttribute("s")));
            if (cell.IsBlank) continue;
            while (_cells.Count < column) _cells.Add(RawCell.Blank);
            _cells[column - 1] = cell;
        }
    }

    private RawCell ReadCell(XmlReader reader, string? type, int style)
    {
        if (reader.IsEmptyElement) return RawCell.Blank;
        var depth = reader.Depth;
        string? value = null;
        var formula = false;
        var inValue = false;
        while (reader.Read() && reader.Depth > depth)
        {
            if (reader.NodeType == XmlNodeType.Element)
            {
                inValue = reader.LocalName == "v" && !reader.IsEmptyElement;
                formula |= reader.LocalName == "f";
                if (reader.LocalName == "is") value = SharedTexts.Text(reader, book);
            }
            else if (inValue && reader.NodeType is XmlNodeType.Text or XmlNodeType.SignificantWhitespace or XmlNodeType.Whitespace or XmlNodeType.CDATA)
            {
                value = reader.Value;
                inValue = false;
            }
        }

        if (value is null) return formula && type != "str" ? RawCell.OfError("formula without a stored value") : RawCell.Blank;
        return type switch
        {
            "s" => Number(value) is >= 0 and var index && index < texts.Count ? RawCell.OfText(texts[index]) : RawCell.OfError("text missing in the file"),
            "str" or "inlineStr" => RawCell.OfText(value),
            "b" => RawCell.OfBoolean(value is "1" or "true"),
            "e" => RawCell.OfError(value),
            "d" => RawCell.OfText(value),
            _ => OfNumber(value, style < looks.Length ? looks[style] : NumberLook.Plain),
        };
    }

    private RawCell OfNumber(string text, NumberLook look)
    {
        if (!double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) || !double.IsFinite(number)) return RawCell.OfText(text);
        var isDay = (look & NumberLook.Date) != NumberLook.Plain || ((look & NumberLook.Clock) != NumberLook.Plain && number >= 18264 - DaysTo1904);
        return RawCell.OfNumber(isDay && from1904 ? number + DaysTo1904 : number, look);
    }

    private static int Number(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1;
}
