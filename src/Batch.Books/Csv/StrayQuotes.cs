using System.Text;

namespace Batch.Books.Csv;

/// <summary>
/// Leaves out quotation marks that open a field and are never closed. A field that is quoted ends before a delimiter or a line end (RFC 4180, 2.5 to 2.7); one
/// that runs over line ends and stops elsewhere has swallowed the rows between; so has one between two strays, whose lines are each as long as the file's rows.
/// </summary>
internal static class StrayQuotes
{
    /// <summary>The text without such marks, and the numbers of the records they stood in.</summary>
    /// <param name="text">The text of a csv file.</param>
    /// <param name="delimiter">Its delimiter.</param>
    public static (string Text, ImmutableArray<int> Records) LeftOut(string text, char delimiter)
    {
        var kept = new StringBuilder();
        var records = ImmutableArray.CreateBuilder<int>();
        var (record, isFieldStart, from) = (1, true, 0);
        var width = new Lazy<int>(() => CsvLines.UsualDelimiters(text, delimiter));
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '"' && isFieldStart)
            {
                isFieldStart = false;
                var end = End(text, i);
                if (!IsStray(text, i, end, delimiter) && !CsvLines.AreRows(text, i, end, delimiter, width))
                {
                    i = end;
                    continue;
                }

                records.Add(record);
                kept.Append(text, from, i - from);
                from = i + 1;
                continue;
            }

            var ends = text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n'));
            if (ends) record++;
            isFieldStart = ends || text[i] == delimiter;
        }

        return from == 0 ? (text, []) : (kept.Append(text, from, text.Length - from).ToString(), [.. records.Distinct()]);
    }

    /// <summary>The mark that closes a field; -1 where none does.</summary>
    private static int End(string text, int open)
    {
        for (var i = text.IndexOf('"', open + 1); i >= 0; i = text.IndexOf('"', i + 2))
        {
            if (i + 1 == text.Length || text[i + 1] != '"') return i;
            if (i + 2 >= text.Length) break;
        }

        return -1;
    }

    private static bool IsStray(string text, int open, int end, char delimiter) =>
        end < 0 || ((end + 1 < text.Length && text[end + 1] != delimiter && text[end + 1] is not ('\r' or '\n'))
            && text.AsSpan(open, end - open).IndexOfAny('\r', '\n') >= 0);
}
