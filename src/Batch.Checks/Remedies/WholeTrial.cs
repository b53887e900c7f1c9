using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies;

/// <summary>What a change does to the whole week.</summary>
/// <param name="Leg">The leg after the change; null where the week has it no more.</param>
/// <param name="AddsFailure">Whether a check fails that did not fail before, on any leg.</param>
/// <param name="Leaves">Cautions and missing inputs that were not there before, as words.</param>
internal sealed record WholeTrial(CheckedLeg? Leg, bool AddsFailure, ImmutableArray<string> Leaves)
{
    /// <summary>
    /// Plans and checks what a change reaches: the chains of its aircraft, then every leg of those aircraft and pilots of which a plan has changed.
    /// </summary>
    /// <param name="ground">The week.</param>
    /// <param name="edit">The change.</param>
    /// <param name="key">The leg that is looked at.</param>
    public static WholeTrial Of(RemedyGround ground, WeekEdit edit, LegKey key)
    {
        var planner = ground.Planner.With(edit.ApplyTo(ground.Input));
        var plan = planner.Replan(ground.Week.Plan, Touched(ground, edit), ground.Guard);
        var week = ground.UnderCheck.With(plan);
        var target = week.Leg(key) is { } leg ? ground.Check(leg, week) : null;
        if (target is null or { State: LegState.Unplanned })
        {
            return new WholeTrial(target, AddsFailure: true, []);
        }

        var leaves = ImmutableArray.CreateBuilder<string>();
        foreach (var reached in Reached(ground, plan))
        {
            var after = ReferenceEquals(reached, target.Plan) ? target : ground.Check(reached, week, ground.Has(reached) ? check => check.LooksAround : null);
            var was = Tally(ground.Leg(reached.Key));
            // Of a leg that the change adds only that is new which the leg it serves does not ask itself.
            var isAdded = edit.Added.Any(leg => leg.Key == reached.Key);
            var known = isAdded ? Tally(ground.Leg(key)) : was;
            foreach (var (check, count) in Tally(after))
            {
                if (count.Failed > was.GetValueOrDefault(check).Failed)
                {
                    return new WholeTrial(target, AddsFailure: true, []);
                }

                var old = known.GetValueOrDefault(check);
                if (count.Open > old.Open + old.Failed)
                {
                    leaves.Add(isAdded ? $"{check} of the added leg" : $"{check} of leg {reached.Key}");
                }
            }
        }

        return new WholeTrial(target, AddsFailure: false, leaves.ToImmutable());
    }

    private static HashSet<string> Touched(RemedyGround ground, WeekEdit edit)
    {
        var aircraft = edit.Legs.SelectMany(pair => new[] { pair.Before.Aircraft, pair.After.Aircraft }).Concat(edit.Added.Select(leg => leg.Aircraft))
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        var trips = edit.Manifest.Select(pair => pair.Before.Trip).Concat(edit.Cargo.Select(pair => pair.Before.Trip))
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        if (trips.Count > 0)
        {
            aircraft.UnionWith(ground.Input.Legs.Where(leg => trips.Contains(leg.Key.Trip)).Select(leg => leg.Aircraft));
        }

        foreach (var trip in trips)
        {
            ground.Seen.Trip(trip);
        }

        foreach (var registration in aircraft)
        {
            ground.Seen.Aircraft(registration);
        }

        return aircraft;
    }

    private static IEnumerable<LegPlan> Reached(RemedyGround ground, PlannedWeek plan)
    {
        var changed = plan.Legs.Where(leg => !ground.Has(leg)).ToImmutableArray();
        var both = changed.Concat(changed.Select(leg => ground.Leg(leg.Key)?.Plan).OfType<LegPlan>()).ToImmutableArray();
        var aircraft = both.Select(Who.Aircraft).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var pilots = both.SelectMany(Who.Pilots).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var leg in both)
        {
            ground.Seen.Leg(leg);
        }

        return plan.Legs.Where(leg => aircraft.Contains(Who.Aircraft(leg)) || Who.Pilots(leg).Any(pilots.Contains));
    }

    /// <summary>For each check that answered, in that order, how many answers fail and how many are cautions or not checked.</summary>
    private static OrderedDictionary<string, (int Failed, int Open)> Tally(CheckedLeg? leg)
    {
        var tally = new OrderedDictionary<string, (int Failed, int Open)>(StringComparer.Ordinal);
        foreach (var finding in leg?.Findings ?? [])
        {
            var (failed, open) = tally.GetValueOrDefault(finding.Check);
            tally[finding.Check] = (failed + (finding.Verdict == Verdict.Fail ? 1 : 0),
                open + (finding.Verdict is Verdict.Caution or Verdict.NotChecked ? 1 : 0));
        }

        return tally;
    }
}
