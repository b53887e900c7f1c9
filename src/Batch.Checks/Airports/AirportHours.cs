using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Airports;

/// <summary>Takeoff and landing within the hours of the airports and outside their quiet hours.</summary>
internal sealed class AirportHours : ICheck
{
    /// <inheritdoc/>
    public string Id => "ADM-04";

    /// <inheritdoc/>
    public string Title => "Airport hours";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Airports: opens", "Airports: closes", "Airports: quiet hours"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var plan = leg.Plan;
        var cell = leg.Cell(nameof(Leg.OffBlocks));
        return
        [
            Hours(ruling, plan.From, plan.Times.Takeoff, "takeoff", cell),
            Hours(ruling, plan.To, plan.Times.Landing, "landing", cell),
            Quiet(ruling, plan.From, plan.Times.Takeoff, "takeoff", cell),
            Quiet(ruling, plan.To, plan.Times.Landing, "landing", cell),
        ];
    }

    private static Finding Hours(Ruling ruling, Airport airport, Instant at, string what, string cell)
    {
        var own = airport.Origin.Cell(nameof(Airport.Opens));
        var time = at.InZone(airport.Zone).TimeOfDay;
        var part = ruling.Condition("opening hours");
        return (airport.Opens, airport.Closes) switch
        {
            (null, null) => ruling.Pass($"{airport.Ident} has no hours in the book: it counts as always open.", part),
            ({ } opens, { } closes) when IsWithin(time, opens, closes) => ruling.Pass(
                $"The {what} at {airport.Ident} at {Words.Clock(time)} local is in its hours {Words.Clock(opens)} to {Words.Clock(closes)}.", part, own),
            ({ } opens, { } closes) => ruling.Trips(part,
                $"The {what} at {airport.Ident} at {Words.Clock(time)} local is outside its hours {Words.Clock(opens)} to {Words.Clock(closes)}.", own, cell),
            _ => ruling.NotChecked($"{airport.Ident} has only one end of its hours", own),
        };
    }

    private static Finding Quiet(Ruling ruling, Airport airport, Instant at, string what, string cell)
    {
        var own = airport.Origin.Cell(nameof(Airport.QuietFrom));
        var time = at.InZone(airport.Zone).TimeOfDay;
        var part = ruling.Condition("quiet hours");
        return (airport.QuietFrom, airport.QuietTo) switch
        {
            (null, null) => ruling.Pass($"{airport.Ident} has no quiet hours in the book.", part),
            ({ } from, { } to) when time != to && IsWithin(time, from, to) =>
                ruling.Trips(part,
                    $"The {what} at {airport.Ident} at {Words.Clock(time)} local falls in its quiet hours {Words.Clock(from)} to {Words.Clock(to)}.", own,
                    cell),
            ({ } from, { } to) => ruling.Pass(
                $"The {what} at {airport.Ident} at {Words.Clock(time)} local is outside its quiet hours {Words.Clock(from)} to {Words.Clock(to)}.", part, own),
            _ => ruling.NotChecked($"{airport.Ident} has only one end of its quiet hours", own),
        };
    }

    /// <summary>Whether a time of day lies from one time to another, both included, past midnight where the second is the earlier.</summary>
    /// <param name="time">The time.</param>
    /// <param name="from">Start.</param>
    /// <param name="to">End; equal to the start for the whole day.</param>
    private static bool IsWithin(LocalTime time, LocalTime from, LocalTime to) =>
        from == to || (from < to ? time >= from && time <= to : time >= from || time <= to);
}
