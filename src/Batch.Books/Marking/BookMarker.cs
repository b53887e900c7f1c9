using Batch.Books.Cells;
using Batch.Books.Editing;
using Batch.Books.Headers;
using Batch.Books.Packages;
using Batch.Books.Sheets;
using Batch.Books.Units;

namespace Batch.Books.Marking;

/// <summary>
/// Marks one workbook: fills and comments the offending cells, adds the sheet of findings and the computed columns; takes the marks of an earlier run off
/// first.
/// </summary>
internal sealed class BookMarker
{
    private readonly RawBook _book;
    private readonly CheckedBookContent _content;
    private readonly WorkbookParts _workbook;
    private readonly StylesPart _styles;
    private readonly MarkStyles _marks;
    private readonly Dictionary<string, RawSheet> _sheets;
    private readonly Dictionary<string, Dictionary<int, RawRow>> _rows;
    private readonly Dictionary<(string Sheet, int Row, int Column), List<CheckedLine>> _found = [];
    private readonly List<string> _notes = [];

    private BookMarker(RawBook book, Package package, CheckedBookContent content)
    {
        (_book, _content) = (book, content);
        _workbook = new WorkbookParts(package);
        _styles = new StylesPart(_workbook);
        _marks = new MarkStyles(_styles);
        _sheets = book.Sheets.DistinctBy(sheet => sheet.Name, StringComparer.Ordinal).ToDictionary(sheet => sheet.Name, StringComparer.Ordinal);
        _rows = _sheets.ToDictionary(pair => pair.Key, pair => pair.Value.Rows.DistinctBy(row => row.Number).ToDictionary(row => row.Number),
            StringComparer.Ordinal);
    }

    /// <summary>Marks a workbook.</summary>
    /// <param name="book">The book as it was read.</param>
    /// <param name="package">Its parts; they are changed.</param>
    /// <param name="content">What was found.</param>
    /// <returns>What could not be kept or marked.</returns>
    /// <exception cref="System.Xml.XmlException">A part that must be changed cannot be understood.</exception>
    /// <exception cref="InvalidDataException">A part that must be there is missing.</exception>
    public static ImmutableArray<string> Mark(RawBook book, Package package, CheckedBookContent content) => new BookMarker(book, package, content).Mark();

    private ImmutableArray<string> Mark()
    {
        foreach (var line in _content.Lines.Where(line => line.State != State.Note)) Collect(line);
        foreach (var sheet in _book.Sheets)
        {
            if (_workbook.Sheet(sheet.Name) is { } part && !IsFindings(sheet)) MarkSheet(sheet, part);
        }

        WriteFindings();
        _styles.Save();
        if (_workbook.Package.Names.Any(name => name.StartsWith("_xmlsignatures/", StringComparison.OrdinalIgnoreCase)))
            _notes.Add($"{_book.Name} is signed; the marks make the signature of the checked copy void");
        return [.. _notes];
    }

    private void Collect(CheckedLine line)
    {
        var here = line.Cells.Select(Find).Where(place => place is { IsHere: true, Address.Row: > 0 }).Select(place => place?.Address ?? default).ToArray();
        if (here.Length == 0 && Find(line.LegCell) is { IsHere: true, Address.Row: > 0 } leg) here = [leg.Address];
        foreach (var at in here.Distinct())
        {
            if (!_found.TryGetValue((at.Sheet, at.Row, at.Column), out var lines)) _found.Add((at.Sheet, at.Row, at.Column), lines = []);
            if (!lines.Exists(known => Says(known.Text, line.Text))) lines.Add(line);
        }
    }

    // A leg that cannot be planned repeats the complaint about the cell that it needs.
    private static bool Says(string known, string text) => text.Contains(known, StringComparison.Ordinal) || known.StartsWith(text, StringComparison.Ordinal);

    // A row is named by its first filled cell.
    private (CellAddress Address, bool IsHere)? Find(string cell)
    {
        if (CellAddress.Of(cell) is not { } at) return null;
        if (at.Book != _book.Name || !_sheets.TryGetValue(at.Sheet, out var sheet)) return (at, false);
        if (at is { Row: > 0, Column: 0 })
        {
            var row = _rows[at.Sheet].GetValueOrDefault(at.Row);
            at = at with { Column = row is null ? 1 : Math.Max(1, Array.FindIndex(row.Cells, filled => !filled.IsBlank) + 1) };
        }

        // Of merged cells only the first is seen.
        if (sheet.Merged.FirstOrDefault(area => area.Hides(at.Row, at.Column)) is { } merged)
            at = at with { Row = merged.FirstRow, Column = merged.FirstColumn };
        return (at, true);
    }

    private void MarkSheet(RawSheet sheet, string part)
    {
        var text = _workbook.Text(part);
        var places = new SheetText(text.Text);
        var edit = new SheetEdit(places);
        var found = _found.Where(pair => pair.Key.Sheet == sheet.Name).ToDictionary(pair => (pair.Key.Row, pair.Key.Column), pair => pair.Value);
        var header = LegsHeader(sheet);
        if (header is not null) ResultColumns.Remove(edit, header);
        foreach (var cell in places.Rows.Values.SelectMany(row => row.Cells, (row, cell) => (row.Number, Place: cell)))
        {
            if (header is not null && header.Results.Contains(cell.Place.Column) && cell.Number >= header.Row) continue;
            var before = _marks.Unmarked(cell.Place.Style);
            edit.SetStyle(cell.Place, found.TryGetValue((cell.Number, cell.Place.Column), out var lines) ? _marks.Marked(before, Worst(lines)) : before);
        }

        foreach (var ((row, column), lines) in found)
        {
            if (places.Rows.GetValueOrDefault(row)?.Cell(column) is null)
                edit.Put(row, column, _marks.Marked(_marks.Unmarked(places.StyleAt(row, column)), Worst(lines)), CellValue.Empty);
        }

        if (header is not null && _content.HasResultColumns) ResultColumns.Write(edit, header, _styles, _marks, _content.WeightUnit, LegRows(sheet));
        var comments = new SheetComments(_workbook, part, edit);
        foreach (var (row, column) in comments.Replace(found.ToDictionary(pair => pair.Key, pair => CommentText.Of([.. pair.Value.Select(Say)]))))
        {
            _notes.Add(
                $"{sheet.Place.At(row, column)} is coloured, but its comment could not be written beside what stands there already; see the sheet of findings");
        }

        _workbook.Package.Put(part, text.Bytes(edit.Done()));
    }

    private static HeaderMatch? LegsHeader(RawSheet sheet) => HeaderText.Plain(sheet.Name) == HeaderText.Plain(LegsSheet.Plan.Name)
        ? HeaderMatch.Find(sheet, LegsSheet.Plan, UnitDefaults.None, new Complaints())
        : null;

    private IEnumerable<(int Row, LegResult Leg)> LegRows(RawSheet sheet)
    {
        foreach (var leg in _content.Legs)
        {
            if (CellAddress.Of(leg.Row) is { Row: > 0 } at && at.Book == _book.Name && at.Sheet == sheet.Name) yield return (at.Row, leg);
        }
    }

    private void WriteFindings()
    {
        var page = new FindingsPage(_styles, _marks, Find).Make(_content with { Lines = [.. _content.Lines.Select(Shortened)] }, _workbook.IsStrict);
        if (_book.Sheets.FirstOrDefault(IsFindings) is { } earlier && _workbook.Sheet(earlier.Name) is { } part)
        {
            _workbook.Package.Put(part, page);
            return;
        }

        var taken = _workbook.Sheets.Select(sheet => sheet.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var name = AllSheets.FindingsNames.FirstOrDefault(free => !taken.Contains(free));
        if (name is null)
            _notes.Add($"{_book.Name} has sheets called {string.Join(" and ", AllSheets.FindingsNames)} of its own; no sheet of findings was added");
        else _workbook.AddSheet(name, page);
    }

    private static bool IsFindings(RawSheet sheet) =>
        AllSheets.FindingsNames.Contains(sheet.Name, StringComparer.OrdinalIgnoreCase) && sheet.Rows.Count > 0 && sheet.Rows[0][1].Text == FindingsPage.Title;

    private static State Worst(List<CheckedLine> lines) => lines.Max(line => line.State);

    private string Say(CheckedLine line)
    {
        const int MostWays = 2;
        var head = string.Join("  ", new[] { FindingsPage.Word(line).ToUpperInvariant(), line.Leg, line.Check }.Where(word => word.Length > 0));
        var numbers = line is { Required: { } required, Actual: { } actual }
            ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"\nRequired {required:#,##0.##}, planned {actual:#,##0.##} {line.Unit}")
                .TrimEnd()
            : "";
        var ways = line.Remedies.Length > MostWays ? "; or: see the sheet of findings" : "";
        var remedies = line.Remedies.IsEmpty ? "" : "\nWould help: " + string.Join("; or: ", line.Remedies.Take(MostWays)) + ways;
        return Short($"{head}\n{line.Text}{numbers}{remedies}");
    }

    private CheckedLine Shortened(CheckedLine line) => line with { Text = Short(line.Text), Remedies = [.. line.Remedies.Select(Short)] };

    // Inside a book its own name before each cell only takes room.
    private string Short(string text) => text.Replace(_book.Name + "/", "", StringComparison.Ordinal);
}
