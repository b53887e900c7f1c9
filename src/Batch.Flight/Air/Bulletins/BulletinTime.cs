namespace Batch.Flight.Air.Bulletins;

/// <summary>Bulletins give a day of the month and a time; the month and year are those that come nearest to a known moment.</summary>
internal static class BulletinTime
{
    /// <summary>The moment nearest to another with a day and time; null where no month nearby has the day, or the time is none.</summary>
    /// <param name="day">Day of the month, 1 to 31.</param>
    /// <param name="hour">Hour, 0 to 24; 24 is the end of the day.</param>
    /// <param name="minute">Minute, 0 to 59; 0 at hour 24.</param>
    /// <param name="near">The known moment.</param>
    public static Instant? Nearest(int day, int hour, int minute, Instant near)
    {
        if (day is < 1 or > 31 || hour is < 0 or > 24 || minute is < 0 or > 59 || (hour == 24 && minute > 0)) return null;
        var month = near.InUtc().Date.With(DateAdjusters.StartOfMonth);
        Instant? best = null;
        for (var offset = -1; offset <= 1; offset++)
        {
            var start = month.PlusMonths(offset);
            if (day > start.Calendar.GetDaysInMonth(start.Year, start.Month)) continue;
            var moment = start.PlusDays(day - 1).AtMidnight().InUtc().ToInstant() + Duration.FromMinutes(hour * 60 + minute);
            if (best is not { } known || Distance(moment, near) < Distance(known, near)) best = moment;
        }

        return best;
    }

    /// <summary>The moment of a group such as 241853: day, hour, minute.</summary>
    public static Instant? OfDigits(string digits, Instant near) =>
        Nearest(Two(digits, 0), Two(digits, 2), digits.Length >= 6 ? Two(digits, 4) : 0, near);

    /// <summary>Two digits of a group as a number.</summary>
    public static int Two(string digits, int at) => (digits[at] - '0') * 10 + digits[at + 1] - '0';

    private static Duration Distance(Instant a, Instant b) => a < b ? b - a : a - b;
}
