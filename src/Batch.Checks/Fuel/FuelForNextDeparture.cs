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
    public string Needs => "the plan of the aircraft's later legs; Airports fuel";

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => plan.Leg.FuelPlan is not (FuelPlan.Minimum or FuelPlan.Carry);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var fuel = leg.Plan.Fuel;
        yield return fuel.NeededAfterLanding <= Pounds.Zero
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
