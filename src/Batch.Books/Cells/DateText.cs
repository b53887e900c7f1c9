using System.Globalization;
using System.Text.RegularExpressions;

namespace Batch.Books.Cells;

/// <summary>Reads dates written as text.</summary>
internal static partial class DateText
{
    /// <summary>What is understood, for messages.</summary>
    public const string Expected = "a date such as 2026-12-07, 7 Dec 2026 or 7.12.2026";

    /// <summary>The complaint about a text that is no date at all.</summary>
    public const string NoDate = "is not a date";

    private static readonly string[] Months = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
    private static readonly string[] LongMonths =
        ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    /// <summary>The date a text means.</summary>
    public static Reading<LocalDate> Read(string text)
    {
        var plain = text.Trim();
        if (plain.Length > 60) return Reading<LocalDate>.Bad(NoDate, Expected);
        var weekday = IsoDayOfWeek.None;
        if (Weekday().Match(plain) is { Success: true } day)
        {
            weekday = (IsoDayOfWeek)(1 + Array.IndexOf(WeekdayStarts, day.Groups["day"].Value[..3].ToUpperInvariant()));
            plain = plain[day.Length..].TrimStart();
        }

        var reading = ReadDate(plain);
        if (reading.Complaint == NoDate) reading = Guessed(plain);
        if (!reading.IsGood || weekday == IsoDayOfWeek.None || reading.Value.DayOfWeek == weekday) return reading;
        return Reading<LocalDate>.Bad("names a weekday that is not the day of that date", $"{reading.Value.DayOfWeek} for {Iso(reading.Value)}");
    }

    /// <summary>ISO 8601.</summary>
    public static string Iso(LocalDate date) => date.ToString("uuuu'-'MM'-'dd", CultureInfo.InvariantCulture);

    private static Reading<LocalDate> ReadDate(string text)
    {
        if (YearFirst().Match(text) is { Success: true } iso) return Of(iso.Groups["a"].Value, iso.Groups["b"].Value, iso.Groups["c"].Value);
        if (Compact().Match(text) is { Success: true } compact) return Of(compact.Groups["a"].Value, compact.Groups["b"].Value, compact.Groups["c"].Value);
        if (Dotted().Match(text) is { Success: true } dotted) return Of(dotted.Groups["c"].Value, dotted.Groups["b"].Value, dotted.Groups["a"].Value);
        if (DayMonthName().Match(text) is { Success: true } dmy) return OfName(dmy.Groups["c"].Value, dmy.Groups["b"].Value, dmy.Groups["a"].Value);
        if (MonthNameDay().Match(text) is { Success: true } mdy) return OfName(mdy.Groups["c"].Value, mdy.Groups["a"].Value, mdy.Groups["b"].Value);
        if (Slashed().Match(text) is { Success: true } slashed) return OfSlashed(slashed);
        return Reading<LocalDate>.Bad(NoDate, Expected);
    }

    // What is too unsure to be taken, but worth naming as what was likely meant.
    private static Reading<LocalDate> Guessed(string text)
    {
        if (ShortYear().Match(text) is { Success: true } year)
        {
            var whole = ReadDate(text[..year.Index] + "20" + year.Value);
            if (whole.Complaint != NoDate) return Reading<LocalDate>.Bad("has a year of two digits", whole.IsGood ? Iso(whole.Value) : whole.Expected);
        }

        // Days 18264 to 73415 are 1950 to 2100.
        return DayNumber().IsMatch(text) && Number(text) is >= 18264 and <= 73415 and var days
            ? Reading<LocalDate>.Bad("is the number of a day written as text", Iso(RawCell.DayZero.PlusDays(days)))
            : Reading<LocalDate>.Bad(NoDate, Expected);
    }

    private static Reading<LocalDate> OfSlashed(Match match)
    {
        var (first, second, year) = (match.Groups["a"].Value, match.Groups["b"].Value, match.Groups["c"].Value);
        var dayFirst = Of(year, second, first);
        var monthFirst = Of(year, first, second);
        if (!dayFirst.IsGood) return monthFirst;
        if (!monthFirst.IsGood || dayFirst.Value == monthFirst.Value) return dayFirst;
        return Reading<LocalDate>.Bad("could be two different dates", Iso(dayFirst.Value) + " or " + Iso(monthFirst.Value));
    }

    private static Reading<LocalDate> OfName(string year, string month, string day)
    {
        var word = month.TrimEnd('.');
        var index = Array.FindIndex(Months, name => string.Equals(name, word, StringComparison.OrdinalIgnoreCase));
        if (index < 0) index = Array.FindIndex(LongMonths, name => string.Equals(name, word, StringComparison.OrdinalIgnoreCase));
        if (index < 0 && string.Equals(word, "sept", StringComparison.OrdinalIgnoreCase)) index = 8;
        return index < 0 ? Reading<LocalDate>.Bad(NoDate, Expected) : Of(year, (index + 1).ToString(CultureInfo.InvariantCulture), day);
    }

    private static Reading<LocalDate> Of(string year, string month, string day)
    {
        var (y, m, d) = (Number(year), Number(month), Number(day));
        if (y is < 1950 or > 2100 || m is < 1 or > 12 || d < 1) return Reading<LocalDate>.Bad("is not a date of the calendar", Expected);
        var last = new LocalDate(y, m, CalendarSystem.Iso.GetDaysInMonth(y, m));
        return d <= last.Day
            ? Reading<LocalDate>.Good(new LocalDate(y, m, d))
            : Reading<LocalDate>.Bad("is not a date of the calendar", $"{Iso(last)} or {Iso(last.PlusDays(1))}");
    }

    private static int Number(string digits) => int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture);

    private static readonly string[] WeekdayStarts = ["MON", "TUE", "WED", "THU", "FRI", "SAT", "SUN"];

    [GeneratedRegex(@"^(?<day>mon|tue|wed|thu|fri|sat|sun)(day|sday|nesday|rsday|urday)?\.?,?\s+",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Weekday();

    [GeneratedRegex(@"^(?<a>[0-9]{4})[-/](?<b>[0-9]{1,2})[-/](?<c>[0-9]{1,2})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 20_000)]
    private static partial Regex YearFirst();

    [GeneratedRegex("^(?<a>[0-9]{4})(?<b>[0-9]{2})(?<c>[0-9]{2})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Compact();

    [GeneratedRegex(@"^(?<a>[0-9]{1,2})\. ?(?<b>[0-9]{1,2})\. ?(?<c>[0-9]{4})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Dotted();

    [GeneratedRegex(@"^(?<a>[0-9]{1,2})[ -]?(?<b>[a-z]{3,9}\.?)[ -]?(?<c>[0-9]{4})$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex DayMonthName();

    [GeneratedRegex(@"^(?<a>[a-z]{3,9}\.?) ?(?<b>[0-9]{1,2}),? (?<c>[0-9]{4})$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex MonthNameDay();

    [GeneratedRegex("^(?<a>[0-9]{1,2})/(?<b>[0-9]{1,2})/(?<c>[0-9]{4})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 20_000)]
    private static partial Regex Slashed();

    [GeneratedRegex("(?<=[-./ ,a-z])[0-9]{2}$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        matchTimeoutMilliseconds: 20_000)]
    private static partial Regex ShortYear();

    [GeneratedRegex("^[0-9]{5}$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 20_000)]
    private static partial Regex DayNumber();
}
