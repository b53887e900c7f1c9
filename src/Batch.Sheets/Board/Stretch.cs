namespace Batch.Sheets.Board;

/// <summary>The whole local days that a time line shows, and where an instant stands in them.</summary>
/// <param name="From">Midnight before the first event.</param>
/// <param name="To">Midnight after the last one.</param>
/// <param name="Zone">The zone whose days are shown.</param>
internal sealed record Stretch(Instant From, Instant To, DateTimeZone Zone)
{
    private const int MostDays = 21;
    private const int DaysShown = 14;

    /// <summary>Length of the stretch [h].</summary>
    public double Hours => (To - From).TotalHours;

    /// <summary>
    /// The stretch that holds some events; null without any. Where they lie more than three weeks apart (a wrong year in a cell), the fourteen days that hold
    /// most of them.
    /// </summary>
    /// <param name="events">Start and end of what is to be shown.</param>
    /// <param name="zone">The zone whose days are shown.</param>
    public static Stretch? Of(IReadOnlyCollection<(Instant From, Instant To)> events, DateTimeZone zone)
    {
        if (events.Count == 0) return null;
        var days = events.Select(one => (From: one.From.InZone(zone).Date, To: one.To.InZone(zone).Date)).OrderBy(one => one.From).ToArray();
        var (first, last) = (days[0].From, days.Max(day => day.To));
        if (Period.DaysBetween(first, last) >= MostDays)
        {
            first = days.Select(day => day.From).Distinct().MaxBy(start => days.Count(day => day.From >= start && day.To < start.PlusDays(DaysShown)));
            last = days.Where(day => day.From >= first && day.To < first.PlusDays(DaysShown)).Select(day => day.To).DefaultIfEmpty(first).Max();
        }

        return new Stretch(first.AtStartOfDayInZone(zone).ToInstant(), last.PlusDays(1).AtStartOfDayInZone(zone).ToInstant(), zone);
    }

    /// <summary>Whether an instant is shown.</summary>
    /// <param name="at">The instant.</param>
    public bool Holds(Instant at) => at >= From && at <= To;

    /// <summary>Where an instant stands [% of the stretch], held to 0 to 100, to a thousandth.</summary>
    /// <param name="at">The instant.</param>
    public double PlaceOf(Instant at) => Math.Round(Math.Clamp((at - From) / (To - From), 0, 1) * 100, 3);

    /// <summary>How wide a time is [% of the stretch], to a thousandth.</summary>
    /// <param name="from">Its start.</param>
    /// <param name="to">Its end.</param>
    public double WidthOf(Instant from, Instant to) => Math.Round(Math.Max(0, PlaceOf(to) - PlaceOf(from)), 3);
}
