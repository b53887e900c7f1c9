using System.Globalization;
using Batch.Books.Cells;
using Batch.Books.Csv;

namespace Batch.Books.Import;

/// <summary>A list in a csv file: headers in its first row.</summary>
internal sealed class ImportTable
{
    private readonly string _name;
    private readonly ImmutableArray<int> _lines;
    private readonly Dictionary<string, int> _columns = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads the file.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="needed">Headers that it must have.</param>
    /// <exception cref="BookException">It cannot be opened, or is another kind of list.</exception>
    public ImportTable(string path, params ReadOnlySpan<string> needed)
    {
        _name = Path.GetFileName(path);
        var bytes = CsvFolder.Bytes(path);
        Sheet = CsvFolder.Sheet(Path.GetFileNameWithoutExtension(path), bytes, new CellRef(0, 0, _name));
        var text = CsvText.Decode(bytes);
        _lines = CsvText.LinesOfRecords(text, CsvText.Delimiter(text));
        if (Sheet.Rows.Count == 0) throw new BookException($"{_name} is empty");
        for (var i = 1; i <= Sheet.Rows[0].Cells.Length; i++) _columns.TryAdd(Sheet.Rows[0][i].Text, i);
        foreach (var header in needed)
        {
            if (_columns.ContainsKey(header)) continue;
            var near = NearWords.Nearest(header, _columns.Keys, 1);
            throw new BookException($"{_name} has no column {header}{(near.IsEmpty ? "" : $" (is it the one called {near[0]}?)")}; it has {string.Join(", ", _columns.Keys.Take(12))}");
        }
    }

    /// <summary>The file as a sheet.</summary>
    public RawSheet Sheet { get; }

    /// <summary>Its rows without the headers.</summary>
    public IEnumerable<RawRow> Rows => Sheet.Rows.Skip(1);

    /// <summary>The cell of a row under a header; blank where there is none.</summary>
    public RawCell Cell(RawRow row, string header) => _columns.TryGetValue(header, out var column) ? row[column] : RawCell.Blank;

    /// <summary>The text of a row under a header; empty where there is none.</summary>
    public string Text(RawRow row, string header) => Cell(row, header).Text;

    /// <summary>The number of a row under a header; null where there is none or it is none.</summary>
    public double? Number(RawRow row, string header) =>
        NumberText.Read(Text(row, header), decimalComma: false) is { IsGood: true } number ? number.Value : null;

    /// <summary>
    /// Where a row stands, such as <c>airports.csv line 17</c>: the line on which it begins, as an editor counts, where a field of an earlier row may hold line
    /// ends.
    /// </summary>
    public string Line(RawRow row) =>
        $"{_name} line {(row.Number <= _lines.Length ? _lines[row.Number - 1] : row.Number).ToString(CultureInfo.InvariantCulture)}";
}
