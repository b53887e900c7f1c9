using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies.Kinds;

/// <summary>Whether an aircraft or a person could take over legs, by what they do in the week; a first look that spares planning.</summary>
internal static class Free
{
    /// <summary>Whether somebody is at the start of legs, not busy while they are flown, and afterwards where the next leg of theirs starts.</summary>
    /// <param name="steps">What they do.</param>
    /// <param name="home">Where they are before their first leg; empty where not known.</param>
    /// <param name="legs">The legs to take over, in order of time, at least one.</param>
    public static bool For(ImmutableArray<ChainStep> steps, string home, ImmutableArray<LegPlan.Planned> legs)
    {
        var (from, to) = (legs[0].Times.OffBlocks, legs[^1].Times.OnBlocks);
        if (steps.Any(step => step.OffBlocks < to && (step.OnBlocks ?? step.OffBlocks) > from))
        {
            return false;
        }

        return Is(steps.LastOrDefault(step => step.OffBlocks < from)?.To ?? home, legs[0].From.Ident)
            && Is(steps.FirstOrDefault(step => step.OffBlocks > from)?.From ?? "", legs[^1].To.Ident);
    }

    /// <summary>Whether somebody who gives up legs is where the next leg of theirs starts.</summary>
    /// <param name="steps">What they do.</param>
    /// <param name="home">Where they are before their first leg; empty where not known.</param>
    /// <param name="legs">The legs given up, in order of time, at least one.</param>
    public static bool Without(ImmutableArray<ChainStep> steps, string home, ImmutableArray<LegPlan.Planned> legs)
    {
        var (from, last) = (legs[0].Times.OffBlocks, legs[^1].Times.OffBlocks);
        return Is(steps.LastOrDefault(step => step.OffBlocks < from)?.To ?? home, steps.FirstOrDefault(step => step.OffBlocks > last)?.From ?? "");
    }

    private static bool Is(string place, string other) => place.Length == 0 || other.Length == 0 || string.Equals(place, other, StringComparison.OrdinalIgnoreCase);

    /// <summary>The legs that may be handed over together: all of the trip that the same aircraft and the same pilot fly, then the failing one alone.</summary>
    /// <param name="failure">The failure.</param>
    /// <param name="isSame">Whether a leg of the trip goes with it.</param>
    public static IEnumerable<ImmutableArray<LegPlan.Planned>> Scopes(Failure failure, Func<Leg, bool> isSame)
    {
        var keys = failure.Trip.Where(isSame).Select(leg => leg.Key).ToHashSet();
        ImmutableArray<LegPlan.Planned> trip =
        [
            .. failure.Ground.Aircraft(failure.Leg.Aircraft).Select(leg => leg.Plan).OfType<LegPlan.Planned>().Where(plan => keys.Contains(plan.Key)).OrderBy(plan => plan.Times.OffBlocks),
        ];
        if (trip.Length > 1)
        {
            yield return trip;
        }

        yield return [failure.Plan];
    }
}
