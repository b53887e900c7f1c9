using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Crews;

public sealed class ContinuityTests
{
    // The first leg is on blocks at 13:05 at XBEL; the operator turns round in 45 minutes.
    private static LegPlan.Planned First { get; } = SomePlans.Planned();

    private static LegPlan.Planned Back(int minutesOnGround) => SomePlans.Planned(2).Between("XBEL", "XAND").Later(Duration.FromMinutes(75 + minutesOnGround));

    private static ImmutableArray<Finding> Of(LegPlan.Planned leg, params LegPlan[] before) => Ask.AllIn(SomePlans.Week([.. before, leg]), "CREW-11", leg);

    [Fact]
    public void Forty_five_minutes_to_turn_round()
    {
        Assert.Equal([Verdict.Pass, Verdict.Pass], Of(Back(45), First).Select(finding => finding.Verdict));
        var findings = Of(Back(44), First);
        Assert.Equal([Verdict.Caution, Verdict.Caution], findings.Select(finding => finding.Verdict));
        Assert.Equal((45, 44, -1, "min"), (findings[0].Required, findings[0].Actual, findings[0].Margin, findings[0].Unit));
    }

    [Fact]
    public void Nobody_is_on_two_legs_at_once()
    {
        var findings = Of(Back(-1), First);
        Assert.Equal([Verdict.Fail, Verdict.Fail], findings.Select(finding => finding.Verdict));
        Assert.Contains("X-ABCD is booked twice: still on leg T101/1", findings[0].Text, StringComparison.Ordinal);
        Assert.DoesNotContain(Of(First, Back(-1)), finding => finding.Verdict == Verdict.Fail);
    }

    // Five legs at one time, a column filled down: the fifth names two of the four others and counts the rest, for the aircraft and for the captain.
    [Fact]
    public void Of_many_legs_at_once_the_first_are_named_and_the_others_counted()
    {
        var legs = Enumerable.Range(1, 5).Select(number => (LegPlan)SomePlans.Planned(number)).ToArray();
        var findings = Of((LegPlan.Planned)legs[4], legs[..4]).Where(finding => finding.Text.Contains("booked", StringComparison.Ordinal)).ToArray();
        Assert.Equal(6, findings.Length);
        Assert.Contains(findings, finding => finding.Text == "X-ABCD is booked on 2 more legs when this leg leaves.");
        Assert.All(findings, finding => Assert.Equal(Verdict.Fail, finding.Verdict));
        Assert.Equal(6, Of((LegPlan.Planned)legs[3], [.. legs[..3], legs[4]]).Count(finding => finding.Text.Contains("booked twice", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_long_leg_overlaps_more_than_the_next_one()
    {
        var longest = First with { Times = First.Times with { OnBlocks = First.Times.OffBlocks + Duration.FromHours(6) } };
        var third = SomePlans.Planned(3).Between("XAND", "XBEL").Later(Duration.FromHours(4));
        Assert.Contains(Of(third, longest, Back(60)), finding => finding.Verdict == Verdict.Fail && finding.Text.Contains("T101/1", StringComparison.Ordinal));
    }

    [Fact]
    public void The_aircraft_stands_where_the_leg_starts_and_the_crew_may_be_brought()
    {
        var findings = Of(SomePlans.Planned(2).Between("XAND", "XBEL").Later(Duration.FromHours(5)), First);
        Assert.Equal([Verdict.Fail, Verdict.Caution], findings.Select(finding => finding.Verdict));
        Assert.Equal("X-ABCD is at XBEL after leg T101/1, and this leg starts at XAND.", findings[0].Text);
        Assert.Equal(["week.xlsx/Legs/E3", "week.xlsx/Legs/F3"], findings[0].Cells.ToArray());
    }

    [Fact]
    public void After_an_unplanned_leg_nothing_is_known()
    {
        var findings = Of(Back(45), SomePlans.Unplanned(1, First.Times.OffBlocks));
        Assert.All(findings, finding => Assert.Equal(Verdict.NotChecked, finding.Verdict));
        Assert.Contains("T101/1 before this one could not be planned", findings[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Before_the_first_leg_only_the_base_is_known()
    {
        Assert.All(Of(First), finding => Assert.Equal(Verdict.Pass, finding.Verdict));
        var away = Of(SomePlans.Planned().Between("XBEL", "XAND"));
        Assert.All(away, finding => Assert.Equal(Verdict.NotChecked, finding.Verdict));
        Assert.Contains("the base is XAND", away[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pilot_has_one_seat()
    {
        var twice = First with { Leg = First.Leg with { SecondPilot = "abc" } };
        Assert.Contains(Of(twice), finding => finding.Verdict == Verdict.Fail && finding.Text == "ABC is both captain and second pilot of this leg.");
    }

    [Fact]
    public void A_change_that_is_tried_counts_with_its_own_times()
    {
        var late = Back(10);
        var week = SomePlans.Week(First, late);
        Assert.Equal(Verdict.Caution, Ask.AllIn(week, "CREW-11", late)[0].Verdict);
        Assert.Equal(Verdict.Pass, Ask.AllIn(week, "CREW-11", Back(50))[0].Verdict);
    }
}
