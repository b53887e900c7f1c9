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
    public ImmutableArray<string> Needs => ["the plan", "Operator: contingency", "Holding table, where the rules name a holding time"];

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
        var isFloorOpen = false;
        if (ruling.AmountOrNone("holding time") is { } hold && leg.Type.Tables.Holding is null)
        {
            isFloorOpen = true;
            yield return ruling.NotChecked(
                $"the contingency must be at least {Words.Amount(hold.Value, "min")} of holding, and {leg.Type.Name} has no Holding table", leg.TypeCell(""));
        }

        if (contingency <= Pounds.Zero)
        {
            yield return ruling.NotApplicable("Neither the rules nor the operator ask for contingency fuel.");
            yield break;
        }

        var required = fuel.Taxi + fuel.Trip + contingency + fuel.Alternate + fuel.FinalReserve + fuel.Additional;
        var parts = new (string Name, Pounds Fuel)[]
        {
            ("taxi", fuel.Taxi), ("trip", fuel.Trip), ("contingency", contingency), (leg.Plan.Alternates.IsEmpty ? "holding" : "alternate", fuel.Alternate),
            ("final reserve", fuel.FinalReserve), ("additional", fuel.Additional),
        };
        var answer = ruling.AtLeast(
            "Fuel aboard",
            fuel.Aboard.Value,
            required.Value,
            "lb",
            "required with contingency: "
                + string.Join(" + ", parts.Where(part => part.Fuel > Pounds.Zero).Select(part => $"{part.Name} {Words.Amount(part.Fuel)}"))
                + (FinalReserve.AddUp([.. parts.Select(part => part.Fuel)]) ? "" : " (each rounded)"),
            share,
            FinalReserve.Cells(leg));
        if (!isFloorOpen || answer.Verdict != Verdict.Pass)
        {
            yield return answer;
        }
    }
}
