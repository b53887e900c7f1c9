using Batch.Checks.Rules;

namespace Batch.Checks.Crews;

/// <summary>A date until which something holds, against the end of a leg.</summary>
internal static class ValidUntil
{
    /// <summary>The answer.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="ruling">The ruling; its part <c>days of warning</c> says when an end near at hand is a caution.</param>
    /// <param name="what">Subject of the sentence, such as <c>Medical of ABC</c>.</param>
    /// <param name="until">Last day; null where not given.</param>
    /// <param name="by">Part that asks for it; null for the check as a whole.</param>
    /// <param name="hasGrace">Whether the month after counts as the due month (14 CFR 135.301(a)).</param>
    /// <param name="cells">Cells to look at.</param>
    public static Finding Look(LegUnderCheck leg, Ruling ruling, string what, LocalDate? until, RuleAmount? by, bool hasGrace, params string[] cells)
    {
        if (until is not { } last)
        {
            return ruling.NotChecked($"the end of the {char.ToLowerInvariant(what[0])}{what[1..]} is not given", cells);
        }

        var left = Period.DaysBetween(leg.EndDate, last);
        var warning = ruling.Amount("days of warning");
        var graceEnd = last.PlusMonths(1).With(DateAdjusters.EndOfMonth);
        var answer = left < 0 && hasGrace && leg.EndDate <= graceEnd
            ? Mildly(ruling.Trips(by, $"{what} was due on {Words.Day(last)}; the leg falls in the month of grace, which ends on {Words.Day(graceEnd)}.", cells))
            : left < 0
            ? ruling.Trips(by, $"{what} ended on {Words.Day(last)}, {Words.Count(-left, "day", "days")} before this leg.", cells)
            : left < warning.Value
            ? ruling.Trips(warning, $"{what} ends on {Words.Day(last)}, {Words.Count(left, "day", "days")} after this leg.", cells)
            : ruling.Pass($"{what} holds until {Words.Day(last)}.", by, cells);
        return answer with { Actual = left, Margin = left, Unit = "days" };
    }

    /// <summary>At most a caution.</summary>
    private static Finding Mildly(Finding finding) => finding.Verdict > Verdict.Caution ? finding with { Verdict = Verdict.Caution } : finding;
}
