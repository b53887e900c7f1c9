using System.Buffers;
using System.Globalization;
using System.Text;
using NodaTime.Text;

namespace Batch.Post.Calendars;

/// <summary>The lines of an iCalendar file: values escaped, lines folded (RFC 5545, 3.1 and 3.3.11).</summary>
internal sealed class ContentLines
{
    /// <summary>Longest line without its end [octets]; RFC 5545, 3.1.</summary>
    private const int LongestLine = 75;

    private static readonly InstantPattern Utc24 = InstantPattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss'Z'");
    private static readonly LocalDateTimePattern Local24 = LocalDateTimePattern.CreateWithInvariantCulture("uuuuMMdd'T'HHmmss");

    private readonly ArrayBufferWriter<byte> _bytes = new();

    /// <summary>A line whose value needs no escaping.</summary>
    public void Word(string name, string value) => Line(name + ":" + value);

    /// <summary>A whole number.</summary>
    public void Number(string name, int value) => Line(name + ":" + value.ToString(CultureInfo.InvariantCulture));

    /// <summary>A text of the user's.</summary>
    public void Text(string name, string value) => Line(name + ":" + Escaped(value));

    /// <summary>An instant.</summary>
    public void Utc(string name, Instant value) => Line(name + ":" + Utc24.Format(value));

    /// <summary>A local time with its zone. A local time that comes twice means its first coming (RFC 5545, 3.3.5), so the second is written as UTC.</summary>
    public void Local(string name, ZonedDateTime value)
    {
        if (value.Zone.MapLocal(value.LocalDateTime) is { Count: 2 } twice && twice.First() != value) Utc(name, value.ToInstant());
        else Line($"{name};TZID={value.Zone.Id}:{Local24.Format(value.LocalDateTime)}");
    }

    /// <summary>A local time without a zone, as in the changes of a zone.</summary>
    public void Local(string name, LocalDateTime value) => Line(name + ":" + Local24.Format(value));

    /// <summary>A mail address with the name of its owner.</summary>
    public void Address(string name, string owner, string mail) => Line($"{name}{(owner.Length > 0 ? $";CN=\"{Quoted(owner)}\"" : "")}:mailto:{Quoted(mail)}");

    /// <summary>The file.</summary>
    public byte[] ToUtf8() => _bytes.WrittenSpan.ToArray();

    private static string Escaped(string value)
    {
        var text = new StringBuilder(value.Length);
        foreach (var letter in value.ReplaceLineEndings("\n"))
        {
            _ = letter switch
            {
                '\\' or ';' or ',' => text.Append('\\').Append(letter),
                '\n' => text.Append("\\n"),
                '\t' => text.Append(' '),
                _ when char.IsControl(letter) => text,
                _ => text.Append(letter),
            };
        }

        return text.ToString();
    }

    // A quoted parameter holds neither quotation marks nor control characters (RFC 5545, 3.1, QSAFE-CHAR).
    private static string Quoted(string value) => string.Concat(value.Where(letter => !char.IsControl(letter))).Replace('"', '\'');

    private void Line(string line)
    {
        var room = LongestLine;
        Span<byte> octets = stackalloc byte[4];
        foreach (var rune in line.EnumerateRunes())
        {
            var length = rune.EncodeToUtf8(octets);
            if (length > room)
            {
                _bytes.Write("\r\n "u8);
                room = LongestLine - 1;
            }

            _bytes.Write(octets[..length]);
            room -= length;
        }

        _bytes.Write("\r\n"u8);
    }
}
