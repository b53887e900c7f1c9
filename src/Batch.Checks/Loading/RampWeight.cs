using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Loading;

/// <summary>Ramp weight against its maximum.</summary>
internal sealed class RampWeight : ICheck
{
    /// <inheritdoc/>
    public string Id => "WB-02";

    /// <inheritdoc/>
    public string Title => "Ramp weight";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Types: ramp maximum weight"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return leg.Type.MaximumRamp is { } limit
            ? ruling.AtMost("Ramp weight", leg.Plan.Load.Ramp.Weight.Value, limit.Value, "lb", "maximum ramp weight", null,
                leg.TypeCell(nameof(AircraftType.MaximumRamp)), leg.Cell(nameof(Leg.FuelPlan)))
            : ruling.NotChecked($"the maximum ramp weight of {leg.Type.Name} is not given", leg.TypeCell(nameof(AircraftType.MaximumRamp)));
    }
}
