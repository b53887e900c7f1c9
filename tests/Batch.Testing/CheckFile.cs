using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Batch.Testing;

/// <summary>
/// A file of values from outside the program, that a test compares with. Head lines begin with <c>#</c>: <c># source:</c> (one or more; with a column named
/// source each is <c>KEY = text</c> and the column names the key, or the column holds the text itself), <c># columns:</c> names with unit and accuracy,
/// <c># tolerance:</c> and <c># note:</c>; then comma separated rows. A file without source, columns or tolerance is refused, as is a row without source.
/// </summary>
public sealed partial class CheckFile
{
    private readonly Dictionary<string, CheckRow> _byId;

    private CheckFile(string name, Dictionary<string, List<string>> head, IReadOnlyList<CheckRow> rows)
    {
        Name = name;
        Sources = head["source"];
        Tolerance = string.Join(' ', head["tolerance"]);
        Notes = head.TryGetValue("note", out var notes) ? notes : [];
        Rows = rows;
        _byId = rows.ToDictionary(r => r.Id, StringComparer.Ordinal);
    }

    /// <summary>Name of the file.</summary>
    public string Name { get; }

    /// <summary>The source lines as written.</summary>
    public IReadOnlyList<string> Sources { get; }

    /// <summary>What difference is allowed, and why.</summary>
    public string Tolerance { get; }

    /// <summary>Remarks.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>The rows in the order of the file; never empty.</summary>
    public IReadOnlyList<CheckRow> Rows { get; }

    /// <summary>The row whose first column holds an id.</summary>
    public CheckRow this[string id] => _byId[id];

    /// <summary>The ids of all rows, or of those that satisfy a condition, as data of a theory.</summary>
    public IEnumerable<object[]> Ids(Func<CheckRow, bool>? where = null) => Rows.Where(where ?? (_ => true)).Select(r => new object[] { r.Id });

    /// <summary>Reads a check file of the running test project, from its folder Checks.</summary>
    /// <param name="name">Name of the file with its ending.</param>
    public static CheckFile Read(string name) => ReadFrom(Path.Combine(AppContext.BaseDirectory, "Checks", name));

    /// <summary>Reads a check file.</summary>
    /// <param name="path">Path of the file.</param>
    public static CheckFile ReadFrom(string path) => Parse(Path.GetFileName(path), File.ReadAllText(path));

    /// <summary>Reads the text of a check file.</summary>
    /// <param name="name">Name for complaints.</param>
    /// <param name="text">Text of the file.</param>
    /// <exception cref="FormatException">Source, columns or tolerance are missing, a row
    /// has another number of fields or no source, or two rows have one id.</exception>
    public static CheckFile Parse(string name, string text)
    {
        var head = new Dictionary<string, List<string>>(StringComparer.Ordinal);
        foreach (var line in text.Split('\n').TakeWhile(l => l.StartsWith('#')))
        {
            var match = HeadLine().Match(line);
            if (!match.Success) throw new FormatException($"{name}: the head line '{line}' is not '# word: text'.");
            if (!head.TryGetValue(match.Groups["word"].Value, out var lines)) head[match.Groups["word"].Value] = lines = [];
            lines.Add(match.Groups["text"].Value.Trim());
        }

        foreach (var word in new[] { "source", "columns", "tolerance" })
        {
            if (!head.TryGetValue(word, out var lines) || lines.Any(l => l.Length == 0))
                throw new FormatException($"{name}: a check file needs '# {word}:'.");
        }

        var columns = head["columns"].SelectMany(l => l.Split(',')).Select(c => Unit().Replace(c, "").Trim()).ToArray();
        var keys = head["source"].Select(s => s.Split(" = ", 2)[0]).ToHashSet(StringComparer.Ordinal);
        var rows = new List<CheckRow>();
        var body = text.AsSpan();
        while (body.StartsWith("#", StringComparison.Ordinal)) body = body[(body.IndexOf('\n') + 1)..];
        foreach (var fields in Records(body.ToString()))
        {
            if (fields.Length != columns.Length)
                throw new FormatException($"{name}: the row '{fields.FirstOrDefault()}' has {fields.Length.ToString(CultureInfo.InvariantCulture)} fields, not one for each of: {string.Join(", ", columns)}.");
            rows.Add(new CheckRow(name, columns, fields));
            var source = Array.IndexOf(columns, "source") is var at and >= 0 ? fields[at] : head["source"][0];
            if (source.Length == 0 || (source.Length <= 2 && !keys.Contains(source)))
                throw new FormatException($"{name}: the row '{fields[0]}' names no source.");
        }

        if (rows.Count == 0) throw new FormatException($"{name}: no rows.");
        if (rows.GroupBy(r => r.Id, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1) is { } twice)
            throw new FormatException($"{name}: two rows have the id '{twice.Key}'.");
        return new CheckFile(name, head, rows);
    }

    // Comma separated fields; a field in quotes may hold commas, line ends and doubled quotes (RFC 4180).
    private static IEnumerable<string[]> Records(string body)
    {
        var (fields, field, quoted) = (new List<string>(), new StringBuilder(), false);
        for (var i = 0; i < body.Length; i++)
        {
            var c = body[i];
            if (c == '"' && quoted && i + 1 < body.Length && body[i + 1] == '"') field.Append(body[++i]);
            else if (c == '"') quoted = !quoted;
            else if (quoted || c is not (',' or '\n' or '\r')) field.Append(c);
            else if (c == ',') EndField();
            else if (c == '\n' && (fields.Count > 0 || field.Length > 0)) yield return EndRecord();
        }

        if (fields.Count > 0 || field.Length > 0) yield return EndRecord();

        void EndField()
        {
            fields.Add(field.ToString());
            field.Clear();
        }

        string[] EndRecord()
        {
            EndField();
            string[] record = [.. fields];
            fields.Clear();
            return record;
        }
    }

    [GeneratedRegex(@"^#\s*(?<word>[a-z]+):(?<text>.*)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex HeadLine();

    [GeneratedRegex(@"\[[^\]]*\]|\([^)]*\)", RegexOptions.None, 1000)]
    private static partial Regex Unit();
}
