using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Fuel;

/// <summary>Holding fuel in place of fuel to an alternate.</summary>
internal sealed class HoldingWithoutAlternate : ICheck
{
    /// <inheritdoc/>
    public string Id => "FUEL-05";

    /// <inheritdoc/>
    public string Title => "Fuel without an alternate";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Holding table"];

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => plan.Leg.FuelPlan is not (FuelPlan.Minimum or FuelPlan.Carry);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var fuel = leg.Plan.Fuel;
        var hold = ruling.Amount("holding time");
        if (!leg.Plan.Alternates.IsEmpty)
        {
            yield return ruling.NotApplicable("An alternate is filed.");
        }
        else if (fuel.Alternate <= Pounds.Zero)
        {
            yield return ruling.NotChecked(
                $"no alternate is filed and {leg.Type.Name} has no Holding table for {Words.Amount(hold.Value, "min")} of holding", leg.TypeCell(""));
        }
        else
        {
            yield return ruling.AtLeast(
                "Fuel aboard",
                fuel.Aboard.Value,
                (fuel.Taxi + fuel.Trip + fuel.Alternate + fuel.FinalReserve + fuel.Additional).Value,
                "lb",
                $"required without an alternate: taxi {Words.Amount(fuel.Taxi)} + trip {Words.Amount(fuel.Trip)} + {Words.Amount(hold.Value, "min")} holding {Words.Amount(fuel.Alternate)} + final reserve {Words.Amount(fuel.FinalReserve)}{(fuel.Additional > Pounds.Zero ? $" + additional {Words.Amount(fuel.Additional)}" : "")}",
                hold,
                [leg.Cell(nameof(Leg.Alternate)), .. FinalReserve.Cells(leg)]);
        }
    }
}
