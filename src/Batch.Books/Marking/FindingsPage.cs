using System.Globalization;
using System.Text;
using System.Xml.Linq;
using Batch.Books.Cells;
using Batch.Books.Editing;
using Batch.Books.Packages;

namespace Batch.Books.Marking;

/// <summary>The sheet of findings: one line each with a link to its cell.</summary>
internal sealed class FindingsPage
{
    /// <summary>The beginning of the title, by which the sheet is known again.</summary>
    public const string Title = "tripbatch findings";

    private const int HeaderRow = 4;

    private static readonly ImmutableArray<(string Header, double Width)> Columns =
    [
        ("State", 11), ("Leg", 10), ("Day", 12), ("Aircraft", 11), ("Cell", 20), ("What was found", 62), ("Required", 11), ("Planned", 11), ("Unit", 8),
        ("What would help", 62), ("Who acts", 14), ("Check", 30), ("Rule", 30), ("Other cells", 34),
    ];

    private static readonly int CellColumn = Columns.Select(column => column.Header).ToList().IndexOf("Cell") + 1;

    private readonly Func<string, (CellAddress Address, bool IsHere)?> _find;
    private readonly int _plain;
    private readonly int _text;
    private readonly int _whole;
    private readonly int _decimal;
    private readonly int _header;
    private readonly int _title;
    private readonly int _link;
    private readonly int _fail;
    private readonly int _caution;

    /// <summary>Prepares the styles of the page.</summary>
    /// <param name="styles">The styles of the workbook.</param>
    /// <param name="marks">The styles of marks.</param>
    /// <param name="find">Where a named cell stands, and whether that is in this workbook; null for none.</param>
    public FindingsPage(StylesPart styles, MarkStyles marks, Func<string, (CellAddress Address, bool IsHere)?> find)
    {
        _find = find;
        int Format(int font, int numberFormat, int? fill, params object[] alignment) => StylesPart.FindOrAdd(styles.CellFormats, styles.Made(
            "xf", new XAttribute("numFmtId", numberFormat), new XAttribute("fontId", font), new XAttribute("fillId", fill ?? 0), new XAttribute("borderId", 0),
            new XAttribute("xfId", 0),
            new XAttribute("quotePrefix", 1), new XAttribute("applyNumberFormat", 1), new XAttribute("applyFont", 1), new XAttribute("applyFill", 1),
            new XAttribute("applyAlignment", 1),
            styles.Made("alignment", [new XAttribute("vertical", "top"), .. alignment])));

        var wrap = new XAttribute("wrapText", 1);
        var bold = styles.Font((font, space) => font.AddFirst(font.Element(space + "b") is null ? new XElement(space + "b") : null));
        var large = styles.Font((font, space) =>
        {
            if (font.Element(space + "b") is null) font.AddFirst(new XElement(space + "b"));
            font.Element(space + "sz")?.SetAttributeValue("val", 15);
        });
        var blue = styles.Font(Link);
        _plain = Format(0, 0, null);
        _text = Format(0, 0, null, wrap);
        _whole = Format(0, 3, null);
        _decimal = Format(0, styles.NumberFormat("#,##0.0#"), null);
        _header = Format(bold, 0, styles.Fill("FFDDE6EE"), wrap);
        _title = Format(large, 0, null);
        _link = Format(blue, 0, null, wrap);
        _fail = marks.Marked(_text, State.Fail);
        _caution = marks.Marked(_text, State.Caution);
    }

    /// <summary>The worksheet part.</summary>
    /// <param name="content">What it tells.</param>
    /// <param name="isStrict">Whether it is for the strict edition of the standard.</param>
    public byte[] Make(CheckedBookContent content, bool isStrict)
    {
        var rows = new StringBuilder();
        var links = new StringBuilder();
        Row(rows, 1, [(_title, CellValue.Of(Title))], 22);
        Row(rows, 2, [(_plain, CellValue.Of(content.Summary))]);
        Row(rows, HeaderRow, [.. Columns.Select(column => (_header, CellValue.Of(column.Header)))]);
        var row = HeaderRow;
        foreach (var line in content.Lines) Line(rows, links, ++row, line);
        if (content.Lines.IsEmpty) Row(rows, ++row, [(_plain, CellValue.Of("Nothing was found."))]);
        var last = CellRef.Letters(Columns.Length);
        var page = new StringBuilder();
        page.Append("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n");
        page.Append(CultureInfo.InvariantCulture,
            $"<worksheet xmlns=\"{Dialect.Sheets(isStrict)}\"><sheetPr><tabColor rgb=\"{MarkStyles.Red}\"/><pageSetUpPr fitToPage=\"1\"/></sheetPr>");
        page.Append(CultureInfo.InvariantCulture, $"<dimension ref=\"A1:{last}{row}\"/><sheetViews><sheetView showGridLines=\"0\" workbookViewId=\"0\"><pane ySplit=\"{HeaderRow}\" topLeftCell=\"A{HeaderRow + 1}\" activePane=\"bottomLeft\" state=\"frozen\"/></sheetView></sheetViews><cols>");
        for (var i = 0; i < Columns.Length; i++)
            page.Append(CultureInfo.InvariantCulture, $"<col min=\"{i + 1}\" max=\"{i + 1}\" width=\"{Columns[i].Width}\" customWidth=\"1\"/>");
        page.Append("</cols><sheetData>").Append(rows).Append("</sheetData>");
        if (!content.Lines.IsEmpty) page.Append(CultureInfo.InvariantCulture, $"<autoFilter ref=\"A{HeaderRow}:{last}{row}\"/>");
        if (links.Length > 0) page.Append("<hyperlinks>").Append(links).Append("</hyperlinks>");
        page.Append("<pageMargins left=\"0.4\" right=\"0.4\" top=\"0.5\" bottom=\"0.5\" header=\"0.3\" footer=\"0.3\"/><pageSetup orientation=\"landscape\" fitToHeight=\"0\"/></worksheet>");
        return Encoding.UTF8.GetBytes(page.ToString());
    }

    /// <summary>The word for the state of a line.</summary>
    public static string Word(CheckedLine line) => line.Word.Length > 0 ? line.Word : line.State switch
    {
        State.Fail => "fail",
        State.Caution => "caution",
        State.Note => "note",
    };

    private void Line(StringBuilder rows, StringBuilder links, int row, CheckedLine line)
    {
        var places = line.Cells.Append(line.LegCell).Where(cell => cell.Length > 0).Distinct(StringComparer.Ordinal)
            .Select(cell => (Cell: cell, Found: _find(cell))).ToArray();
        var linked = Array.Find(places, place => place.Found is { IsHere: true });
        var first = linked.Cell ?? (line.Cells.IsEmpty ? "" : line.Cells[0]);
        var others = line.Cells.Where(cell => cell != first);
        if (linked.Found is { } found)
        {
            links.Append(CultureInfo.InvariantCulture, $"<hyperlink ref=\"{CellRef.Letters(CellColumn)}{row}\" location=\"{XmlPart.Escaped(Location(found.Address))}\" display=\"{XmlPart.Escaped(Shown(found.Address))}\"/>");
        }

        Row(rows, row,
        [
            (line.State switch { State.Fail => _fail, State.Caution => _caution, State.Note => _text }, CellValue.Of(Word(line))),
            (_text, CellValue.Of(line.Leg)),
            (_text, CellValue.Of(line.Day is { } day ? DateText.Iso(day) : "")),
            (_text, CellValue.Of(line.Aircraft)),
            linked.Found is { } here ? (_link, CellValue.Of(Shown(here.Address))) : (_text, CellValue.Of(first)),
            (_text, CellValue.Of(line.Text)),
            Number(line.Required),
            Number(line.Actual),
            (_text, CellValue.Of(line.Unit)),
            (_text, CellValue.Of(string.Join('\n', line.Remedies))),
            (_text, CellValue.Of(line.Actor)),
            (_text, CellValue.Of(line.Check)),
            (_text, CellValue.Of(line.Citation)),
            (_text, CellValue.Of(string.Join('\n', others.Select(Named)))),
        ],
        Height(line));
    }

    private (int Style, CellValue Value) Number(double? value)
    {
        var rounded = value is { } number ? Math.Round(number, 2, MidpointRounding.AwayFromZero) : (double?)null;
        return (rounded is null || double.IsInteger(rounded.Value) ? _whole : _decimal, CellValue.Of(rounded));
    }

    // Not every program makes a row as high as its wrapped text when it opens a file.
    private static int Height(CheckedLine line)
    {
        const int PointsALine = 15;
        static int Lines(string text, double width) => text.Split('\n').Sum(part => 1 + (int)(part.Length / width));
        double Width(string header) => Columns.First(column => column.Header == header).Width;
        int[] lines =
        [
            Lines(line.Text, Width("What was found")), Lines(string.Join('\n', line.Remedies), Width("What would help")), Lines(line.Check, Width("Check")),
            Lines(line.Citation, Width("Rule")), Math.Max(1, line.Cells.Length - 1),
        ];
        return PointsALine * Math.Clamp(lines.Max(), 1, 20);
    }

    private static void Row(StringBuilder rows, int row, ImmutableArray<(int Style, CellValue Value)> cells, int height = 0)
    {
        rows.Append(CultureInfo.InvariantCulture, $"<row r=\"{row}\"");
        if (height > 0) rows.Append(CultureInfo.InvariantCulture, $" ht=\"{height}\" customHeight=\"1\"");
        rows.Append('>');
        for (var i = 0; i < cells.Length; i++)
            rows.Append(cells[i].Value.Xml("", CellRef.Letters(i + 1) + row.ToString(CultureInfo.InvariantCulture), cells[i].Style));
        rows.Append("</row>");
    }

    // Blue and underlined, in the order the schema demands of what a font says (ECMA-376 part 1, 18.8.22: a sequence of choices; programs write it so).
    private static void Link(XElement font, XNamespace space)
    {
        font.Elements(space + "color").Remove();
        font.Elements(space + "u").Remove();
        font.AddFirst(new XElement(space + "u"));
        var size = font.Element(space + "sz");
        var colour = new XElement(space + "color", new XAttribute("rgb", "FF0B5394"));
        if (size is null) font.Add(colour);
        else size.AddAfterSelf(colour);
    }

    // A cell of this book as its link would show it; of another with the book's name.
    private string Named(string cell) => _find(cell) is { IsHere: true } found ? Shown(found.Address) : cell;

    private static string Shown(CellAddress at) =>
        at.Row == 0 ? at.Sheet : $"{at.Sheet} {CellRef.Letters(at.Column)}{at.Row.ToString(CultureInfo.InvariantCulture)}";

    private static string Location(CellAddress at) =>
        $"'{at.Sheet.Replace("'", "''", StringComparison.Ordinal)}'!{CellRef.Letters(Math.Max(1, at.Column))}{Math.Max(1, at.Row).ToString(CultureInfo.InvariantCulture)}";
}
