using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Crews;

public sealed class DutyTablesTests
{
    // The leg is 75 minutes block to block, 11:50 to 13:05; report an hour before, release half an hour after.
    private static LegPlan.Planned Out { get; } = SomePlans.Planned();

    private static LegPlan.Planned Back { get; } = SomePlans.Planned(2).Between("XBEL", "XAND").Later(Duration.FromHours(4));

    private static LegPlan.Planned NextDay { get; } = SomePlans.Planned(3).Later(Duration.FromHours(24));

    private static PlannedWeek Logged(params LoggedDuty[] rows)
    {
        var week = SomePlans.Week(Out, Back, NextDay);
        return week with { Input = week.Input with { Logged = rows is [] ? [] : [.. rows, SomePlans.DayOff("ABC")] } };
    }

    private static DutyTable Table(PlannedWeek week, string rules = "us-charter") => Assert.Single(WeekChecker.Check(week, RuleSet.Load(rules)).DutyTables);

    private static DutyLimit Of(IEnumerable<DutyLimit> limits, string key) => Assert.Single(limits, limit => limit.Key == key);

    [Fact]
    public void Every_duty_has_its_legs_times_and_places()
    {
        var table = Table(Logged(SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2)));
        Assert.Equal(("ABC", 2, new LocalDate(2026, 1, 1)), (table.Code, table.Periods.Length, table.LoggedFrom));
        var first = table.Periods[0];
        Assert.Equal((2, Out.Key, Back.Key), (first.Legs.Length, first.Legs[0], first.Legs[^1]));
        Assert.Equal(("XAND", "XAND"), (first.From, first.To));
        Assert.Equal((Out.Times.OffBlocks - Duration.FromHours(1), Back.Times.OnBlocks + Duration.FromMinutes(30)), (first.Report, first.Release));
        Assert.Equal(Duration.FromMinutes(4 * 60 + 75 + 90), first.Length);
    }

    [Fact]
    public void Flight_time_in_twenty_four_hours_is_given_where_it_is_tightest()
    {
        var table = Table(Logged(SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2)));
        Assert.Equal(2.5, Of(table.Periods[0].Limits, "flightIn24Hours").Used);
        // From 13:05 the day before to 13:05: the way back (75 minutes) and the leg of the day.
        Assert.Equal(2.5, Of(table.Periods[1].Limits, "flightIn24Hours").Used, 6);
        var week = Of(table.Limits, "flightIn24Hours");
        Assert.Equal((2.5, 8.0, 5.5, Back.Key, "14 CFR 135.267(b)"), (week.Used, week.Limit, week.Left, week.At, week.Citation));
        Assert.True(week.IsKnown);
    }

    [Fact]
    public void Seven_days_have_no_limit_on_charter_and_are_given_all_the_same()
    {
        var limit = Of(Table(Logged(SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2), SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-3), 4))).Limits,
            "flightIn7Days");
        Assert.Equal(4 + (3 * 1.25), limit.Used, 6);
        Assert.Null(limit.Limit);
        Assert.Null(limit.Left);
        Assert.Equal("", limit.Citation);
    }

    // 14 CFR 135.267(a): 500 hours in the quarter that began on 1 July, 800 with the one before, 1,400 since 1 January.
    [Fact]
    public void Quarters_and_year_count_the_log_and_the_week()
    {
        var table = Table(Logged(SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 100), SomePlans.Logged("ABC", new LocalDate(2026, 6, 30), 200),
            SomePlans.Logged("ABC", new LocalDate(2026, 7, 1), 300)));
        Assert.Equal(
            [(303.75, 500.0), (503.75, 800.0), (603.75, 1400.0)],
            new[] { "flightInQuarter", "flightInTwoQuarters", "flightInYear" }.Select(key => Of(table.Limits, key))
                .Select(limit => (Math.Round(limit.Used, 6), limit.Limit ?? 0)));
    }

    [Fact]
    public void A_log_that_does_not_reach_back_is_said()
    {
        var table = Table(Logged(SomePlans.Logged("ABC", new LocalDate(2026, 7, 2), 20)));
        Assert.Contains("2 Jul 2026", Of(table.Limits, "flightInQuarter").Unknown, StringComparison.Ordinal);
        Assert.False(Of(table.Limits, "flightInYear").IsKnown);
        var bare = Table(Logged());
        Assert.All(new[] { "flightIn24Hours", "flightIn7Days", "flightInQuarter" },
            key => Assert.Equal("Nothing is logged for ABC.", Of(bare.Periods[0].Limits, key).Unknown));
        Assert.False(Of(bare.Periods[0].Limits, "restIn24Hours").IsKnown);
    }

    // 14 CFR 135.267(d): 10 hours; the day before is free from the release at 17:35 (13:05 + 4 h + 30 min) to the report at 10:50.
    [Fact]
    public void Rest_is_what_lies_in_the_twenty_four_hours_before_the_release()
    {
        var table = Table(Logged(SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2)));
        var rest = Of(table.Periods[1].Limits, "restIn24Hours");
        Assert.True(rest.IsLeast);
        Assert.Equal(17.25, rest.Used, 6);
        Assert.Equal(7.25, rest.Left ?? 0, 6);
    }

    [Fact]
    public void A_rule_set_without_limits_gives_the_figures_alone() =>
        Assert.All(Table(Logged(SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2)), "us-general").Limits, limit => Assert.Null(limit.Limit));

    // ORO.FTL.235(d): no more than 168 hours from the end of a recovery rest. Off on 10 July at 16:00, free to the report at 10:50 on the 14th: the rest ends
    // there, and on the second day the release is at 13:35, 26 h 45 min later.
    [Fact]
    public void The_time_since_the_recovery_rest_stands_in_the_european_table()
    {
        var logged = Logged(SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2), SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-4), 2));
        var limit = Of(Table(logged, "eu-commercial").Limits, "sinceRecoveryRest");
        Assert.Equal(26.75, limit.Used, 6);
        Assert.Equal((168.0, "ORO.FTL.235(d)", true, true, NextDay.Key), (limit.Limit, limit.Citation, limit.IsBasisUnconfirmed, limit.IsKnown, limit.At));
        Assert.DoesNotContain(Table(logged).Limits, other => other.Key == "sinceRecoveryRest");
        Assert.Equal("Nothing is logged for ABC.", Of(Table(Logged(), "eu-commercial").Periods[0].Limits, "sinceRecoveryRest").Unknown);
    }

    [Fact]
    public void A_stricter_setting_of_the_operator_is_the_limit()
    {
        var week = Logged(SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 2)).With(new CheckSetting { Check = "CREW-02", Value = "11/13" });
        var table = Table(week);
        Assert.Equal((11.0, 13.0), (Of(table.Limits, "restIn24Hours").Limit, Of(table.Limits, "duty").Limit));
        Assert.Contains("operator's Checks sheet", Of(table.Limits, "duty").Citation, StringComparison.Ordinal);
    }
}
