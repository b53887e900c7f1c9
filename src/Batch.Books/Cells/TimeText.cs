using System.Globalization;
using System.Text.RegularExpressions;

namespace Batch.Books.Cells;

/// <summary>Reads times of day, and dates with a time of day, written as text.</summary>
internal static partial class TimeText
{
    /// <summary>What is understood, for messages.</summary>
    public const string Expected = "a time such as 07:30, 0730, 1930Z or 2026-12-07T07:30Z";

    /// <summary>The complaint about what is no time at all.</summary>
    public const string NoTime = "is not a time";

    /// <summary>Longest text that can mean a date or a time.</summary>
    private const int GreatestLength = 60;

    /// <summary>The date, time and offset that a text means, as far as written.</summary>
    public static Reading<WrittenTime> Read(string text)
    {
        var plain = text.Trim();
        if (plain.Length > GreatestLength) return Bad("");
        Offset? offset = null;
        if (UtcMark().Match(plain) is { Success: true } utc)
        {
            offset = Offset.Zero;
            plain = plain[..utc.Index];
        }
        else if (OffsetMark().Match(plain) is { Success: true } mark)
        {
            var minutes = (Number(mark.Groups["h"].Value) * 60) + Number(mark.Groups["m"].Value);
            if (minutes > 18 * 60) return Bad("");
            offset = Offset.FromSeconds(60 * (mark.Groups["sign"].Value == "-" ? -minutes : minutes));
            plain = plain[..mark.Groups["sign"].Index];
        }

        if (TimeOfDay(plain) is { } time) return Reading<WrittenTime>.Good(new WrittenTime(null, time, offset));
        var date = DateText.Read(plain);
        if (date.IsGood) return Reading<WrittenTime>.Good(new WrittenTime(date.Value, null, offset));
        for (var at = plain.Length - 1; at > 0; at--)
        {
            if (plain[at] is not (' ' or 'T' or 't' or ',')) continue;
            if (TimeOfDay(plain[(at + 1)..]) is not { } late) continue;
            var day = DateText.Read(plain[..at].TrimEnd(' ', ','));
            if (day.IsGood) return Reading<WrittenTime>.Good(new WrittenTime(day.Value, late, offset));
            if (day.Complaint != DateText.NoDate) return Reading<WrittenTime>.Bad(day.Complaint, day.Expected);
        }

        return date.Complaint == DateText.NoDate ? Bad(text) : Reading<WrittenTime>.Bad(date.Complaint, date.Expected);
    }

    /// <summary>A text without the mark of local time behind it, such as the L of <c>0730L</c>.</summary>
    public static string WithoutLocalMark(string text) =>
        text.Length <= GreatestLength && LocalMark().Match(text) is { Success: true } mark ? text[..mark.Index] : text;

    /// <summary>A time of day without date or offset; null where the text is none.</summary>
    public static LocalTime? TimeOfDay(string text)
    {
        var plain = text.Trim();
        if (plain.Length > GreatestLength) return null;
        var match = Colons().Match(plain);
        if (!match.Success) match = Digits().Match(plain);
        if (!match.Success) match = Half().Match(plain);
        if (!match.Success) return null;
        var (hour, minute) = (Number(match.Groups["h"].Value), match.Groups["m"].Success ? Number(match.Groups["m"].Value) : 0);
        var second = match.Groups["s"].Success ? Number(match.Groups["s"].Value) : 0;
        if (match.Groups["half"].Success)
        {
            if (hour is < 1 or > 12) return null;
            hour = (hour % 12) + (match.Groups["half"].Value[0] is 'p' or 'P' ? 12 : 0);
        }

        return hour < 24 && minute < 60 && second < 60 ? new LocalTime(hour, minute, second) : null;
    }

    private static Reading<WrittenTime> Bad(string text) => Reading<WrittenTime>.Bad(NoTime, LikelyTime.Of(text));

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"(?<=[0-9m.])\s*(Z|UTC|GMT)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 20_000)]
    private static partial Regex UtcMark();

    [GeneratedRegex(@"(?<=[0-9m.])\s*(L|LT|local( time)?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 20_000)]
    private static partial Regex LocalMark();

    [GeneratedRegex(@":[0-9]{2}(?:\.[0-9]+)?\s*(?<sign>[+-])(?<h>[0-9]{2}):?(?<m>[0-9]{2})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 20_000)]
    private static partial Regex OffsetMark();

    [GeneratedRegex(@"^(?<h>[0-9]{1,2})[:h](?<m>[0-9]{2})(:(?<s>[0-9]{2})(\.[0-9]+)?)?\s*(?<half>[ap]\.?m\.?)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Colons();

    [GeneratedRegex("^(?<h>[0-9]{1,2})(?<m>[0-9]{2})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Digits();

    [GeneratedRegex(@"^(?<h>[0-9]{1,2})\s*(?<half>[ap]\.?m\.?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Half();
}
