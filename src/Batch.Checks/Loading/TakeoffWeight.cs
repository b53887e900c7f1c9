using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Checks.Loading;

/// <summary>Takeoff weight against its structural maximum; what the runway allows is a check of its own.</summary>
internal sealed class TakeoffWeight : ICheck
{
    /// <inheritdoc/>
    public string Id => "WB-03";

    /// <inheritdoc/>
    public string Title => "Takeoff weight";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Types: takeoff maximum weight"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return leg.Type.MaximumTakeoff is { } limit
            ? ruling.AtMost("Takeoff weight", leg.Plan.Load.Takeoff.Weight.Value, limit.Value, "lb", "maximum takeoff weight", null,
                leg.TypeCell(nameof(AircraftType.MaximumTakeoff)), leg.Cell(nameof(Leg.FuelPlan)))
            : ruling.NotChecked($"the maximum takeoff weight of {leg.Type.Name} is not given", leg.TypeCell(nameof(AircraftType.MaximumTakeoff)));
    }
}
