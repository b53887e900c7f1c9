using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests;

/// <summary>Asks one check about one leg.</summary>
internal static class Ask
{
    /// <summary>The answers of a check on a leg alone in its week, under us-charter unless told.</summary>
    public static ImmutableArray<Finding> All(string check, LegPlan.Planned plan, Func<PlannedWeek, PlannedWeek>? change = null, string rules = "us-charter", Forecasts? forecasts = null)
    {
        var week = SomePlans.Week(plan);
        return AllIn(change is null ? week : change(week), check, plan, rules, forecasts);
    }

    /// <summary>The answers of a check on a leg of a week.</summary>
    public static ImmutableArray<Finding> AllIn(PlannedWeek week, string check, LegPlan plan, string rules = "us-charter", Forecasts? forecasts = null) =>
        [.. WeekChecker.CheckLeg(plan, week, RuleSet.Load(rules), forecasts).Findings.Where(finding => finding.Check == check)];

    /// <summary>The worst answer.</summary>
    public static Finding Worst(string check, LegPlan.Planned plan, Func<PlannedWeek, PlannedWeek>? change = null, string rules = "us-charter", Forecasts? forecasts = null) =>
        All(check, plan, change, rules, forecasts)[0];

    /// <summary>A week whose operator book has other settings.</summary>
    public static PlannedWeek With(this PlannedWeek week, params CheckSetting[] settings) => week with { Input = week.Input with { CheckSettings = [.. settings] } };

    /// <summary>A week with notices.</summary>
    public static PlannedWeek With(this PlannedWeek week, params Notice[] notices) => week with { Input = week.Input with { Notices = [.. notices] } };

    /// <summary>A week with another operator.</summary>
    public static PlannedWeek With(this PlannedWeek week, Func<Operator, Operator> change) => week with { Input = week.Input with { Operator = change(week.Input.Operator) } };
}
