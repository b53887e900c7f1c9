using System.Collections.Frozen;
using Batch.Flight.Plan;

namespace Batch.Checks;

/// <summary>The conditions that a week meets by the least: weights, balance, runways, gliding reach, duty, time on the ground.</summary>
public static class ThinnestMargins
{
    private static readonly FrozenDictionary<string, ICheck> ById = AllChecks.List.ToFrozenDictionary(check => check.Id);

    /// <summary>The thinnest margins of the legs that pass or have cautions only, thinnest first, one a leg.</summary>
    /// <remarks>
    /// Margins in different units are compared by their share of the limit. Left out are margins that were chosen (fuel planned to the least that is allowed,
    /// full tanks, levels), counts of persons (a full cabin is not a thin margin), and what is counted down to a date or to a number of hours.
    /// </remarks>
    /// <param name="week">The week.</param>
    /// <param name="count">How many at most, 0 or more.</param>
    public static ImmutableArray<ThinMargin> Of(CheckedWeek week, int count) =>
    [
        .. week.Legs.Where(leg => leg.State is LegState.Pass or LegState.Caution)
            .SelectMany(leg => leg.Plan is LegPlan.Planned plan && Thinnest(plan, leg.Findings) is { } thinnest ? [thinnest] : Array.Empty<ThinMargin>())
            .OrderBy(margin => margin.Share).ThenBy(margin => margin.Plan.Key)
            .Take(count),
    ];

    private static ThinMargin? Thinnest(LegPlan.Planned plan, ImmutableArray<Finding> findings) => findings
        .Where(finding => finding.Verdict == Verdict.Pass && finding.Unit != "persons" && ById.GetValueOrDefault(finding.Check)?.HasTellingMargin(plan) == true)
        .SelectMany(finding => finding.Share is { } share ? [new ThinMargin(plan, finding, Math.Max(0, share))] : Array.Empty<ThinMargin>())
        .MinBy(margin => margin.Share);
}
