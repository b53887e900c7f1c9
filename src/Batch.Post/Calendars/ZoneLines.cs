using NodaTime.Text;
using NodaTime.TimeZones;

namespace Batch.Post.Calendars;

/// <summary>
/// The time zones of a calendar file, from the zone database of NodaTime: for each zone the stretches of one offset that its events touch, each with the local
/// time at which it began (RFC 5545, 3.6.5). No rule is written for other years: none would be true for ever.
/// </summary>
internal static class ZoneLines
{
    private static readonly OffsetPattern WholeMinutes = OffsetPattern.CreateWithInvariantCulture("+HHmm");
    private static readonly OffsetPattern WithSeconds = OffsetPattern.CreateWithInvariantCulture("+HHmmss");
    private static readonly LocalDateTime Beginning = new(1970, 1, 1, 0, 0);

    /// <summary>Writes the zones of all events, by name.</summary>
    public static void Write(ContentLines lines, IEnumerable<CalendarEvent> events)
    {
        foreach (var zone in events.SelectMany(item => new[] { item.Start, item.End }).GroupBy(time => time.Zone.Id, StringComparer.Ordinal)
            .OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            var times = zone.Select(time => time.ToInstant()).ToArray();
            lines.Word("BEGIN", "VTIMEZONE");
            lines.Word("TZID", zone.Key);
            foreach (var stretch in zone.First().Zone.GetZoneIntervals(times.Min(), times.Max() + Duration.Epsilon)) Stretch(lines, zone.First().Zone, stretch);
            lines.Word("END", "VTIMEZONE");
        }
    }

    private static void Stretch(ContentLines lines, DateTimeZone zone, ZoneInterval stretch)
    {
        var kind = stretch.Savings > Offset.Zero ? "DAYLIGHT" : "STANDARD";
        var before = stretch.HasStart ? zone.GetZoneInterval(stretch.Start - Duration.Epsilon).WallOffset : stretch.WallOffset;
        lines.Word("BEGIN", kind);
        lines.Local("DTSTART", stretch.HasStart ? stretch.Start.WithOffset(before).LocalDateTime : Beginning);
        lines.Word("TZOFFSETFROM", Written(before));
        lines.Word("TZOFFSETTO", Written(stretch.WallOffset));
        lines.Text("TZNAME", stretch.Name);
        lines.Word("END", kind);
    }

    private static string Written(Offset offset) => (offset.Seconds % 60 == 0 ? WholeMinutes : WithSeconds).Format(offset);
}
