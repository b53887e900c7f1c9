using System.Globalization;
using System.Text;
using System.Xml;

namespace Batch.Sheets.Register;

/// <summary>Writes the rows of one sheet.</summary>
internal sealed class SheetWriter : IDisposable
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>Most characters that a cell holds (Excel specifications and limits).</summary>
    private const int MostCharacters = 32_767;

    /// <summary>Share of the letters of usual text that fit in bold; tried in print, no source.</summary>
    private const double BoldShare = 0.85;

    /// <summary>Height of a line of 9 point Arial [pt].</summary>
    private const double LinePoints = 11.5;

    /// <summary>Mean width of a letter against that of a digit, in which column widths are given.</summary>
    private const double WidthOfLetter = 0.83;

    private const int MostLines = 30;

    private static readonly LocalDateTime DayZero = new(1899, 12, 30, 0, 0);

    private readonly XmlWriter _xml;
    private readonly IReadOnlyList<BookColumn> _widths;
    private readonly int _columns;
    private readonly List<(string Cell, string Place)> _links = [];
    private string _row = "1";
    private int _column;
    private int _lines;
    private bool _isMeasured;

    /// <summary>Begins a sheet with its header row.</summary>
    /// <param name="to">Stream that takes it.</param>
    /// <param name="columns">Columns.</param>
    /// <param name="frozen">Columns that stay in sight.</param>
    /// <param name="isFirst">Whether it is the sheet that is shown first.</param>
    public SheetWriter(Stream to, IReadOnlyList<BookColumn> columns, int frozen, bool isFirst)
    {
        _xml = XmlWriter.Create(to, new XmlWriterSettings { Encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), CloseOutput = false });
        _widths = columns;
        _columns = columns.Count;
        _xml.WriteStartDocument(standalone: true);
        _xml.WriteStartElement("worksheet", Main);
        _xml.WriteRaw("<sheetPr><pageSetUpPr fitToPage=\"1\"/></sheetPr>");
        var corner = Letters(frozen) + "2";
        _xml.WriteRaw($"<sheetViews><sheetView {(isFirst ? "tabSelected=\"1\" " : "")}workbookViewId=\"0\"><pane xSplit=\"{Plain(frozen)}\" ySplit=\"1\" topLeftCell=\"{corner}\" activePane=\"bottomRight\" state=\"frozen\"/>"
            + $"<selection pane=\"topRight\"/><selection pane=\"bottomLeft\"/><selection pane=\"bottomRight\" activeCell=\"{corner}\" sqref=\"{corner}\"/></sheetView></sheetViews><sheetFormatPr defaultRowHeight=\"13\"/><cols>");
        for (var i = 0; i < _columns; i++)
        {
            _xml.WriteRaw($"<col min=\"{Plain(i + 1)}\" max=\"{Plain(i + 1)}\" width=\"{columns[i].Width.ToString("0.##", CultureInfo.InvariantCulture)}\" customWidth=\"1\"/>");
        }

        _xml.WriteRaw("</cols>");
        _xml.WriteStartElement("sheetData", Main);
        _xml.WriteStartElement("row", Main);
        _xml.WriteAttributeString("r", "1");
        // Headers are bold, so wider than the text that lines are reckoned for.
        var lines = columns.Max(column => LinesOf(column.Header, column.Width * BoldShare));
        _xml.WriteAttributeString("ht", ((lines * LinePoints) + 1.5).ToString("0.#", CultureInfo.InvariantCulture));
        _xml.WriteAttributeString("customHeight", "1");
        foreach (var column in columns) Text(column.Header, CellStyle.Header);
        _xml.WriteEndElement();
    }

    /// <summary>Rows written, the header included.</summary>
    public int Rows { get; private set; } = 1;

    /// <summary>The range of header and rows, such as <c>$A$1:$H$20</c>.</summary>
    public string Range => $"$A$1:${Letters(_columns - 1)}${Plain(Rows)}";

    /// <summary>Writes a row.</summary>
    /// <param name="cells">Writes its cells from left to right; called twice, first to measure the height, which not every program does for itself.</param>
    public void Row(Action<SheetWriter> cells)
    {
        Rows++;
        _row = Plain(Rows);
        (_column, _lines, _isMeasured) = (0, 1, true);
        cells(this);
        (_column, _isMeasured) = (0, false);
        _xml.WriteStartElement("row", Main);
        _xml.WriteAttributeString("r", _row);
        _xml.WriteAttributeString("ht", ((_lines * LinePoints) + 1.5).ToString("0.#", CultureInfo.InvariantCulture));
        _xml.WriteAttributeString("customHeight", "1");
        cells(this);
        _xml.WriteEndElement();
    }

    /// <summary>A text; signs that XML cannot hold are left out.</summary>
    /// <param name="text">The text.</param>
    /// <param name="style">Look.</param>
    public void Text(string text, CellStyle style = CellStyle.Text)
    {
        if (_isMeasured)
        {
            if (style == CellStyle.Wrapped) _lines = Math.Max(_lines, Math.Min(MostLines, LinesOf(text, _widths[_column].Width)));
            _column++;
            return;
        }

        if (!Start(text.Length > 0, style)) return;
        _xml.WriteAttributeString("t", "inlineStr");
        _xml.WriteStartElement("is", Main);
        _xml.WriteStartElement("t", Main);
        _xml.WriteAttributeString("xml", "space", null, "preserve");
        _xml.WriteString(Clean(text));
        _xml.WriteEndElement();
        _xml.WriteEndElement();
        _xml.WriteEndElement();
    }

    /// <summary>A text that leads to a place of the workbook.</summary>
    /// <param name="text">The text.</param>
    /// <param name="place">The place, such as <c>Answers!A20</c>.</param>
    public void Link(string text, string place)
    {
        if (!_isMeasured) _links.Add((Letters(_column) + _row, place));
        Text(text, CellStyle.Link);
    }

    /// <summary>A number; an empty cell where there is none.</summary>
    /// <param name="number">The number.</param>
    /// <param name="style">Look.</param>
    public void Number(double? number, CellStyle style) => Number(number, style, 4);

    private void Number(double? number, CellStyle style, int decimals)
    {
        if (_isMeasured)
        {
            _column++;
            return;
        }

        if (number is not { } value || !double.IsFinite(value))
        {
            Start(isFilled: false, style);
            return;
        }

        Start(isFilled: true, style);
        _xml.WriteElementString("v", Main,
            ((decimal)Math.Round(value, decimals, MidpointRounding.AwayFromZero)).ToString("0.##########", CultureInfo.InvariantCulture));
        _xml.WriteEndElement();
    }

    /// <summary>A date; an empty cell where there is none.</summary>
    /// <param name="date">The date.</param>
    public void Date(LocalDate? date) => Number(date is { } day ? Period.DaysBetween(DayZero.Date, day) : null, CellStyle.Date);

    /// <summary>A date with the time of day, to the minute.</summary>
    /// <param name="time">Local date and time.</param>
    public void DateTime(LocalDateTime time) => Number(Period.DaysBetween(DayZero.Date,
        time.Date) + Math.Round(time.TimeOfDay.NanosecondOfDay / (double)NodaConstants.NanosecondsPerMinute) / 1440, CellStyle.DateTime, 10);

    /// <summary>Ends the sheet.</summary>
    /// <param name="head">Printed above every page.</param>
    /// <param name="foot">Printed below every page.</param>
    /// <param name="isLarge">Whether the page is A3; else A4.</param>
    public void Finish(string head, string foot, bool isLarge)
    {
        _xml.WriteEndElement();
        _xml.WriteRaw($"<autoFilter ref=\"{Range.Replace("$", "", StringComparison.Ordinal)}\"/>");
        if (_links.Count > 0)
        {
            _xml.WriteRaw("<hyperlinks>");
            foreach (var (cell, place) in _links) _xml.WriteRaw($"<hyperlink ref=\"{cell}\" location=\"{place}\"/>");
            _xml.WriteRaw("</hyperlinks>");
        }

        _xml.WriteRaw($"<pageMargins left=\"0.4\" right=\"0.4\" top=\"0.6\" bottom=\"0.6\" header=\"0.3\" footer=\"0.3\"/><pageSetup paperSize=\"{(isLarge ? "8" : "9")}\" orientation=\"landscape\" fitToWidth=\"1\" fitToHeight=\"0\"/>");
        _xml.WriteRaw($"<headerFooter><oddHeader>&amp;L&amp;9{Printed(head)}&amp;R&amp;9Page &amp;P of &amp;N</oddHeader><oddFooter>&amp;L&amp;8{Printed(foot)}</oddFooter></headerFooter>");
        _xml.WriteEndElement();
        _xml.WriteEndDocument();
        _xml.Flush();
    }

    /// <inheritdoc/>
    public void Dispose() => _xml.Dispose();

    /// <summary>Lines that a text takes: words are put one after another while they fit the width.</summary>
    private static int LinesOf(string text, double width)
    {
        var (lines, used) = (1, 0.0);
        foreach (var word in text.Split(' '))
        {
            var length = word.Length * WidthOfLetter;
            if (used > 0 && used + length > width) (lines, used) = (lines + 1, 0);
            while (length > width) (lines, length) = (lines + 1, length - width);
            used += length + WidthOfLetter;
        }

        return lines;
    }

    /// <summary>Begins a cell with a value; one without is passed over.</summary>
    private bool Start(bool isFilled, CellStyle style)
    {
        var cell = Letters(_column++) + _row;
        if (!isFilled) return false;
        _xml.WriteStartElement("c", Main);
        _xml.WriteAttributeString("r", cell);
        _xml.WriteAttributeString("s", Plain((int)style));
        return true;
    }

    private static string Clean(string text)
    {
        var kept = text.Length > MostCharacters ? text[..MostCharacters] : text;
        return kept.All(XmlConvert.IsXmlChar) ? kept : new string([.. kept.Where(XmlConvert.IsXmlChar)]);
    }

    /// <summary>A text for a head or foot, in which an ampersand begins a command.</summary>
    private static string Printed(string text) => WorkbookParts.Escaped(Clean(text).Replace("&", "&&", StringComparison.Ordinal));

    private static string Letters(int column) => column < 26 ? ((char)('A' + column)).ToString() : Letters((column / 26) - 1) + (char)('A' + (column % 26));

    private static string Plain(int number) => number.ToString(CultureInfo.InvariantCulture);
}
