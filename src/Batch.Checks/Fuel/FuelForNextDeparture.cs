using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Fuel;

/// <summary>Whether enough lands for the next departure where that cannot be fuelled.</summary>
internal sealed class FuelForNextDeparture : ICheck
{
    /// <inheritdoc/>
    public string Id => "FUEL-10";

    /// <inheritdoc/>
    public string Title => "Fuel carried for later legs";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Airports: fuel, at the destination"];

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => plan.Leg.FuelPlan is not (FuelPlan.Minimum or FuelPlan.Carry);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var fuel = leg.Plan.Fuel;
        var steps = leg.Week.Aircraft(leg.Aircraft.Registration)?.Steps ?? [];
        var isLast = steps.IsEmpty || steps[^1].Leg == leg.Plan.Key;
        yield return fuel.NeededAfterLanding <= Pounds.Zero && !isLast && leg.Plan.To.FuelsSold is null
            ? ruling.NotChecked($"whether {leg.Plan.To.Ident} sells fuel is not given, so whether fuel must be carried for the next departure is open",
                leg.Plan.To.Origin.Cell(nameof(Flight.Fleet.Airport.FuelsSold)))
            : fuel.NeededAfterLanding <= Pounds.Zero
            ? ruling.NotApplicable("The next departure can be fuelled, or there is none.")
            : ruling.AtLeast(
                "Fuel on landing",
                fuel.Landing.Value,
                fuel.NeededAfterLanding.Value,
                "lb",
                $"needed for the next departure, because {leg.Plan.To.Ident} does not sell the fuel",
                null,
                [.. FinalReserve.Cells(leg), leg.Plan.To.Origin.Cell(nameof(Flight.Fleet.Airport.FuelsSold))]);
    }
}
