using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Fuel;

/// <summary>Contingency fuel on top of the reserve, by the rule set or the operator.</summary>
internal sealed class Contingency : ICheck
{
    /// <inheritdoc/>
    public string Id => "FUEL-04";

    /// <inheritdoc/>
    public string Title => "Contingency fuel";

    /// <inheritdoc/>
    public string Needs => "the plan; Operator contingency; Holding table where the rules name a holding time";

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => plan.Leg.FuelPlan is not (FuelPlan.Minimum or FuelPlan.Carry);

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["share of trip fuel"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var fuel = leg.Plan.Fuel;
        var share = ruling.AmountOrNone("share of trip fuel");
        var contingency = Pounds.Max(fuel.Contingency, fuel.Trip * ((share?.Value ?? 0) / 100));
        if (ruling.AmountOrNone("holding time") is { } hold && leg.Type.Tables.Holding is null)
        {
            yield return ruling.NotChecked(
                $"the contingency must be at least {Words.Amount(hold.Value, "min")} of holding, and {leg.Type.Name} has no Holding table", leg.TypeCell(""));
        }

        if (contingency <= Pounds.Zero)
        {
            yield return ruling.NotApplicable("Neither the rules nor the operator ask for contingency fuel.");
            yield break;
        }

        var required = fuel.Taxi + fuel.Trip + contingency + fuel.Alternate + fuel.FinalReserve + fuel.Additional;
        yield return ruling.AtLeast(
            "Fuel aboard",
            fuel.Aboard.Value,
            required.Value,
            "lb",
            $"required with contingency: taxi {Words.Amount(fuel.Taxi)} + trip {Words.Amount(fuel.Trip)} + contingency {Words.Amount(contingency)} + alternate or holding {Words.Amount(fuel.Alternate)} + final reserve {Words.Amount(fuel.FinalReserve)} + additional {Words.Amount(fuel.Additional)}",
            share,
            FinalReserve.Cells(leg));
    }
}
