using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Fuel;

/// <summary>Fuel against the tanks.</summary>
internal sealed class TankCapacity : ICheck
{
    /// <inheritdoc/>
    public string Id => "FUEL-06";

    /// <inheritdoc/>
    public string Title => "Tank capacity";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Types: usable fuel"];

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => plan.Leg.FuelPlan is not (FuelPlan.Full or FuelPlan.Carry);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        if (leg.Type.UsableFuel is not { } usable)
        {
            yield return ruling.NotChecked($"the usable fuel of {leg.Type.Name} is not given", leg.TypeCell(nameof(AircraftType.UsableFuel)));
            yield break;
        }

        var fuel = leg.Plan.Fuel;
        var (what, needed) = fuel.Required > fuel.Aboard ? ("Fuel required", fuel.Required) : ("Fuel aboard", fuel.Aboard);
        yield return ruling.AtMost(what, needed.Value, usable.Value, "lb", "usable fuel", null,
            [.. FinalReserve.Cells(leg), leg.TypeCell(nameof(AircraftType.UsableFuel))]);
    }
}
