using System.Text.RegularExpressions;

namespace Batch.Flight.Air.Bulletins;

/// <summary>
/// Times as forecasts gave them before November 2008 (WMO-No. 306, FM 51 TAF before the edition that follows amendment 74 of ICAO Annex 3): the validity as
/// day, first hour, last hour (<c>121818</c>), or hours alone beside a time of issue (<c>1818</c>); change groups by hours without a day (<c>BECMG 0608</c>,
/// <c>FM2030</c>, <c>FM20</c>). A validity was of 24 hours at most, so that each hour comes once in it.
/// </summary>
internal static partial class OldTafTime
{
    /// <summary>The validity of a group such as 121818; the end is the first such hour after the start.</summary>
    /// <param name="group">Six digits with the day, or four without.</param>
    /// <param name="issued">The time of issue; null where not given.</param>
    /// <param name="received">When it was received.</param>
    /// <returns>Start and end; null where there is no such day or hour, or the day is not to be known.</returns>
    public static (Instant? From, Instant? To) Validity(string group, Instant? issued, Instant received)
    {
        var hours = group.Length == 6 ? group[2..] : group;
        var (first, last) = (BulletinTime.Two(hours, 0), BulletinTime.Two(hours, 2));
        // Hours alone begin at the first such hour at or after the hour of issue.
        var from = group.Length == 6 ? BulletinTime.Nearest(BulletinTime.Two(group, 0), first, 0, issued ?? received)
            : issued is { } at ? AtOrAfter(at - Duration.FromHours(1), first, 0)
            : null;
        return (from, from is { } start ? AtOrAfter(start + Duration.FromHours(1), last, 0) : null);
    }

    /// <summary>The time of a group such as 20 or 2030 inside a validity; null where it is no time.</summary>
    /// <param name="digits">Hours, and minutes where there are four.</param>
    /// <param name="validFrom">Start of the validity.</param>
    public static Instant? Moment(string digits, Instant validFrom) =>
        AtOrAfter(validFrom, BulletinTime.Two(digits, 0), digits.Length > 2 ? BulletinTime.Two(digits, 2) : 0);

    /// <summary>Start and end of the hours of a change such as 0608.</summary>
    /// <param name="digits">First and last hour.</param>
    /// <param name="validFrom">Start of the validity.</param>
    public static (Instant? From, Instant? To) Hours(string digits, Instant validFrom)
    {
        var from = Moment(digits[..2], validFrom);
        return (from, from is { } start ? AtOrAfter(start + Duration.FromHours(1), BulletinTime.Two(digits, 2), 0) : null);
    }

    private static Instant? AtOrAfter(Instant earliest, int hour, int minute)
    {
        if (hour > 24 || minute > 59 || (hour == 24 && minute > 0)) return null;
        var moment = earliest.InUtc().Date.PlusDays(-1).AtMidnight().InUtc().ToInstant() + Duration.FromMinutes((hour * 60) + minute);
        while (moment < earliest) moment += Duration.FromDays(1);
        return moment;
    }

    /// <summary>A validity such as 121818.</summary>
    [GeneratedRegex("^[0-9]{6}$", RegexOptions.CultureInvariant, 20_000)]
    public static partial Regex DayAndHours();

    /// <summary>Hours such as 1818.</summary>
    [GeneratedRegex("^[0-9]{4}$", RegexOptions.CultureInvariant, 20_000)]
    public static partial Regex HoursAlone();

    /// <summary>A beginning such as FM2030, FM20 or FM2030Z.</summary>
    [GeneratedRegex("^FM(?<time>[0-9]{2}([0-9]{2})?)Z?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 20_000)]
    public static partial Regex From();

    /// <summary>Forecast temperature such as T24/21Z or TX15/12Z.</summary>
    [GeneratedRegex("^T(?<kind>[XN])(?<degrees>M?[0-9]{2})/(?<time>[0-9]{2})Z?$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 20_000)]
    public static partial Regex Temperature();
}
