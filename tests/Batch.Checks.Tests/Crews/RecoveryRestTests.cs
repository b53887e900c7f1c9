using Batch.Checks.Crews;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Crews;

/// <summary>
/// ORO.FTL.235(d) from a secondary copy: 36 hours with two local nights, and no more than 168 hours from the end of one to the start of the next.
/// </summary>
public sealed class RecoveryRestTests
{
    // Off blocks 11:50, report 10:50, release 13:35 on 14 July 2026, all UTC, as the clocks of XAND.
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static Instant Release { get; } = Leg.Times.OnBlocks + Duration.FromMinutes(30);

    private static Finding Look(params LoggedDuty[] rows)
    {
        var week = SomePlans.Week(Leg);
        return Ask.AllIn(week with
        {
            Input = week.Input with
            {
                Logged =
            [SomePlans.Logged("ABC", new LocalDate(2026, 1, 1), 0) with { DutyOn = null, DutyOff = null }, .. rows,
                SomePlans.DayOff("ABC")]
            }
        }, "CREW-16", Leg, "eu-commercial")[0];
    }

    /// <summary>A duty of some hours that begins at an instant; its row stands on that day.</summary>
    private static LoggedDuty Duty(Instant on, double hours) =>
        SomePlans.Logged("ABC", on.InUtc().Date, 1) with { DutyOn = on, DutyOff = on + Duration.FromHours(hours) };

    /// <summary>
    /// Duties of ten hours every day from a first report on, the last ending before the leg's report, so that no rest between them holds two nights.
    /// </summary>
    private static IEnumerable<LoggedDuty> Daily(Instant first)
    {
        for (var on = first; on + Duration.FromHours(10) < Leg.Times.OffBlocks - Duration.FromHours(1); on += Duration.FromHours(24)) yield return Duty(on, 10);
    }

    // Free since 1 January until the first report; from there on daily duties. 168 hours before the release that report is just early enough.
    [Fact]
    public void No_more_than_168_hours_lie_between_two_recovery_rests()
    {
        var kept = Look([.. Daily(Release - Duration.FromHours(168))]);
        Assert.Equal(Verdict.Pass, kept.Verdict);
        Assert.Contains("Not looked at: the longer one of two local days twice a month (ORO.FTL.235(d)).", kept.Text, StringComparison.Ordinal);
        var late = Look([.. Daily(Release - Duration.FromHours(168) - Duration.FromMinutes(1))]);
        Assert.Equal((Verdict.Caution, true, "ORO.FTL.235(d)", 168.0, "h"), (late.Verdict, late.IsBasisUnconfirmed, late.Citation, late.Required, late.Unit));
        Assert.Equal(-1 / 60d, late.Margin ?? 0, 6);
    }

    // Daily duties for weeks; then free from 22:00 on 12 July to 10:50 on 14 July: 36 h 50 min with the nights of the 12th and 13th. Off at 22:51 leaves 35 h
    // 59 min.
    [Theory]
    [InlineData(22, 0, Verdict.Pass)]
    [InlineData(22, 50, Verdict.Pass)]
    [InlineData(22, 51, Verdict.Caution)]
    public void A_recovery_rest_is_of_36_hours(int hour, int minute, Verdict expected)
    {
        var off = Instant.FromUtc(2026, 7, 12, hour, minute);
        var earlier = Daily(Instant.FromUtc(2026, 6, 20, 8, 0)).Where(row => row.DutyOff < off - Duration.FromHours(12));
        Assert.Equal(expected, Look([.. earlier, Duty(off - Duration.FromHours(8), 8)]).Verdict);
    }

    // ORO.FTL.105: a local night is a period of 8 hours falling between 22:00 and 08:00.
    [Theory]
    [InlineData("12 22:00", "14 06:00", 2)]
    [InlineData("12 22:01", "14 06:00", 2)]
    [InlineData("13 00:00", "14 08:00", 2)]
    [InlineData("13 00:01", "14 08:00", 1)]
    [InlineData("13 00:01", "14 12:01", 1)]
    [InlineData("12 22:00", "14 05:59", 1)]
    [InlineData("13 08:00", "14 20:00", 1)]
    [InlineData("13 10:00", "13 20:00", 0)]
    public void A_local_night_is_eight_hours_between_22_and_8(string from, string to, int nights)
    {
        static Instant At(string text) => Instant.FromUtc(2026, 7, int.Parse(text[..2], System.Globalization.CultureInfo.InvariantCulture),
            int.Parse(text[3..5], System.Globalization.CultureInfo.InvariantCulture), int.Parse(text[6..], System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(nights, RecoveryRest.LocalNights(At(from), At(to), DateTimeZone.Utc));
    }

    // Where the days are not logged, or a duty on them without its times, the rest may or may not have been there.
    [Fact]
    public void What_is_not_logged_is_not_checked()
    {
        var week = SomePlans.Week(Leg);
        var open = Ask.AllIn(week with { Input = week.Input with { Logged = [] } }, "CREW-16", Leg, "eu-commercial")[0];
        Assert.Equal(Verdict.NotChecked, open.Verdict);
        Assert.Contains("nothing is logged for ABC", open.Text, StringComparison.Ordinal);
        var untimed = Look([.. Enumerable.Range(1, 12)
            .Select(day => SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-day), 1) with { DutyOn = null, DutyOff = null })]);
        Assert.Equal(Verdict.NotChecked, untimed.Verdict);
        Assert.Contains("without its times", untimed.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Other_rule_sets_ask_for_none() => Assert.Equal(Verdict.NotApplicable, Ask.Worst("CREW-16", Leg).Verdict);
}
