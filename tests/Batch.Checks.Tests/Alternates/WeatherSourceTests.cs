using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Alternates;

public sealed class WeatherSourceTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static Finding Look(Duration age, string source = "weather service", LegPlan.Planned? plan = null, Func<PlannedWeek, PlannedWeek>? change = null) =>
        Ask.Worst(
        "ALT-07", plan ?? Leg with { Alternates = [] }, change, forecasts: Ask.Forecast("XBEL", null,
            10_000) with
        { Issues = Forecasts.None.Issues.Add("XBEL", new ForecastIssue(Leg.Times.Takeoff - age, source, "week.xlsx/Bulletins/C2")) });

    [Fact]
    public void A_forecast_older_than_six_hours_at_the_takeoff_is_noted()
    {
        Assert.Equal(Verdict.Pass, Look(Duration.FromHours(6)).Verdict);
        var old = Look(Duration.FromHours(6) + Duration.FromMinutes(1));
        Assert.Equal((Verdict.Note, "h", 6.0), (old.Verdict, old.Unit, old.Required));
        Assert.Contains("6 h 01 min old", old.Text, StringComparison.Ordinal);
    }

    // 14 CFR 135.213(a): a source that is approved; under VFR the captain may see for himself.
    [Fact]
    public void The_source_is_one_that_the_operator_may_use()
    {
        Assert.Equal(Verdict.Pass, Look(Duration.FromHours(1), "Weather Service").Verdict);
        var finding = Look(Duration.FromHours(1), "somebody's website");
        Assert.Equal((Verdict.Caution, "14 CFR 135.213", "week.xlsx/Bulletins/C2"), (finding.Verdict, finding.Citation, Assert.Single(finding.Cells)));
        Assert.Equal(Verdict.Pass, Look(Duration.FromHours(1), "somebody's website", Leg with { Alternates = [], Rules = FlightRules.Vfr }).Verdict);
    }

    [Fact]
    public void What_is_not_said_is_not_checked()
    {
        Assert.Equal(Verdict.NotChecked, Look(Duration.FromHours(1), "").Verdict);
        Assert.Equal(Verdict.NotChecked, Look(Duration.FromHours(1), change: week => week.With(op => op with { WeatherSources = [] })).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ALT-07", Leg).Verdict);
    }

    // A filed alternate whose forecast is not there is said beside the destination's answer, never left out.
    [Fact]
    public void An_alternate_without_a_forecast_is_named()
    {
        var alone = Ask.All("ALT-07", Leg, forecasts: Ask.Forecast("XBEL", null, 10_000));
        Assert.Equal("Not checked: no forecast for XDUN, the alternate, is in the books.",
            Assert.Single(alone, finding => finding.Verdict == Verdict.NotChecked).Text);
        Assert.All(Ask.All("ALT-07", Leg, forecasts: Ask.Fair("XBEL", "XDUN")), finding => Assert.Equal(Verdict.Pass, finding.Verdict));
    }

    [Fact]
    public void A_takeoff_alternate_that_is_named_counts_too()
    {
        var named = Leg with { Alternates = [], Leg = Leg.Leg with { TakeoffAlternate = "XCOR" } };
        var finding = Assert.Single(Ask.All("ALT-07", named, forecasts: Ask.Fair("XBEL")), one => one.Verdict == Verdict.NotChecked);
        Assert.Equal("Not checked: no forecast for XCOR, the takeoff alternate, is in the books.", finding.Text);
        Assert.All(Ask.All("ALT-07", named, forecasts: Ask.Fair("XBEL", "XCOR")), one => Assert.Equal(Verdict.Pass, one.Verdict));
    }
}
