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
    public static bool For(ImmutableArray<ChainStep> steps, string home, ImmutableArray<Stretch> legs)
    {
        var (from, to) = (legs[0].OffBlocks, legs[^1].OnBlocks);
        if (steps.Any(step => step.OffBlocks < to && (step.OnBlocks ?? step.OffBlocks) > from))
        {
            return false;
        }

        return Is(steps.LastOrDefault(step => step.OffBlocks < from)?.To ?? home, legs[0].Leg.From)
            && Is(steps.FirstOrDefault(step => step.OffBlocks > from)?.From ?? "", legs[^1].Leg.To);
    }

    /// <summary>Whether somebody who gives up legs is where the next leg of theirs starts.</summary>
    /// <param name="steps">What they do.</param>
    /// <param name="home">Where they are before their first leg; empty where not known.</param>
    /// <param name="legs">The legs given up, in order of time, at least one.</param>
    public static bool Without(ImmutableArray<ChainStep> steps, string home, ImmutableArray<Stretch> legs)
    {
        var (from, last) = (legs[0].OffBlocks, legs[^1].OffBlocks);
        return Is(steps.LastOrDefault(step => step.OffBlocks < from)?.To ?? home, steps.FirstOrDefault(step => step.OffBlocks > last)?.From ?? "");
    }

    private static bool Is(string place, string other) =>
        place.Length == 0 || other.Length == 0 || string.Equals(place, other, StringComparison.OrdinalIgnoreCase);

    /// <summary>The legs that may be handed over together: all of the trip that the same aircraft and the same pilot fly, then the one alone.</summary>
    /// <param name="ground">The week.</param>
    /// <param name="plan">The leg.</param>
    /// <param name="isSame">Whether a leg of the trip goes with it.</param>
    public static IEnumerable<ImmutableArray<Stretch>> Scopes(RemedyGround ground, LegPlan plan, Func<Leg, bool> isSame)
    {
        if (Stretch.Of(plan) is not { } alone)
        {
            yield break;
        }

        ImmutableArray<Stretch> trip =
        [
            .. ground.Aircraft(alone.Leg.Aircraft).Select(leg => Stretch.Of(leg.Plan)).OfType<Stretch>()
                .Where(stretch => string.Equals(stretch.Leg.Key.Trip, alone.Leg.Key.Trip, StringComparison.OrdinalIgnoreCase) && isSame(stretch.Leg))
                .OrderBy(stretch => stretch.OffBlocks),
        ];
        if (trip.Length > 1)
        {
            yield return trip;
        }

        yield return [alone];
    }
}
