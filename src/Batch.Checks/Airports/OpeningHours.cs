using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Airports;

/// <summary>Takeoff and landing within the hours of the airports.</summary>
internal sealed class OpeningHours : ICheck
{
    /// <inheritdoc/>
    public string Id => "APT-01";

    /// <inheritdoc/>
    public string Title => "Airport hours";

    /// <inheritdoc/>
    public string Needs => "Airports opens, closes";

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return At(ruling, leg.Plan.From, leg.Plan.Times.Takeoff, "takeoff", leg.Cell(nameof(Leg.OffBlocks)));
        yield return At(ruling, leg.Plan.To, leg.Plan.Times.Landing, "landing", leg.Cell(nameof(Leg.OffBlocks)));
    }

    private static Finding At(Ruling ruling, Airport airport, Instant at, string what, string cell)
    {
        var own = airport.Origin.Cell(nameof(Airport.Opens));
        var time = at.InZone(airport.Zone).TimeOfDay;
        return (airport.Opens, airport.Closes) switch
        {
            (null, null) => ruling.Pass($"{airport.Ident} is always open, or the book names no hours."),
            ({ } opens, { } closes) when IsWithin(time, opens, closes) => ruling.Pass($"The {what} at {airport.Ident} at {Words.Clock(time)} is in its hours {Words.Clock(opens)} to {Words.Clock(closes)}."),
            ({ } opens, { } closes) => ruling.Trips($"The {what} at {airport.Ident} at {Words.Clock(time)} local is outside its hours {Words.Clock(opens)} to {Words.Clock(closes)}.", own, cell),
            _ => ruling.NotChecked($"{airport.Ident} has only one end of its hours", own),
        };
    }

    /// <summary>Whether a time of day lies from one time to another, both included, past midnight where the second is the earlier.</summary>
    /// <param name="time">The time.</param>
    /// <param name="from">Start.</param>
    /// <param name="to">End; equal to the start for the whole day.</param>
    internal static bool IsWithin(LocalTime time, LocalTime from, LocalTime to) => from == to || (from < to ? time >= from && time <= to : time >= from || time <= to);
}
