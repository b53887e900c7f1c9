using Batch.Checks.Remedies;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks;

/// <summary>
/// The remedies of a week, kept for the next time the same week is looked at with some rows changed. A leg's remedies hold while nothing has changed that its
/// search looked at.
/// </summary>
public sealed class RemedyMemo
{
    private readonly PlannedWeek _week;
    private readonly Forecasts _forecasts;
    private readonly IReadOnlyDictionary<LegKey, Kept> _legs;

    internal RemedyMemo(PlannedWeek week, Forecasts forecasts, IReadOnlyDictionary<LegKey, Kept> legs) => (_week, _forecasts, _legs) = (week, forecasts, legs);

    /// <summary>What is kept of the legs that a search in another week would answer in the same way.</summary>
    /// <param name="week">The other week; rows and plans that are the same are the same objects.</param>
    /// <param name="forecasts">Its forecasts.</param>
    internal IReadOnlyDictionary<LegKey, Kept> HoldingIn(PlannedWeek week, Forecasts forecasts)
    {
        if (!week.Input.HasReferencesOf(_week.Input) || !ReferenceEquals(forecasts, _forecasts)) return ImmutableDictionary<LegKey, Kept>.Empty;
        var changed = Changed(_week, week);
        return _legs.Where(pair => !pair.Value.Seen.Meets(changed)).ToDictionary();
    }

    private static Footprint Changed(PlannedWeek before, PlannedWeek now)
    {
        var changed = new Footprint();
        var (was, stands) = (before.Legs.ToLookup(plan => plan.Key), now.Legs.ToLookup(plan => plan.Key));
        foreach (var plan in before.Legs.Where(plan => !stands[plan.Key].Any(other => IsSame(plan, other)))) changed.Leg(plan);
        foreach (var plan in now.Legs.Where(plan => !was[plan.Key].Any(other => IsSame(plan, other)))) changed.Leg(plan);
        if (!Days(before).SequenceEqual(Days(now))) changed.Days();
        return changed;
    }

    private static IEnumerable<Instant> Days(PlannedWeek week) =>
        week.Legs.OfType<LegPlan.Planned>().Select(plan => plan.Times.OffBlocks.InZone(plan.From.Zone).Date.AtStartOfDayInZone(plan.From.Zone).ToInstant())
            .Order();

    // A row that could not be read is made an unplanned leg anew each time.
    private static bool IsSame(LegPlan plan, LegPlan other) =>
        ReferenceEquals(plan, other)
            || (plan is LegPlan.Unplanned { Broken: { } broken } && other is LegPlan.Unplanned { Broken: { } same } && ReferenceEquals(broken, same));

    /// <summary>The answers of one leg before and after the search, and what the search looked at.</summary>
    internal sealed record Kept(ImmutableArray<Finding> Before, ImmutableArray<Finding> After, Footprint Seen)
    {
        /// <summary>Whether a leg has the same answers as the one that remedies were looked for.</summary>
        /// <param name="findings">Its answers.</param>
        public bool IsFor(ImmutableArray<Finding> findings) =>
            findings.Length == Before.Length && findings.Zip(Before).All(pair => IsSame(pair.First, pair.Second));

        private static bool IsSame(Finding one, Finding other) =>
            one.Cells.SequenceEqual(other.Cells, StringComparer.Ordinal) && one.Remedies.IsEmpty && other.Remedies.IsEmpty && one with
            {
                Cells = other.Cells,
                Remedies = other.Remedies
            } == other;
    }
}
