using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Crews;

/// <summary>How far the Logged sheet counts as knowledge. The leg is on 14 July; its 24 hours begin on the 13th.</summary>
public sealed class LoggedWindowTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static readonly LocalDate Eve = SomePlans.Date.PlusDays(-1);

    private static Finding FlightTime(params LoggedDuty[] rows)
    {
        var week = SomePlans.Week(Leg);
        return Ask.AllIn(week with { Input = week.Input with { Logged = [.. rows] } }, "CREW-01", Leg)[0];
    }

    private static LoggedDuty On(int daysBefore, string code = "ABC") => SomePlans.Logged(code, SomePlans.Date.PlusDays(-daysBefore), 2);

    [Fact]
    public void A_log_that_ended_long_ago_says_nothing_of_the_last_day()
    {
        var finding = FlightTime(On(180));
        Assert.Equal(Verdict.NotChecked, finding.Verdict);
        Assert.Equal("Not checked: the Logged sheet ends on 15 Jan 2026, and 13 Jul 2026 is missing for ABC (a row with 0 h says a day off); 1 h 15 min are known of the 8 h allowed in these 24 hours.", finding.Text);
    }

    [Fact]
    public void A_log_that_ends_two_days_before_leaves_the_eve_open() => Assert.Equal(Verdict.NotChecked, FlightTime(On(180), On(2)).Verdict);

    [Fact]
    public void A_log_that_reaches_the_eve_covers_the_window() => Assert.Equal(Verdict.Pass, FlightTime(On(180), On(1)).Verdict);

    [Fact]
    public void A_row_of_no_hours_is_a_day_off_and_covers_the_window()
    {
        Assert.Equal(Verdict.Pass, FlightTime(On(180), SomePlans.DayOff("ABC")).Verdict);
        var week = SomePlans.Week(Leg);
        var rest = Ask.AllIn(week with { Input = week.Input with { Logged = [On(180), SomePlans.DayOff("ABC")] } }, "CREW-02", Leg)[0];
        Assert.Equal((Verdict.Pass, 21.25), (rest.Verdict, Math.Round(rest.Actual ?? 0, 6)));
    }

    [Fact]
    public void What_somebody_else_flew_on_the_eve_shows_that_the_log_is_kept() => Assert.Equal(Verdict.Pass, FlightTime(On(180), On(1, "DEF")).Verdict);

    [Fact]
    public void Somebody_elses_log_is_none_for_a_pilot_without_a_row() => Assert.Equal(Verdict.NotChecked, FlightTime(On(180, "DEF"), On(1, "DEF")).Verdict);

    [Fact]
    public void A_row_after_the_start_of_the_week_does_not_stretch_the_log() => Assert.Equal(Verdict.NotChecked, FlightTime(On(180), On(-30)).Verdict);

    [Fact]
    public void The_week_itself_is_known()
    {
        // The second duty's 24 hours lie wholly in the week: no log is needed for them.
        var next = SomePlans.Planned(2).Later(Duration.FromHours(40));
        var week = SomePlans.Week(Leg, next);
        Assert.Equal(Verdict.Pass, Ask.AllIn(week with { Input = week.Input with { Logged = [] } }, "CREW-01", next)[0].Verdict);
    }

    [Fact]
    public void A_duty_that_is_not_logged_may_reach_into_the_first_morning()
    {
        var week = SomePlans.Week(Leg);
        var rest = Ask.AllIn(week with { Input = week.Input with { Logged = [On(180)] } }, "CREW-02", Leg)[0];
        Assert.Equal(Verdict.NotChecked, rest.Verdict);
        Assert.Contains(Eve.ToString("d MMM uuuu", System.Globalization.CultureInfo.InvariantCulture), rest.Text, StringComparison.Ordinal);
    }
}
