using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>The alternate nearest to the destination that qualifies; where fuel is short, first without the second alternate.</summary>
internal sealed class OtherAlternate : IRemedyKind
{
    /// <summary>Farther from the destination an alternate is of no use to a client.</summary>
    private const double FarthestNm = 300;

    private const int MostAirports = 15;

    /// <inheritdoc/>
    public int Disruption => Disruptions.Way;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("ALT-", "FUEL-01", "FUEL-02", "FUEL-03", "FUEL-04", "FUEL-05", "FUEL-06", "FUEL-07", "FUEL-10");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure), failure.Check);

    private static IEnumerable<WeekEdit> Edits(Failure failure)
    {
        var leg = failure.Leg;
        if (leg.Alternate.Length > 0 && leg.SecondAlternate.Length > 0)
        {
            yield return new WeekEdit($"File without the second alternate {leg.SecondAlternate}", Disruptions.Way)
                .With(leg, leg with { SecondAlternate = "" }, (nameof(Leg.SecondAlternate), ""));
        }

        var near = failure.Ground.Input.Airports.Values
            .Where(airport => airport.Ident != failure.Plan.To.Ident && !Is(airport, leg.Alternate))
            .Select(airport => (Airport: airport,
                DistanceNm: Geodesic.Inverse(failure.Plan.To.Position, airport.Position).DistanceM / NauticalMiles.MetresPerNauticalMile))
            .Where(pair => pair.DistanceNm <= FarthestNm)
            .OrderBy(pair => pair.DistanceNm)
            .Take(MostAirports)
            .Select(pair => pair.Airport.Ident);
        foreach (var ident in near)
        {
            var old = string.Join(" and ", new[] { leg.Alternate, leg.SecondAlternate }.Where(alternate => alternate.Length > 0));
            var text = old.Length == 0 ? $"File {ident} as alternate" : $"File {ident} as alternate instead of {old}";
            yield return leg.SecondAlternate.Length == 0
                ? new WeekEdit(text, Disruptions.Way).With(leg, leg with { Alternate = ident }, (nameof(Leg.Alternate), ident))
                : new WeekEdit(text, Disruptions.Way)
                    .With(leg, leg with { Alternate = ident, SecondAlternate = "" }, (nameof(Leg.Alternate), ident), (nameof(Leg.SecondAlternate), ""));
        }
    }

    private static bool Is(Airport airport, string ident) => string.Equals(airport.Ident, ident, StringComparison.OrdinalIgnoreCase);
}
