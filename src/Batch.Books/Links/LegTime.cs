using System.Globalization;
using Batch.Books.Cells;
using Batch.Books.Headers;

namespace Batch.Books.Links;

/// <summary>Makes an instant of a date, a time of day and a zone, saying what was taken where a local time does not exist or stands for two instants.</summary>
internal static class LegTime
{
    /// <summary>The time as written and its instant; null, with a fail at the cell, where the cells do not make one.</summary>
    /// <param name="row">The row.</param>
    /// <param name="dateColumn">Column of the date.</param>
    /// <param name="timeColumn">Column of the time.</param>
    /// <param name="date">The date.</param>
    /// <param name="written">The time as written.</param>
    /// <param name="zone">Zone of the departure airport.</param>
    public static (LocalDateTime Written, Instant At)? Of(Row row, Column dateColumn, Column timeColumn, LocalDate date, WrittenTime written, DateTimeZone zone)
    {
        if (written.Time is not { } time)
        {
            row.Fail(timeColumn, $"{timeColumn.Name} has no time of day", TimeText.Expected);
            return null;
        }

        if (written.Date is { } own && own != date)
        {
            row.Fail(timeColumn, $"{timeColumn.Name} has the date {DateText.Iso(own)}, but {dateColumn.Name} says {DateText.Iso(date)}",
                "the same date, or a time without one");
            return null;
        }

        var local = date + time;
        if (written.Offset is { } offset) return (local, local.WithOffset(offset).ToInstant());
        var map = zone.MapLocal(local);
        switch (map.Count)
        {
            case 1:
                return (local, map.Single().ToInstant());
            case 2:
                var (first, second) = (map.First().ToInstant(), map.Last().ToInstant());
                row.Complain(State.Caution, timeColumn,
                    $"the clocks go back then: {Clock(local)} is both {Utc(first)} and {Utc(second)}; {Utc(first)} is taken", $"{Utc(first)} or {Utc(second)}");
                return (local, first);
            default:
                var before = local.WithOffset(map.EarlyInterval.WallOffset).ToInstant();
                var after = local.WithOffset(map.LateInterval.WallOffset).ToInstant();
                row.Complain(State.Caution, timeColumn,
                    $"the clocks go forward then: {Clock(local)} does not exist; it is {Utc(before)} by the clock before and {Utc(after)} by the clock after; {Utc(before)} is taken",
                    $"{Utc(before)} or {Utc(after)}");
                return (local, before);
        }
    }

    private static string Clock(LocalDateTime local) => local.ToString("HH':'mm", CultureInfo.InvariantCulture);

    private static string Utc(Instant instant) => instant.ToString("uuuu'-'MM'-'dd'T'HH':'mm'Z'", CultureInfo.InvariantCulture);
}
