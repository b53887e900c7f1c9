using System.Text;
using Batch.Books.Packages;

namespace Batch.Books.Csv;

/// <summary>Changes to single fields of a csv file, in its own delimiter, line ends and encoding. Every other character stays what it was.</summary>
internal sealed class CsvEdit
{
    private readonly byte[] _bytes;
    private readonly string _text;
    private readonly char _delimiter;
    private readonly string _newLine;
    private readonly List<List<Range>> _records;
    private readonly SortedDictionary<int, SortedDictionary<int, string>> _put = [];

    /// <summary>Finds the fields.</summary>
    /// <param name="bytes">The file.</param>
    public CsvEdit(byte[] bytes)
    {
        _bytes = bytes;
        _text = CsvText.Decode(bytes);
        _delimiter = CsvText.Delimiter(_text);
        _newLine = _text.Contains("\r\n", StringComparison.Ordinal) || !_text.Contains('\n', StringComparison.Ordinal) ? "\r\n" : "\n";
        _records = Records();
    }

    /// <summary>Writes a field.</summary>
    /// <param name="row">Record, 1 or more; one after the last adds records.</param>
    /// <param name="column">Field, 1 or more; one after the last adds fields.</param>
    /// <param name="value">Its text.</param>
    public void Put(int row, int column, string value)
    {
        if (!_put.TryGetValue(row, out var fields)) _put.Add(row, fields = []);
        fields[column] = Quoted(value);
    }

    /// <summary>The changed file.</summary>
    public byte[] Done()
    {
        var splices = new Splices();
        var added = new StringBuilder();
        var next = _records.Count + 1;
        foreach (var (row, fields) in _put)
        {
            if (row <= _records.Count)
            {
                Into(splices, _records[row - 1], fields);
                continue;
            }

            for (; next < row; next++) added.Append(_newLine);
            added.Append(Joined(fields, 1)).Append(_newLine);
            next++;
        }

        if (added.Length > 0) splices.Insert(_text.Length, (_text.Length == 0 || _text[^1] is '\n' or '\r' ? "" : _newLine) + added);
        return CsvText.Encode(splices.Apply(_text), _bytes);
    }

    private void Into(Splices splices, List<Range> record, SortedDictionary<int, string> fields)
    {
        foreach (var (column, value) in fields.Where(field => field.Key <= record.Count))
            splices.Replace(record[column - 1].Start.Value, record[column - 1].End.Value, value);
        var beyond = new SortedDictionary<int, string>(fields.Where(field => field.Key > record.Count).ToDictionary());
        if (beyond.Count > 0) splices.Insert(record[^1].End.Value, _delimiter + Joined(beyond, record.Count + 1));
    }

    private string Joined(SortedDictionary<int, string> fields, int from) =>
        string.Join(_delimiter, Enumerable.Range(from, fields.Keys.Last() - from + 1).Select(column => fields.GetValueOrDefault(column, "")));

    private string Quoted(string value) =>
        value.AsSpan().IndexOfAny('"', '\r', '\n') >= 0 || value.Contains(_delimiter, StringComparison.Ordinal) || value.Trim() != value
            ? "\"" + value.Replace("\"", "\"\"", StringComparison.Ordinal) + "\""
            : value;

    // A quotation mark opens a field only at its beginning, as the reader takes it (RFC 4180, 2.5 to 2.7).
    private List<List<Range>> Records()
    {
        var records = new List<List<Range>>();
        var record = new List<Range>();
        var (start, isQuoted) = (0, false);
        for (var i = 0; i < _text.Length; i++)
        {
            var letter = _text[i];
            if (letter == '"' && (isQuoted || i == start)) isQuoted = !isQuoted;
            else if (letter == '"' && i > start && _text[i - 1] == '"' && _text[start] == '"') isQuoted = true;
            if (isQuoted) continue;
            if (letter == _delimiter || letter is '\n' or '\r')
            {
                record.Add(start..i);
                if (letter == '\r' && i + 1 < _text.Length && _text[i + 1] == '\n') i++;
                start = i + 1;
            }

            if (letter is '\n' or '\r')
            {
                records.Add(record);
                record = [];
            }
        }

        if (start < _text.Length || record.Count > 0) records.Add([.. record, start.._text.Length]);
        return records;
    }
}
