using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Crews;

/// <summary>14 CFR 135.299(c): "has not flown over a route and into an airport within the preceding 90 days".</summary>
public sealed class FamiliarityTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static Finding Look(params LoggedDuty[] rows)
    {
        var week = SomePlans.Week(Leg);
        return Ask.AllIn(week with { Input = week.Input with { Logged = [.. rows] } }, "ADM-08", Leg)[0];
    }

    private static LoggedDuty Day(int ago, params string[] airports) =>
        SomePlans.Logged("ABC", SomePlans.Date.PlusDays(-ago), 1) with { Airports = [.. airports] };

    [Theory]
    [InlineData(1, Verdict.Pass)]
    [InlineData(90, Verdict.Pass)]
    [InlineData(91, Verdict.Caution)]
    public void A_landing_at_the_destination_counts_for_ninety_days(int ago, Verdict expected)
    {
        var finding = Look(Day(200, "XAND"), Day(ago, "XAND", "xbel"), SomePlans.DayOff("ABC"));
        Assert.Equal((expected, "14 CFR 135.299(c)"), (finding.Verdict, finding.Citation));
        if (expected == Verdict.Caution)
            Assert.Contains("ABC has not landed at XBEL in the 90 days before this leg (last on 14 Apr 2026)", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Days_without_airports_or_without_a_log_are_not_checked()
    {
        var silent = Look(Day(200, "XAND"), Day(30), SomePlans.DayOff("ABC"));
        Assert.Equal(Verdict.NotChecked, silent.Verdict);
        Assert.Contains("the airports of ABC on 14 Jun 2026 are not logged", silent.Text, StringComparison.Ordinal);
        var late = Look(Day(30, "XAND"), SomePlans.DayOff("ABC"));
        Assert.Equal(Verdict.NotChecked, late.Verdict);
        Assert.Contains("the log of ABC begins on 14 Jun 2026", late.Text, StringComparison.Ordinal);
        Assert.Equal(Verdict.NotChecked, Look().Verdict);
        // What is known is enough, wherever the log begins.
        Assert.Equal(Verdict.Pass, Look(Day(30, "XBEL"), SomePlans.DayOff("ABC")).Verdict);
    }

    [Fact]
    public void An_earlier_leg_of_the_week_counts_and_a_later_one_does_not()
    {
        var next = SomePlans.Planned(2).Later(Duration.FromHours(24));
        var week = SomePlans.Week(Leg, next);
        week = week with { Input = week.Input with { Logged = [Day(200, "XAND"), SomePlans.DayOff("ABC")] } };
        Assert.Equal(Verdict.Caution, Ask.AllIn(week, "ADM-08", Leg)[0].Verdict);
        Assert.Equal(Verdict.Pass, Ask.AllIn(week, "ADM-08", next)[0].Verdict);
    }

    [Fact]
    public void A_ferry_asks_for_none() =>
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ADM-08", Leg with { Purpose = Batch.Flight.Week.LegPurpose.Ferry }).Verdict);
}
