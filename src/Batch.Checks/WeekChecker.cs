using Batch.Checks.Data;
using Batch.Checks.Rules;
using Batch.Flight.Plan;

namespace Batch.Checks;

/// <summary>Holds planned legs against the rules.</summary>
public static class WeekChecker
{
    private static readonly ImmutableArray<ICheck> ById = [.. AllChecks.List.OrderBy(check => check.Id, StringComparer.Ordinal)];

    /// <summary>All checks on all legs.</summary>
    /// <param name="week">The week.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="forecasts">Forecasts known; null for none.</param>
    /// <param name="jobs">Legs checked at once, 1 or more; the result does not depend on it.</param>
    public static CheckedWeek Check(PlannedWeek week, RuleSet rules, Forecasts? forecasts = null, int jobs = 1)
    {
        var ready = new WeekUnderCheck(week);
        var legs = new CheckedLeg[week.Legs.Length];
        Parallel.For(0, legs.Length, new ParallelOptions { MaxDegreeOfParallelism = jobs },
            index => legs[index] = Check(week.Legs[index], ready, rules, forecasts ?? Forecasts.None));
        return new CheckedWeek
        {
            Plan = week,
            RuleSet = rules.Title,
            Rules = rules.Texts,
            Legs = [.. legs],
            DutyTables = Crews.DutyTables.Of(ready, rules, jobs),
        };
    }

    /// <summary>All checks on one leg.</summary>
    /// <param name="leg">The leg; it may differ from the one in the week (a change that is being tried).</param>
    /// <param name="week">The week it stands in, for what comes before it.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="forecasts">Forecasts known; null for none.</param>
    public static CheckedLeg CheckLeg(LegPlan leg, PlannedWeek week, RuleSet rules, Forecasts? forecasts = null) =>
        Check(leg, new WeekUnderCheck(week), rules, forecasts ?? Forecasts.None);

    /// <summary>All checks on one leg of a week made ready.</summary>
    /// <param name="leg">The leg; it may differ from the one in the week.</param>
    /// <param name="week">The week.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="forecasts">Forecasts known.</param>
    /// <param name="asked">Which checks; null for all.</param>
    internal static CheckedLeg Check(LegPlan leg, WeekUnderCheck week, RuleSet rules, Forecasts forecasts, Func<ICheck, bool>? asked = null) => new()
    {
        Plan = leg,
        Findings = leg switch
        {
            LegPlan.Planned planned => Answers(new LegUnderCheck(planned, week, forecasts), rules, asked),
            LegPlan.Unplanned unplanned => [DataIntegrity.Unplanned(unplanned)],
            _ => throw new System.Diagnostics.UnreachableException(),
        },
    };

    /// <summary>Worst first, then by check.</summary>
    private static ImmutableArray<Finding> Answers(LegUnderCheck leg, RuleSet rules, Func<ICheck, bool>? asked)
    {
        var answers = new List<Finding>(ById.Length);
        foreach (var check in ById)
        {
            if (asked is null || asked(check)) answers.AddRange(Look(check, leg, rules));
        }

        return [.. answers.OrderByDescending(finding => finding.Verdict)];
    }

    /// <summary>The answers of one check, with what is to be said about the operator's setting of it.</summary>
    internal static IEnumerable<Finding> Look(ICheck check, LegUnderCheck leg, RuleSet rules)
    {
        var asked = rules.For(leg.Facts)[check.Id];
        if (asked.Nothing is { } nothing)
        {
            return [nothing];
        }

        var setting = leg.Week.Setting(check.Id);
        var own = new OwnSetting(setting);
        var ruling = new Ruling(check, asked.Taken, own);
        var notes = setting is null ? [] : own.Notes(check, asked.Taken.Rules).Select(note => ruling.Note(note, setting.Origin.ToString()));
        if (own.IsOff)
        {
            return notes;
        }

        var doubts = asked.Missing.IsEmpty
            ? []
            : new[] { new Ruling(check, new RuleGroup(asked.Unsure), own)
                .NotChecked($"whether {RuleAmount.Cited(asked.Unsure)} applies depends on the {Words.List(asked.Missing)}, which the book does not give",
                    leg.TypeCell("")) };
        return (asked.Held.IsEmpty ? [] : check.Look(leg, ruling)).Concat(doubts).Concat(notes);
    }
}
