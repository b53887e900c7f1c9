using System.Collections.Concurrent;
using Batch.Checks.Remedies;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks;

/// <summary>
/// Finds for every failed check of every planned leg, and for every leg whose flight cannot be made, the smallest changes that make it pass. Each was planned
/// with the whole chain of its aircraft and every leg that it reaches was checked again: the check passes, and nothing fails that did not fail before. Bounded
/// by a number of plans, not by time, so that the same books give the same remedies.
/// </summary>
public sealed class RemedyFinder
{
    /// <summary>Most remedies for one failure.</summary>
    public const int Most = 3;

    private readonly RemedyGround _ground;
    private readonly Forecasts _forecasts;
    private readonly IReadOnlyDictionary<LegKey, RemedyMemo.Kept> _known;
    private readonly ConcurrentDictionary<LegKey, RemedyMemo.Kept> _found = [];

    /// <summary>Makes a finder.</summary>
    /// <param name="planner">The planner that planned the week; what it has planned is used again.</param>
    /// <param name="week">The week.</param>
    /// <param name="rules">The rules it was checked by.</param>
    /// <param name="forecasts">Forecasts it was checked with.</param>
    /// <param name="guard">Runs the planning of one leg; gives the plan, or an unplanned leg where planning broke down.</param>
    /// <param name="before">Remedies found before in a week of which much is the same; null for none.</param>
    public RemedyFinder(WeekPlanner planner, CheckedWeek week, RuleSet rules, Forecasts forecasts, Func<Leg, Func<LegPlan>, LegPlan> guard,
        RemedyMemo? before = null)
    {
        _ground = new RemedyGround(planner, week, rules, forecasts, guard);
        _forecasts = forecasts;
        _known = before?.HoldingIn(week.Plan, forecasts) ?? ImmutableDictionary<LegKey, RemedyMemo.Kept>.Empty;
    }

    /// <summary>What was found so far, for the next time.</summary>
    public RemedyMemo Memo => new(_ground.Week.Plan, _forecasts, _found.ToImmutableDictionary());

    /// <summary>The legs for which remedies are looked for.</summary>
    public ImmutableArray<CheckedLeg> Failing => [.. _ground.Week.Legs.Where(leg => leg is { State: LegState.Fail, Plan: LegPlan.Planned }
        or { Plan: LegPlan.Unplanned { IsNotFlyable: true, Leg: not null } })];

    /// <summary>A leg with remedies at its failures. Safe to call for several legs at once.</summary>
    /// <param name="leg">One of <see cref="Failing"/>.</param>
    public CheckedLeg Find(CheckedLeg leg)
    {
        if (!_known.TryGetValue(leg.Plan.Key, out var kept) || !kept.IsFor(leg.Findings))
        {
            kept = Search(leg);
        }

        _found[leg.Plan.Key] = kept;
        return leg with { Findings = kept.After };
    }

    private RemedyMemo.Kept Search(CheckedLeg leg)
    {
        var seen = new Footprint();
        seen.Leg(leg.Plan);
        var ground = _ground.Noting(seen);
        var trials = new Trials(ground, leg);
        return new RemedyMemo.Kept(leg.Findings,
            [.. leg.Findings.Select(finding => finding.Verdict == Verdict.Fail ? Find(leg.Plan, finding, ground, trials) : finding)], seen);
    }

    private static Finding Find(LegPlan plan, Finding finding, RemedyGround ground, Trials trials)
    {
        trials.Restart();
        if (plan is not LegPlan.Planned planned)
        {
            var flyable = plan is LegPlan.Unplanned { Leg: { } leg } ? new FlyableAgain(ground, plan, leg, finding.Check, trials).Find() : [];
            return finding with { Remedies = [.. flyable.Take(Most).Select(remedy => remedy.AsRemedy())], Replans = trials.Done };
        }

        // A cell that could not be read is mended at the cell.
        if (finding.Check == Data.DataIntegrity.Number)
        {
            return finding;
        }

        var failure = new Failure(planned, finding, ground);
        var found = new List<Remedy>();
        foreach (var kind in AllKinds.List.Where(kind => kind.Suits(failure)))
        {
            if (found.Count >= Most || trials.IsSpent)
            {
                break;
            }

            if (kind.Find(failure, trials) is { } remedy)
            {
                found.Add(remedy.AsRemedy());
            }
        }

        return finding with { Remedies = [.. found.OrderBy(remedy => remedy.Disruption)], Replans = trials.Done };
    }
}
