using System.Text;

namespace Batch.Books.Csv;

/// <summary>Finds out how the bytes of a csv file are to be read: encoding, delimiter and decimal sign.</summary>
internal static class CsvText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private static readonly Encoding Windows1252 = CodePagesEncodingProvider.Instance.GetEncoding(1252)
        ?? throw new InvalidOperationException("code page 1252 ships with the runtime");

    /// <summary>The text: UTF-8 with or without byte order mark, UTF-16 with one or plainly without, else Windows-1252.</summary>
    public static string Decode(byte[] bytes)
    {
        if (bytes is [0xEF, 0xBB, 0xBF, ..]) bytes = bytes[3..];
        if (bytes is [0xFF, 0xFE, ..]) return Encoding.Unicode.GetString(bytes, 2, bytes.Length - 2);
        if (bytes is [0xFE, 0xFF, ..]) return Encoding.BigEndianUnicode.GetString(bytes, 2, bytes.Length - 2);
        if (Unmarked(bytes) is { } wide) return wide.GetString(bytes);
        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Windows1252.GetString(bytes);
        }
    }

    // Headers, delimiters and figures are letters below 256, of which UTF-16 has every second byte zero; no other text has.
    private static Encoding? Unmarked(byte[] bytes)
    {
        if (bytes.Length < 4 || bytes.Length % 2 != 0) return null;
        Span<int> zeros = stackalloc int[2];
        for (var i = 0; i < bytes.Length; i++)
        {
            if (bytes[i] == 0) zeros[i % 2]++;
        }

        var half = bytes.Length / 2;
        return zeros[0] == 0 && zeros[1] * 2 > half ? Encoding.Unicode : zeros[1] == 0 && zeros[0] * 2 > half ? Encoding.BigEndianUnicode : null;
    }

    /// <summary>A text in the encoding and with the byte order mark of a file; in UTF-8 with a mark where that encoding has no such letters.</summary>
    /// <param name="text">The text.</param>
    /// <param name="like">The file.</param>
    public static byte[] Encode(string text, byte[] like)
    {
        if (like is [0xEF, 0xBB, 0xBF, ..]) return [0xEF, 0xBB, 0xBF, .. Strict.GetBytes(text)];
        if (like is [0xFF, 0xFE, ..]) return [0xFF, 0xFE, .. Encoding.Unicode.GetBytes(text)];
        if (like is [0xFE, 0xFF, ..]) return [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes(text)];
        if (Unmarked(like) is { } wide) return wide.GetBytes(text);
        try
        {
            Strict.GetString(like);
            return Strict.GetBytes(text);
        }
        catch (DecoderFallbackException)
        {
            var bytes = Windows1252.GetBytes(text);
            return Windows1252.GetString(bytes) == text ? bytes : [0xEF, 0xBB, 0xBF, .. Strict.GetBytes(text)];
        }
    }

    /// <summary>
    /// The line on which each record begins, as an editor counts lines: a quoted field may hold line ends. A quotation mark opens a field only at its beginning
    /// (RFC 4180, 2.5 and 2.6).
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="delimiter">Its delimiter.</param>
    public static ImmutableArray<int> LinesOfRecords(string text, char delimiter)
    {
        var lines = ImmutableArray.CreateBuilder<int>();
        var (line, isQuoted, isFieldStart) = (1, false, true);
        if (text.Length > 0) lines.Add(1);
        for (var i = 0; i < text.Length; i++)
        {
            var letter = text[i];
            var ends = letter == '\n' || (letter == '\r' && (i + 1 == text.Length || text[i + 1] != '\n'));
            if (ends) line++;
            if (letter == '"' && (isQuoted || isFieldStart)) isQuoted = !isQuoted;
            isFieldStart = !isQuoted && (letter == delimiter || ends || (letter == '"' && i + 1 < text.Length && text[i + 1] == '"'));
            if (ends && !isQuoted && i + 1 < text.Length) lines.Add(line);
        }

        return lines.ToImmutable();
    }

    /// <summary>
    /// The delimiter: the one of semicolon, tab and comma that stands, outside quotes, in the most of the first hundred lines, for a text in one field may hold
    /// more commas than the file has columns; of two that stand in as many, the one of which a line holds more.
    /// </summary>
    /// <param name="text">The text.</param>
    public static char Delimiter(string text)
    {
        Span<int> lines = stackalloc int[3];
        Span<int> most = stackalloc int[3];
        Span<int> line = stackalloc int[3];
        var quoted = false;
        var read = 0;
        foreach (var letter in text)
        {
            if (letter == '"') quoted = !quoted;
            if (quoted) continue;
            var kind = letter switch { ';' => 0, '\t' => 1, ',' => 2, _ => -1 };
            if (kind >= 0) line[kind]++;
            if (letter is not ('\n' or '\r')) continue;
            Count(line, lines, most);
            if (++read >= 100) break;
        }

        Count(line, lines, most);
        var best = 2;
        for (var i = 1; i >= 0; i--)
        {
            if (lines[i] > 0 && (lines[i], most[i]).CompareTo((lines[best], most[best])) >= 0) best = i;
        }

        return ";\t,"[best];
    }

    private static void Count(Span<int> line, Span<int> lines, Span<int> most)
    {
        for (var i = 0; i < line.Length; i++)
        {
            lines[i] += Math.Min(1, line[i]);
            most[i] = Math.Max(most[i], line[i]);
        }

        line.Clear();
    }
}
