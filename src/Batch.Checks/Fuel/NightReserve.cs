using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Fuel;

/// <summary>Reserve under visual flight rules by night.</summary>
internal sealed class NightReserve : ICheck
{
    /// <inheritdoc/>
    public string Id => "FUEL-02";

    /// <inheritdoc/>
    public string Title => "Fuel reserve, VFR by night";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan"];

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => plan.Leg.FuelPlan is not (FuelPlan.Minimum or FuelPlan.Carry);

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => [FinalReserve.Amount];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return FinalReserve.IsByNight(leg.Plan)
            ? FinalReserve.Look(leg, ruling, withAlternate: false)
            : ruling.NotApplicable("Takeoff, landing and reserve lie in the day.");
    }
}
