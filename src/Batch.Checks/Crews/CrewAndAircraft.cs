using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Crews;

/// <summary>Whether the aircraft and each pilot are at the departure, free, and in time.</summary>
internal sealed class CrewAndAircraft : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-11";

    /// <inheritdoc/>
    public string Title => "Crew and aircraft continuity";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Aircraft: home", "Crew: base", "Operator: turnaround"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["turnaround"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var registration = leg.Aircraft.Registration;
        var aircraft = Continuity.Look(
            leg, ruling, registration, "aircraft place", leg.Week.Aircraft(registration)?.Steps ?? [], leg.Cell(nameof(Leg.Aircraft)));
        var crew = leg.Seats.SelectMany(
            seat => Continuity.Look(leg, ruling, $"the {seat.Role} {seat.Code}", "crew place", leg.Week.Crew(seat.Code)?.Steps ?? [], seat.Cell));
        return string.Equals(leg.Plan.Leg.Captain, leg.Plan.Leg.SecondPilot, StringComparison.OrdinalIgnoreCase)
            ? [ruling.Trips(ruling.Condition("overlap"), $"{leg.Plan.Leg.Captain} is both captain and second pilot of this leg.",
                leg.Cell(nameof(Leg.SecondPilot))), .. aircraft, .. crew]
            : aircraft.Concat(crew);
    }
}
