using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Fuel;

/// <summary>Reserve under instrument flight rules: destination, filed alternate, final reserve.</summary>
internal sealed class InstrumentReserve : ICheck
{
    /// <inheritdoc/>
    public string Id => "FUEL-03";

    /// <inheritdoc/>
    public string Title => "Fuel reserve, IFR";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Legs: alternate"];

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => plan.Leg.FuelPlan is not (FuelPlan.Minimum or FuelPlan.Carry);

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => [FinalReserve.Amount];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        yield return FinalReserve.Look(leg, ruling, withAlternate: true);
    }
}
