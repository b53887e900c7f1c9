using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>The airport nearest to the departure that will do as takeoff alternate.</summary>
internal sealed class OtherTakeoffAlternate : IRemedyKind
{
    private const int MostAirports = 15;

    /// <inheritdoc/>
    public int Disruption => Disruptions.Way;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("ALT-04") || (failure.IsOneOf("ALT-03") && failure.Leg.TakeoffAlternate.Length > 0);

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure), failure.Check);

    private static IEnumerable<WeekEdit> Edits(Failure failure)
    {
        var leg = failure.Leg;
        var near = failure.Ground.Input.Airports.Values
            .Where(airport => !Is(airport, failure.Plan.From.Ident) && !Is(airport, leg.TakeoffAlternate))
            .OrderBy(airport => Geodesic.Inverse(failure.Plan.From.Position, airport.Position).DistanceM)
            .Take(MostAirports);
        foreach (var airport in near)
        {
            var text = leg.TakeoffAlternate.Length == 0
                ? $"Name {airport.Ident} as takeoff alternate"
                : $"Name {airport.Ident} as takeoff alternate instead of {leg.TakeoffAlternate}";
            yield return new WeekEdit(text, Disruptions.Way)
                .With(leg, leg with { TakeoffAlternate = airport.Ident }, (nameof(Leg.TakeoffAlternate), airport.Ident));
        }
    }

    private static bool Is(Airport airport, string ident) => string.Equals(airport.Ident, ident, StringComparison.OrdinalIgnoreCase);
}
