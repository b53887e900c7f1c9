using System.Text;

namespace Batch.Books.Csv;

/// <summary>Finds out how the bytes of a csv file are to be read: encoding, delimiter and decimal sign.</summary>
internal static class CsvText
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private static readonly Encoding Windows1252 = CodePagesEncodingProvider.Instance.GetEncoding(1252) ?? throw new InvalidOperationException("code page 1252 ships with the runtime");

    /// <summary>The text: UTF-8 with or without byte order mark, UTF-16 with one, else Windows-1252.</summary>
    public static string Decode(byte[] bytes)
    {
        if (bytes is [0xEF, 0xBB, 0xBF, ..]) bytes = bytes[3..];
        if (bytes is [0xFF, 0xFE, ..]) return Encoding.Unicode.GetString(bytes, 2, bytes.Length - 2);
        if (bytes is [0xFE, 0xFF, ..]) return Encoding.BigEndianUnicode.GetString(bytes, 2, bytes.Length - 2);
        try
        {
            return Strict.GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Windows1252.GetString(bytes);
        }
    }

    /// <summary>The delimiter: the one of comma, semicolon and tab that stands most often outside quotes in the line of the first fifty that holds most of it.</summary>
    public static char Delimiter(string text)
    {
        Span<int> most = stackalloc int[3];
        Span<int> line = stackalloc int[3];
        var quoted = false;
        var lines = 0;
        foreach (var letter in text)
        {
            if (letter == '"') quoted = !quoted;
            if (quoted) continue;
            var kind = letter switch { ';' => 0, '\t' => 1, ',' => 2, _ => -1 };
            if (kind >= 0) line[kind]++;
            if (letter is not ('\n' or '\r')) continue;
            for (var i = 0; i < 3; i++) most[i] = Math.Max(most[i], line[i]);
            line.Clear();
            if (++lines >= 100) break;
        }

        for (var i = 0; i < 3; i++) most[i] = Math.Max(most[i], line[i]);
        var best = most[0] > 0 && most[0] >= most[1] && most[0] >= most[2] ? 0 : most[1] > 0 && most[1] >= most[2] ? 1 : 2;
        return ";\t,"[best];
    }
}
