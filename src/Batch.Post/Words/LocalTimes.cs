using NodaTime.Text;

namespace Batch.Post.Words;

/// <summary>Local times as the sheets write them.</summary>
internal static class LocalTimes
{
    private static readonly LocalDateTimePattern OfClock = LocalDateTimePattern.CreateWithInvariantCulture("HH:mm");
    private static readonly LocalDateTimePattern OfDay = LocalDateTimePattern.CreateWithInvariantCulture("ddd d MMM HH:mm");

    public static LocalDateTime At(Instant at, string zone) => Zone(zone) is { } known ? at.InZone(known).LocalDateTime : at.InUtc().LocalDateTime;

    public static ZonedDateTime Zoned(Instant at, string zone) => at.InZone(Zone(zone) ?? DateTimeZone.Utc);

    public static string Clock(LocalDateTime time) => OfClock.Format(time);

    public static string DayAndClock(LocalDateTime time) => OfDay.Format(time);

    private static DateTimeZone? Zone(string name) => DateTimeZoneProviders.Tzdb.GetZoneOrNull(name);
}
