using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Fuel;

/// <summary>The operator's own least fuel on landing.</summary>
internal sealed class CompanyLandingFuel : ICheck
{
    /// <inheritdoc/>
    public string Id => "FUEL-07";

    /// <inheritdoc/>
    public string Title => "Company landing fuel";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Operator: landing fuel"];

    /// <inheritdoc/>
    public bool HasTellingMargin(LegPlan.Planned plan) => plan.Leg.FuelPlan is not (FuelPlan.Minimum or FuelPlan.Carry);

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling)
    {
        var fuel = leg.Plan.Fuel;
        if (leg.Operator.LandingFuel is not { } time)
        {
            yield return ruling.NotApplicable("The operator sets no least landing fuel.");
            yield break;
        }

        var required = fuel.FinalReserveFlow * time;
        yield return ruling.AtLeast(
            "Fuel on landing",
            fuel.Landing.Value,
            required.Value,
            "lb",
            $"that the operator asks for, {Words.Time(time)} at {Words.Amount(fuel.FinalReserveFlow.Value, "lb/h")}",
            null,
            [.. FinalReserve.Cells(leg), leg.Operator.Cells.GetValueOrDefault("landing fuel", "")]);
    }
}
