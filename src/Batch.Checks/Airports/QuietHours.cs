using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Airports;

/// <summary>Takeoff and landing outside the quiet hours of the airports.</summary>
internal sealed class QuietHours : ICheck
{
    /// <inheritdoc/>
    public string Id => "APT-02";

    /// <inheritdoc/>
    public string Title => "Quiet hours";

    /// <inheritdoc/>
    public string Needs => "Airports quiet hours";

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return At(ruling, leg.Plan.From, leg.Plan.Times.Takeoff, "takeoff", leg.Cell(nameof(Leg.OffBlocks)));
        yield return At(ruling, leg.Plan.To, leg.Plan.Times.Landing, "landing", leg.Cell(nameof(Leg.OffBlocks)));
    }

    private static Finding At(Ruling ruling, Airport airport, Instant at, string what, string cell)
    {
        var own = airport.Origin.Cell(nameof(Airport.QuietFrom));
        var time = at.InZone(airport.Zone).TimeOfDay;
        return (airport.QuietFrom, airport.QuietTo) switch
        {
            (null, null) => ruling.Pass($"{airport.Ident} has no quiet hours in the book."),
            ({ } from, { } to) when time != to && OpeningHours.IsWithin(time, from, to) =>
                ruling.Trips($"The {what} at {airport.Ident} at {Words.Clock(time)} local falls in its quiet hours {Words.Clock(from)} to {Words.Clock(to)}.", own, cell),
            ({ } from, { } to) => ruling.Pass($"The {what} at {airport.Ident} at {Words.Clock(time)} is outside its quiet hours {Words.Clock(from)} to {Words.Clock(to)}."),
            _ => ruling.NotChecked($"{airport.Ident} has only one end of its quiet hours", own),
        };
    }
}
