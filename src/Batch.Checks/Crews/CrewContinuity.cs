using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Crews;

/// <summary>Whether each pilot is at the departure, free, and in time.</summary>
internal sealed class CrewContinuity : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-11";

    /// <inheritdoc/>
    public string Title => "Crew where the leg starts";

    /// <inheritdoc/>
    public string Needs => "Legs crew and times; Crew base; Operator turnaround";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["turnaround"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var answers = leg.Seats.SelectMany(seat => Continuity.Look(leg, ruling, $"the {seat.Role} {seat.Code}", leg.Week.Crew(seat.Code)?.Steps ?? [], seat.Cell));
        return string.Equals(leg.Plan.Leg.Captain, leg.Plan.Leg.SecondPilot, StringComparison.OrdinalIgnoreCase)
            ? answers.Prepend(ruling.Trips(ruling.Condition("overlap"), $"{leg.Plan.Leg.Captain} is both captain and second pilot of this leg.", leg.Cell(nameof(Leg.SecondPilot))))
            : answers;
    }
}
