using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>A flight plan that is filed.</summary>
internal sealed class FiledFlightPlan : IRemedyKind
{
    private const string Filed = "filed";

    /// <inheritdoc/>
    public int Disruption => Disruptions.Paper;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("ADM-02");

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(
        [new WeekEdit("File a flight plan", Disruptions.Paper).With(failure.Leg, failure.Leg with { FlightPlan = Filed }, (nameof(Leg.FlightPlan), Filed))],
        failure.Check);
}
