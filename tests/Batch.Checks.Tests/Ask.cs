using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests;

/// <summary>Asks one check about one leg.</summary>
internal static class Ask
{
    /// <summary>The answers of a check on a leg alone in its week, under us-charter unless told.</summary>
    public static ImmutableArray<Finding> All(string check, LegPlan.Planned plan, Func<PlannedWeek, PlannedWeek>? change = null, string rules = "us-charter",
        Forecasts? forecasts = null)
    {
        var week = SomePlans.Week(plan);
        return AllIn(change is null ? week : change(week), check, plan, rules, forecasts);
    }

    /// <summary>The answers of a check on a leg of a week.</summary>
    public static ImmutableArray<Finding> AllIn(PlannedWeek week, string check, LegPlan plan, string rules = "us-charter", Forecasts? forecasts = null) =>
        [.. WeekChecker.CheckLeg(plan, week, RuleSet.Load(rules), forecasts).Findings.Where(finding => finding.Check == check)];

    /// <summary>The worst answer.</summary>
    public static Finding Worst(string check, LegPlan.Planned plan, Func<PlannedWeek, PlannedWeek>? change = null, string rules = "us-charter",
        Forecasts? forecasts = null) =>
        All(check, plan, change, rules, forecasts)[0];

    /// <summary>A forecast of a ceiling and visibility for the whole day.</summary>
    public static Forecasts Forecast(string airport, double? ceilingFt, double visibilityM) => Forecasts.None with
    {
        ByAirport = Forecasts.None.ByAirport.Add(airport,
            [Period(Some.Noon - Duration.FromHours(12), Some.Noon + Duration.FromHours(12), ceilingFt, visibilityM)]),
        Issues = Forecasts.None.Issues.Add(airport, new ForecastIssue(Some.Noon - Duration.FromHours(4), "weather service", "week.xlsx/Bulletins/C2")),
    };

    /// <summary>A forecast period.</summary>
    public static ForecastPeriod Period(Instant from, Instant to, double? ceilingFt, double visibilityM) =>
        new() { From = from, To = to, Ceiling = ceilingFt is { } feet ? new Feet(feet) : null, VisibilityMetres = visibilityM };

    /// <summary>Clear all day at airports.</summary>
    public static Forecasts Fair(params string[] airports) => airports.Aggregate(Forecasts.None, (all, airport) => all.And(Forecast(airport, null, 10_000)));

    /// <summary>Forecasts with others added.</summary>
    public static Forecasts And(this Forecasts forecasts, Forecasts more) =>
        new() { ByAirport = forecasts.ByAirport.SetItems(more.ByAirport), Issues = forecasts.Issues.SetItems(more.Issues) };

    /// <summary>
    /// A leg that just meets a check, one that just does not, and one whose input is missing (null where nothing can be missing): a pass, the expected verdict
    /// with its numbers, and not checked.
    /// </summary>
    public static void Boundary(string check, LegPlan.Planned meets, LegPlan.Planned fails, LegPlan.Planned? lacks, Verdict expected = Verdict.Fail,
        string rules = "us-charter", Func<PlannedWeek, PlannedWeek>? change = null)
    {
        var good = All(check, meets, change, rules);
        Assert.True(good[0].Verdict == Verdict.Pass, $"{check} on the leg that just meets it: {good[0].Verdict} {good[0].Text}");
        var bad = Worst(check, fails, change, rules);
        Assert.True(bad.Verdict == expected, $"{check} on the leg that just fails it: {bad.Verdict} {bad.Text}");
        Assert.False(string.IsNullOrWhiteSpace(bad.Citation));
        Assert.True(bad.Margin is null or < 0, $"{check}: a failure with a margin of zero or more: {bad.Text}");
        if (lacks is not null)
        {
            var open = All(check, lacks, change, rules);
            Assert.Contains(open, finding => finding.Verdict == Verdict.NotChecked && finding.Text.StartsWith("Not checked: ",
                StringComparison.Ordinal) && finding.Text.Length > 25);
            Assert.DoesNotContain(open, finding => finding.Verdict > Verdict.NotChecked);
        }
    }

    /// <summary>A week whose operator book has other settings.</summary>
    public static PlannedWeek With(this PlannedWeek week, params CheckSetting[] settings) =>
        week with { Input = week.Input with { CheckSettings = [.. settings] } };

    /// <summary>A week with notices.</summary>
    public static PlannedWeek With(this PlannedWeek week, params Notice[] notices) => week with { Input = week.Input with { Notices = [.. notices] } };

    /// <summary>A week with another operator.</summary>
    public static PlannedWeek With(this PlannedWeek week, Func<Operator, Operator> change) =>
        week with { Input = week.Input with { Operator = change(week.Input.Operator) } };
}
