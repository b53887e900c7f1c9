using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>More fuel aboard: the minimum of the rules instead of a written amount, or a minimum with the least extra that does.</summary>
internal sealed class MoreFuel : IRemedyKind
{
    /// <inheritdoc/>
    public int Disruption => Disruptions.Paper;

    /// <inheritdoc/>
    public bool Suits(Failure failure) =>
        failure.IsOneOf("FUEL-01", "FUEL-02", "FUEL-03", "FUEL-04", "FUEL-05", "FUEL-07", "FUEL-10") && failure.Plan.Fuel.IsSoldHere != false;

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials)
    {
        if (failure.Leg.FuelPlan is FuelPlan.Amount)
        {
            var minimum = FuelEdits.Minimum(failure.Leg, failure.Plan.Fuel.Aboard);
            if (trials.First([minimum], failure.Check) is { } found)
            {
                return found;
            }
        }

        var room = (failure.Plan.Type.UsableFuel ?? failure.Plan.Fuel.Aboard * 2) - failure.Plan.Fuel.Required;
        var had = failure.Leg.FuelPlan is FuelPlan.Minimum { Extra: var extra } ? extra : Pounds.Zero;
        var step = Typed.Step(failure.Ground.WeightUnit);
        return trials.Least(steps => Beyond(failure, had + step * steps), (int)Math.Floor((room - had) / step), failure.Check);
    }

    private static WeekEdit Beyond(Failure failure, Pounds extra) => FuelEdits.Of(failure.Leg, new FuelPlan.Minimum(extra),
        "minimum+" + Typed.Weight(extra, failure.Ground.WeightUnit), $"Load {Words.Amount(extra)} beyond the minimum");
}
