using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>Another runway than the one named, the best into the wind first.</summary>
internal sealed class OtherRunway : IRemedyKind
{
    /// <inheritdoc/>
    public int Disruption => Disruptions.Paper;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("PERF-", "ADM-07");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure), failure.Check);

    private static IEnumerable<WeekEdit> Edits(Failure failure)
    {
        var leg = failure.Leg;
        foreach (var ident in Idents(failure.Plan.From, leg.DepartureRunway))
        {
            yield return new WeekEdit($"Take off on {Runway(ident)} of {leg.From}", Disruptions.Paper)
                .With(leg, leg with { DepartureRunway = ident }, (nameof(Leg.DepartureRunway), ident));
        }

        foreach (var ident in Idents(failure.Plan.To, leg.ArrivalRunway))
        {
            yield return new WeekEdit($"Land on {Runway(ident)} of {leg.To}", Disruptions.Paper)
                .With(leg, leg with { ArrivalRunway = ident }, (nameof(Leg.ArrivalRunway), ident));
        }
    }

    private static IEnumerable<string> Idents(Airport airport, string named) =>
        airport.Runways.Select(runway => runway.Ident).Prepend("").Where(ident => !string.Equals(ident, named, StringComparison.OrdinalIgnoreCase));

    private static string Runway(string ident) => ident.Length == 0 ? "the best runway" : "runway " + ident;
}
