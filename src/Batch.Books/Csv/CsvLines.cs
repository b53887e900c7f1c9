namespace Batch.Books.Csv;

/// <summary>The lines of a csv file as an editor shows them, whatever a quotation mark makes of them: do they look like rows?</summary>
internal static class CsvLines
{
    /// <summary>Fewest delimiters by which a line is known for a row; texts of several lines may well hold a comma or two.</summary>
    public const int Fewest = 3;

    /// <summary>How many delimiters most lines hold that hold any; 0 where none does.</summary>
    /// <param name="text">The text.</param>
    /// <param name="delimiter">Its delimiter.</param>
    public static int UsualDelimiters(string text, char delimiter)
    {
        var counts = new SortedDictionary<int, int>();
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            var count = Delimiters(line, delimiter);
            if (count > 0) counts[count] = counts.GetValueOrDefault(count) + 1;
        }

        return counts.Count == 0 ? 0 : counts.MaxBy(pair => pair.Value).Key;
    }

    /// <summary>Whether a quoted field runs over lines each of which, read without its marks, has as many delimiters as the rows of the file.</summary>
    /// <param name="text">The text.</param>
    /// <param name="open">Place of the opening mark.</param>
    /// <param name="end">Place of the closing mark; -1 for none.</param>
    /// <param name="delimiter">The delimiter.</param>
    /// <param name="width">Delimiters of a row.</param>
    public static bool AreRows(string text, int open, int end, char delimiter, Lazy<int> width)
    {
        if (end < 0 || text.AsSpan(open, end - open).IndexOfAny('\r', '\n') < 0 || width.Value < Fewest) return false;
        var first = text.AsSpan(0, open).LastIndexOfAny('\r', '\n') + 1;
        var rest = text.AsSpan(end).IndexOfAny('\r', '\n');
        foreach (var line in text.AsSpan(first, (rest < 0 ? text.Length : end + rest) - first).EnumerateLines())
        {
            if (Delimiters(line, delimiter) != width.Value) return false;
        }

        return true;
    }

    /// <summary>Whether a line after the first of a field holds delimiters as a row does.</summary>
    /// <param name="field">Text of the field.</param>
    /// <param name="delimiter">The delimiter of the file.</param>
    public static bool HoldsRows(string field, char delimiter)
    {
        var at = field.AsSpan().IndexOfAny('\r', '\n');
        if (at < 0) return false;
        foreach (var line in field.AsSpan(at).EnumerateLines())
        {
            if (line.Count(delimiter) >= Fewest) return true;
        }

        return false;
    }

    /// <summary>Delimiters outside the fields that are opened and closed on the line.</summary>
    private static int Delimiters(ReadOnlySpan<char> line, char delimiter)
    {
        var (count, isFieldStart) = (0, true);
        for (var i = 0; i < line.Length; i++)
        {
            if (isFieldStart && line[i] == '"' && Close(line, i, delimiter) is > 0 and var close) i = close;
            isFieldStart = i < line.Length && line[i] == delimiter;
            if (isFieldStart) count++;
        }

        return count;
    }

    // The mark that closes a field before a delimiter or the end of the line; -1 where none does.
    private static int Close(ReadOnlySpan<char> line, int open, char delimiter)
    {
        for (var i = open + 1; i < line.Length; i++)
        {
            if (line[i] != '"') continue;
            if (i + 1 == line.Length || line[i + 1] == delimiter) return i;
            if (line[i + 1] != '"') return -1;
            i++;
        }

        return -1;
    }
}
