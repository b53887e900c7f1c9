using Batch.Checks;
using Batch.Flight.Fleet;
using Batch.Sheets.Views;

namespace Batch.Sheets.Board;

/// <summary>
/// Where an aircraft or a person is in the course of the week: at the departure until the middle of a leg, at its destination from there to the next leg.
/// </summary>
internal static class Stays
{
    /// <summary>The stays, one after the other over the whole stretch.</summary>
    /// <param name="legs">The legs of the aircraft or person with their start and end, in order of time.</param>
    /// <param name="stretch">The stretch.</param>
    /// <param name="airports">The airports of the book.</param>
    /// <param name="home">Where nothing else is known.</param>
    public static IEnumerable<(Airport? Place, Instant From, Instant To)> Of(IEnumerable<(CheckedLeg Leg, Instant From, Instant To)> legs, Stretch stretch,
        IReadOnlyDictionary<string, Airport> airports, Airport? home)
    {
        Airport? Place(string ident) => airports.GetValueOrDefault(ident) ?? home;
        var at = stretch.From;
        Airport? place = null;
        foreach (var (leg, from, to) in legs)
        {
            var middle = from + ((to - from) / 2);
            if (from > at)
            {
                yield return (place ?? Place(LegWay.From(leg.Plan)), at, from);
                at = from;
            }

            if (middle > at)
            {
                yield return (Place(LegWay.From(leg.Plan)), at, middle);
                at = middle;
            }

            place = Place(LegWay.To(leg.Plan));
        }

        if (stretch.To > at) yield return (place ?? home, at, stretch.To);
    }
}
