using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>Another fuel plan of a leg before: what that one leaves in the tanks is too much for this leg, or too little.</summary>
internal sealed class EarlierFuel : IRemedyKind
{
    private const int LegsBack = 3;

    /// <inheritdoc/>
    public int Disruption => Disruptions.Paper;

    /// <inheritdoc/>
    public bool Suits(Failure failure) => failure.IsOneOf("FUEL-09", "FUEL-10")
        || (failure.IsOneOf("FUEL-01", "FUEL-02", "FUEL-03", "FUEL-04", "FUEL-05", "FUEL-07") && failure.Plan.Fuel.IsSoldHere == false)
        || (failure.IsOneOf("FUEL-06", "WB-02", "WB-03", "WB-04", "WB-05", "PERF-01", "PERF-02", "PERF-03", "PERF-04")
            && failure.Plan.Fuel.Before > failure.Plan.Fuel.Required);

    /// <inheritdoc/>
    public FoundRemedy? Find(Failure failure, Trials trials) => trials.First(Edits(failure), failure.Check, looksAlone: false);

    private static IEnumerable<WeekEdit> Edits(Failure failure)
    {
        var before = failure.Ground.Aircraft(failure.Leg.Aircraft).Select(leg => leg.Plan).OfType<LegPlan.Planned>()
            .Where(plan => plan.Times.OffBlocks < failure.Plan.Times.OffBlocks)
            .OrderByDescending(plan => plan.Times.OffBlocks).Take(LegsBack);
        foreach (var plan in before)
        {
            if (plan.Leg.FuelPlan is not FuelPlan.Minimum { Extra.Value: 0 })
            {
                yield return FuelEdits.Minimum(plan.Leg, plan.Fuel.Aboard);
            }

            if (failure.IsOneOf("FUEL-") && !failure.IsOneOf("FUEL-06") && plan.Leg.FuelPlan is not FuelPlan.Full)
            {
                yield return FuelEdits.Of(plan.Leg, new FuelPlan.Full(), "full", $"Fill the tanks already for leg {plan.Leg.Key}");
            }
        }
    }
}
