using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Crews;

/// <summary>Whether an aircraft or a person can be at the start of a leg: at the right place, not busy, and with time to turn round.</summary>
internal static class Continuity
{
    // Of many legs at one time, a column filled down in most cases, the first say enough.
    private const int MostNamed = 3;

    /// <summary>The answers.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="ruling">The ruling; its parts are the place, <c>overlap</c> and <c>turnaround</c>.</param>
    /// <param name="who">Subject of the sentences.</param>
    /// <param name="place">Name of the part for the place.</param>
    /// <param name="steps">Steps of the chain.</param>
    /// <param name="cell">Cell of the aircraft or the person.</param>
    public static IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling, string who, string place, ImmutableArray<ChainStep> steps, string cell)
    {
        if (steps.FirstOrDefault(candidate => candidate.Leg == leg.Plan.Key) is not { } step)
        {
            return [ruling.NotChecked($"the week holds no chain of legs for {who}", cell)];
        }

        var overlaps = Overlaps(leg, ruling, who, steps, cell).ToImmutableArray();
        if (step.Before is { } before && leg.Week.Leg(before) is LegPlan.Unplanned)
        {
            return overlaps.Add(ruling.NotChecked($"leg {before} before this one could not be planned, so where and when {who} is free is not known", cell));
        }

        var answers = new List<Finding>(overlaps);
        answers.AddRange(Place(leg, ruling, who, place, step, cell));
        if (overlaps.IsEmpty)
        {
            answers.AddRange(Turnaround(leg, ruling, who, step, cell));
        }

        return answers.Count > 0 ? answers : [ruling.Pass($"{Words.Capital(who)} is at {leg.Plan.From.Ident} in time.")];
    }

    private static IEnumerable<Finding> Overlaps(LegUnderCheck leg, Ruling ruling, string who, ImmutableArray<ChainStep> steps, string cell)
    {
        var leaves = leg.Plan.Times.OffBlocks;
        var others = steps.Where(other => other.Leg != leg.Plan.Key && (other.OffBlocks, other.Leg).CompareTo((leaves, leg.Plan.Key)) < 0
            && ((other.OnBlocks ?? other.OffBlocks) > leaves || other.OffBlocks == leaves)).ToImmutableArray();
        foreach (var other in others.Take(others.Length > MostNamed ? MostNamed - 1 : MostNamed))
        {
            var onBlocks = other.OnBlocks ?? other.OffBlocks;
            yield return ruling.Trips(ruling.Condition("overlap"),
                $"{Words.Capital(who)} is booked twice: still on leg {other.Leg} ({other.From} to {other.To}) {Words.Time(Duration.Max(onBlocks - leaves, Duration.Zero))} after this leg leaves.",
                cell, leg.Cell(nameof(Leg.OffBlocks)));
        }

        if (others.Length > MostNamed)
        {
            yield return ruling.Trips(ruling.Condition("overlap"),
                $"{Words.Capital(who)} is booked on {Words.Count(others.Length - MostNamed + 1, "more leg", "more legs")} when this leg leaves.", cell, leg.Cell(nameof(Leg.OffBlocks)));
        }
    }

    private static IEnumerable<Finding> Place(LegUnderCheck leg, Ruling ruling, string who, string place, ChainStep step, string cell)
    {
        var from = leg.Plan.From.Ident;
        if (string.Equals(step.StandsAt, from, StringComparison.OrdinalIgnoreCase))
        {
            yield break;
        }

        if (step.StandsAt.Length == 0)
        {
            yield return ruling.NotChecked($"where {who} is before this leg is not known", cell);
        }
        else if (step.Before is null)
        {
            yield return ruling.NotChecked(
                $"where {who} is before the first leg of the week is not said; the base is {step.StandsAt}, and the leg starts at {from}", cell);
        }
        else
        {
            yield return ruling.Trips(ruling.Condition(place),
                $"{Words.Capital(who)} is at {step.StandsAt} after leg {step.Before}, and this leg starts at {from}.", cell, leg.Cell(nameof(Leg.From)));
        }
    }

    private static IEnumerable<Finding> Turnaround(LegUnderCheck leg, Ruling ruling, string who, ChainStep step, string cell)
    {
        var by = ruling.Amount("turnaround");
        var least = leg.Operator.Turnaround ?? Duration.FromMinutes(by.Value);
        if (step.Before is { } before && leg.Week.Leg(
            before) is LegPlan.Planned earlier && leg.Plan.Times.OffBlocks - earlier.Times.OnBlocks is var ground && ground < least)
        {
            yield return ruling.AtLeast($"Time on the ground for {who} after leg {before}", ground.TotalMinutes, least.TotalMinutes, "min", "to turn round", by,
                cell, leg.Cell(nameof(Leg.OffBlocks)));
        }
    }
}
