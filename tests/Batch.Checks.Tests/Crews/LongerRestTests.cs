using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Crews;

public sealed class LongerRestTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static PlannedWeek Logged(params LoggedDuty[] rows)
    {
        var week = SomePlans.Week(Leg);
        return week with { Input = week.Input with { Logged = [.. rows] } };
    }

    /// <summary>A logged duty that ends so long before the report, 10:50.</summary>
    private static LoggedDuty Before(double hours, int? overrunMin, double flown = 9) => SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-1), flown) with
    {
        DutyOn = Leg.Times.OffBlocks - Duration.FromHours(1 + hours + 12),
        DutyOff = Leg.Times.OffBlocks - Duration.FromHours(1 + hours),
        Overrun = overrunMin is { } minutes ? Duration.FromMinutes(minutes) : null,
    };

    private static Finding After(double hours, int? overrunMin, double flown = 9) => Ask.AllIn(Logged(Before(hours, overrunMin, flown)), "CREW-04", Leg)[0];

    // 14 CFR 135.267(e): not more than 30 minutes over 11 hours, more than 30 and not more than 60 minutes 12, more than 60 minutes 16.
    [Theory]
    [InlineData(1, 11)]
    [InlineData(30, 11)]
    [InlineData(31, 12)]
    [InlineData(60, 12)]
    [InlineData(61, 16)]
    public void The_rest_grows_with_the_overrun(int minutes, double hours)
    {
        Assert.Equal(Verdict.Pass, After(hours, minutes).Verdict);
        var finding = After(hours - 0.01, minutes);
        Assert.Equal((Verdict.Fail, "14 CFR 135.267(e)", hours, "h"), (finding.Verdict, finding.Citation, finding.Required, finding.Unit));
    }

    [Fact]
    public void A_day_within_the_limit_asks_for_no_longer_rest()
    {
        Assert.Equal(Verdict.Pass, After(10, null, flown: 8).Verdict);
        Assert.Equal(Verdict.Pass, After(10, 0).Verdict);
    }

    // 61 minutes over on the day before, 14 hours of rest where 16 are required; a row for a day off lies behind it.
    [Fact]
    public void A_day_off_is_no_duty_and_hides_no_overrun()
    {
        Assert.Equal(Verdict.Fail, Ask.AllIn(Logged(Before(14, 61), SomePlans.DayOff("ABC")), "CREW-04", Leg)[0].Verdict);
        var free = Ask.AllIn(Logged(SomePlans.DayOff("ABC")), "CREW-04", Leg)[0];
        Assert.Equal((Verdict.Pass, "Only days off are logged for ABC before this duty, the last on 13 Jul 2026: no overrun."), (free.Verdict, free.Text));
    }

    [Fact]
    public void What_is_not_logged_is_not_checked()
    {
        Assert.Equal(Verdict.NotChecked, After(10, null, flown: 8.01).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.AllIn(Logged(), "CREW-04", Leg)[0].Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.AllIn(Logged(Before(20, 40) with { DutyOn = null, DutyOff = null }), "CREW-04", Leg)[0].Verdict);
    }

    // 61 minutes over, dated on the day of this duty and without its end: nobody can say how long the rest was. Nor whether an older, shorter duty was the
    // last.
    [Fact]
    public void An_overrun_on_the_day_of_the_duty_without_its_end_is_not_checked()
    {
        var open = SomePlans.Logged("ABC", SomePlans.Date, 9) with { DutyOn = null, DutyOff = null, Overrun = Duration.FromMinutes(61) };
        var finding = Ask.AllIn(Logged(Before(30, null, flown: 2), open), "CREW-04", Leg)[0];
        Assert.Equal(
            (Verdict.NotChecked, "Not checked: ABC overran by 61 min on 14 Jul 2026, and when that duty ended is not given; 16 h of rest are required."),
            (finding.Verdict, finding.Text));
        Assert.Equal(Verdict.NotChecked, Ask.AllIn(Logged(Before(30, null, flown: 2), open with { Overrun = null }), "CREW-04", Leg)[0].Verdict);
        Assert.Equal(Verdict.Pass,
            Ask.AllIn(Logged(Before(30, null, flown: 2), open with { Overrun = null, FlightTime = Duration.FromHours(2) }), "CREW-04", Leg)[0].Verdict);
    }

    // 61 minutes over in a duty that ends after the report, before the leg: no rest at all, whatever the duty before it was.
    [Fact]
    public void A_logged_duty_that_runs_into_the_report_is_the_last_one()
    {
        var running = Before(-0.5, 61) with { DutyOn = Leg.Times.OffBlocks - Duration.FromHours(3) };
        var finding = Ask.AllIn(Logged(Before(30, null, flown: 2) with { Date = SomePlans.Date.PlusDays(-2) }, running), "CREW-04", Leg)[0];
        Assert.Equal((Verdict.Fail, 16.0, 0.0), (finding.Verdict, finding.Required, finding.Actual));
    }

    [Fact]
    public void Between_planned_duties_no_overrun_is_known_yet()
    {
        var next = SomePlans.Planned(2).Later(Duration.FromHours(24));
        Assert.Equal(Verdict.NotApplicable, Ask.AllIn(SomePlans.Week(Leg, next), "CREW-04", next)[0].Verdict);
    }

    // 14 CFR 135.267(f): 13 rests of 24 hours in a calendar quarter. The leg is on 14 July 2026: 11 full weeks are left from the 15th to 30 September.
    [Fact]
    public void Thirteen_rests_of_a_day_in_the_quarter()
    {
        // Duty on every day but two: the days off, from 16:00 to 08:00 of the day after next, hold a rest each.
        LoggedDuty[] Days(params int[] off) => [SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 1),
            .. Enumerable.Range(1, 13).Except(off).Select(day => SomePlans.Logged("ABC", new LocalDate(2026, 7, day), 1))];
        var enough = Ask.AllIn(Logged(Days(5, 10)), "CREW-05", Leg)[0];
        Assert.Equal((Verdict.Pass, 13.0, 13.0, "rests"), (enough.Verdict, enough.Actual, enough.Required, enough.Unit));
        var few = Ask.AllIn(Logged(Days(5)), "CREW-05", Leg)[0];
        Assert.Equal((Verdict.Caution, "14 CFR 135.267(f)", -1.0), (few.Verdict, few.Citation, few.Margin));
        Assert.Equal(13, Ask.AllIn(Logged(Days(5, 6)), "CREW-05", Leg)[0].Actual);
    }

    [Fact]
    public void A_log_that_begins_within_the_quarter_leaves_the_rests_open()
    {
        Assert.Equal(Verdict.NotChecked,
            Ask.AllIn(Logged(SomePlans.Logged("ABC", new LocalDate(2026, 7, 2), 1), SomePlans.DayOff("ABC")), "CREW-05", Leg)[0].Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.AllIn(Logged(), "CREW-05", Leg)[0].Verdict);
    }
}
