using Batch.Flight.Plan;

namespace Batch.Checks.Remedies;

/// <summary>
/// Tries changes for one failing leg, a bounded number of times for each of its failures; what was tried for one failure is not tried again for the next.
/// </summary>
/// <param name="ground">The week.</param>
/// <param name="leg">The leg before any change.</param>
internal sealed class Trials(RemedyGround ground, CheckedLeg leg)
{
    /// <summary>Most plans made in search of remedies for one failure.</summary>
    public const int Most = 150;

    private readonly Dictionary<string, LegPlan> _alone = new(StringComparer.Ordinal);
    private readonly Dictionary<string, WholeTrial> _whole = new(StringComparer.Ordinal);

    /// <summary>Plans asked for since <see cref="Restart"/>.</summary>
    public int Done { get; private set; }

    /// <summary>Whether no more may be tried.</summary>
    public bool IsSpent => Done >= Most;

    /// <summary>Begins with the next failure.</summary>
    public void Restart() => Done = 0;

    /// <summary>
    /// A first look: whether the leg planned by itself passes the check after a change. What it does to the rest of the week is not looked at.
    /// </summary>
    /// <param name="edit">The change.</param>
    /// <param name="check">Check id.</param>
    public bool PassesAlone(WeekEdit edit, string check)
    {
        if (IsSpent || leg.Plan is not LegPlan.Planned planned)
        {
            return false;
        }

        Done++;
        if (!_alone.TryGetValue(edit.Sentence, out var plan))
        {
            var changed = edit.Legs.Where(pair => pair.Before.Key == planned.Key).Select(pair => pair.After).FirstOrDefault(planned.Leg);
            var planner = ground.Planner.With(edit.ApplyTo(ground.Input));
            plan = ground.Guard(changed, () => planner.PlanAlone(changed, planned.Fuel));
            _alone.Add(edit.Sentence, plan);
        }

        return Passes(ground.Check(plan, ground.UnderCheck, asked => asked.Id == check), check);
    }

    /// <summary>
    /// The change as a remedy where, with every chain that it reaches planned and checked again, the check passes and nothing fails that did not fail before;
    /// else null.
    /// </summary>
    /// <param name="edit">The change.</param>
    /// <param name="check">Check id.</param>
    public FoundRemedy? Whole(WeekEdit edit, string check)
    {
        if (IsSpent)
        {
            return null;
        }

        Done++;
        if (!_whole.TryGetValue(edit.Sentence, out var trial))
        {
            _whole.Add(edit.Sentence, trial = WholeTrial.Of(ground, edit, leg.Plan.Key));
        }

        return trial.Leg is { } after && !trial.AddsFailure && Passes(after, check) ? new FoundRemedy(edit, trial.Leaves) : null;
    }

    /// <summary>
    /// The first of some changes that passes as a whole and leaves nothing else to look at; where each leaves something, the first that passes.
    /// </summary>
    /// <param name="edits">The changes, best first.</param>
    /// <param name="check">Check id.</param>
    /// <param name="looksAlone">Whether a change whose leg by itself does not pass is given up at once.</param>
    /// <param name="mostWhole">Most changes tried as a whole.</param>
    public FoundRemedy? First(IEnumerable<WeekEdit> edits, string check, bool looksAlone = true, int mostWhole = 8)
    {
        var whole = 0;
        var passing = new List<FoundRemedy>();
        foreach (var edit in edits)
        {
            if (IsSpent || whole >= mostWhole)
            {
                break;
            }

            if (looksAlone && !PassesAlone(edit, check))
            {
                continue;
            }

            whole++;
            if (Whole(edit, check) is { } found)
            {
                if (found.Leaves.IsEmpty)
                {
                    return found;
                }

                passing.Add(found);
            }
        }

        return passing.FirstOrDefault();
    }

    /// <summary>The change of the least size that passes: found by halving on the leg alone, then tried as a whole from there upward.</summary>
    /// <param name="edit">The change of a size; null where there is none.</param>
    /// <param name="most">The greatest size, 1 or more.</param>
    /// <param name="check">Check id.</param>
    public FoundRemedy? Least(Func<int, WeekEdit?> edit, int most, string check)
    {
        if (most < 1 || edit(most) is not { } greatest || !PassesAlone(greatest, check))
        {
            return null;
        }

        var (fails, passes) = (0, most);
        while (passes - fails > 1)
        {
            var middle = (passes + fails) / 2;
            if (edit(middle) is { } between && PassesAlone(between, check))
            {
                passes = middle;
            }
            else
            {
                fails = middle;
            }
        }

        // Alone, the leg does not see what its change does to the legs after it; a little more may be needed.
        return First(new[] { 0, 1, 2, 4 }.Select(more => passes + more).Where(size => size <= most).Select(edit).OfType<WeekEdit>(), check, looksAlone: false);
    }

    /// <summary>Whether no answer of a check fails and none is missing that was there before.</summary>
    private bool Passes(CheckedLeg after, string check)
    {
        var answers = after.Findings.Where(finding => finding.Check == check).ToImmutableArray();
        return !answers.IsEmpty && after.State != LegState.Unplanned && answers.All(finding => finding.Verdict != Verdict.Fail)
            && answers.Count(finding => finding.Verdict == Verdict.NotChecked) <= leg.Findings.Count(finding => finding.Check == check
                && finding.Verdict == Verdict.NotChecked);
    }
}
