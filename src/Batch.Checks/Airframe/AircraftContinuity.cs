using Batch.Checks.Crews;
using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Airframe;

/// <summary>Whether the aircraft is at the departure, free, and in time.</summary>
internal sealed class AircraftContinuity : ICheck
{
    /// <inheritdoc/>
    public string Id => "ACFT-05";

    /// <inheritdoc/>
    public string Title => "Aircraft where the leg starts";

    /// <inheritdoc/>
    public string Needs => "Legs aircraft and times; Aircraft home; Operator turnaround";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["turnaround"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) =>
        Continuity.Look(leg, ruling, leg.Aircraft.Registration, leg.Week.Aircraft(leg.Aircraft.Registration)?.Steps ?? [], leg.Cell(nameof(Leg.Aircraft)));
}
