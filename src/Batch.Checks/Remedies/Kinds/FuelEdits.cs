using Batch.Checks.Rules;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>Changes of a leg's fuel plan.</summary>
internal static class FuelEdits
{
    /// <summary>The minimum that the rules require.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="aboard">What is planned aboard now, for the sentence.</param>
    public static WeekEdit Minimum(Leg leg, Pounds aboard) =>
        Of(leg, new FuelPlan.Minimum(Pounds.Zero), "minimum", $"Plan leg {leg.Key} with the minimum fuel of the rules instead of {Words.Amount(aboard)}");

    /// <summary>A fixed amount.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="block">The amount.</param>
    /// <param name="aboard">What is planned aboard now, for the sentence.</param>
    /// <param name="unit">The unit in which the amount is typed.</param>
    public static WeekEdit Amount(Leg leg, Pounds block, Pounds aboard, WeightUnit unit) =>
        Of(leg, new FuelPlan.Amount(block), Typed.Weight(block, unit), $"Plan leg {leg.Key} with {Words.Amount(block)} of fuel instead of {Words.Amount(aboard)}");

    /// <summary>Any fuel plan.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="typed">As it is typed.</param>
    /// <param name="text">What is done.</param>
    public static WeekEdit Of(Leg leg, FuelPlan plan, string typed, string text) =>
        new WeekEdit(text, Disruptions.Paper).With(leg, leg with { FuelPlan = plan }, (nameof(Leg.FuelPlan), typed));
}
