using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Fuel;

/// <summary>Reserve under visual flight rules by day.</summary>
internal sealed class DayReserve : ICheck
{
    /// <inheritdoc/>
    public string Id => "FUEL-01";

    /// <inheritdoc/>
    public string Title => "Fuel reserve, VFR by day";

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
            ? ruling.NotApplicable("The leg or its reserve reaches into the night; the night reserve holds.")
            : FinalReserve.Look(leg, ruling, withAlternate: false);
    }
}
