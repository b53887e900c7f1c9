using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks;

/// <summary>What a scenario does to a week: what breaks that does not break as planned, and what is left.</summary>
public sealed record StressAnswer
{
    /// <summary>The scenario.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The week under the scenario.</summary>
    public required CheckedWeek Week { get; init; }

    /// <summary>
    /// Legs that fail or cannot be planned by a check that they meet as planned: first what cannot be planned, then what has no margin to compare, then the
    /// farthest beyond its limit.
    /// </summary>
    public required ImmutableArray<StressedLeg> Breaks { get; init; }

    /// <summary>Legs that break nothing more and get a caution more, in the same order.</summary>
    public required ImmutableArray<StressedLeg> Cautions { get; init; }

    /// <summary>The thinnest margins that are left, thinnest first.</summary>
    public required ImmutableArray<ThinMargin> Thinnest { get; init; }

    /// <summary>Compares a week under a scenario with the week as planned.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="before">The week as planned.</param>
    /// <param name="after">The week under the scenario.</param>
    /// <param name="thinnest">How many thinnest margins are wanted, 0 or more.</param>
    public static StressAnswer Of(Scenario scenario, CheckedWeek before, CheckedWeek after, int thinnest)
    {
        var breaks = Worse(before, after, Verdict.Fail);
        var broken = breaks.Select(leg => leg.Plan.Key).ToHashSet();
        return new StressAnswer
        {
            Scenario = scenario,
            Week = after,
            Breaks = breaks,
            Cautions = [.. Worse(before, after, Verdict.Caution).Where(leg => !broken.Contains(leg.Plan.Key))],
            Thinnest = ThinnestMargins.Of(after, thinnest),
        };
    }

    private static ImmutableArray<StressedLeg> Worse(CheckedWeek before, CheckedWeek after, Verdict least)
    {
        var known = before.Legs.SelectMany(leg => leg.Findings.Where(finding => finding.Verdict >= least).Select(finding => (leg.Plan.Key, finding.Check)))
            .ToHashSet();
        return
        [
            .. after.Legs
                .Select(leg => new StressedLeg(leg.Plan,
                    [.. leg.Findings.Where(finding => finding.Verdict == least && !known.Contains((leg.Plan.Key, finding.Check))).OrderBy(Share)]))
                .Where(leg => !leg.Findings.IsEmpty)
                .OrderBy(leg => leg.Plan is LegPlan.Unplanned ? 0 : 1)
                .ThenBy(leg => Share(leg.Findings[0]))
                .ThenBy(leg => leg.Plan.Key),
        ];
    }

    private static double Share(Finding finding) => finding.Share ?? double.NegativeInfinity;
}
