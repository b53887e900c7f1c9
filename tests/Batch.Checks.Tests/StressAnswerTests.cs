using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests;

public sealed class StressAnswerTests
{
    private static readonly Scenario Hot = Scenario.BuiltIn.Single(scenario => scenario.Name == "hot");

    [Fact]
    public void What_cannot_be_planned_stands_first_then_the_farthest_beyond_its_limit()
    {
        var before = Checked(Heavy(1, 8000), Heavy(2, 8000), Heavy(3, 8000));
        var after = Checked(Heavy(1, 9010), Heavy(2, 9100), SomePlans.Unplanned(3, Some.Noon + Duration.FromHours(60)));
        var answer = StressAnswer.Of(Hot, before, after, 5);
        Assert.Equal(["T101/3", "T101/2", "T101/1"], answer.Breaks.Select(leg => leg.Plan.Key.ToString()));
        Assert.Equal("WB-03", Assert.Single(answer.Breaks[1].Findings).Check);
        Assert.Empty(answer.Thinnest);
    }

    [Fact]
    public void What_fails_as_planned_too_is_not_named_again_but_another_failure_of_the_leg_is()
    {
        var before = Checked(Heavy(1, 9010));
        Assert.Empty(StressAnswer.Of(Hot, before, Checked(Heavy(1, 9100)), 5).Breaks);
        var plan = Heavy(1, 9100);
        var more = StressAnswer.Of(Hot, before, Checked(plan with { Fuel = plan.Fuel with { Aboard = new Pounds(1000) } }), 5);
        Assert.Equal("FUEL-03", Assert.Single(Assert.Single(more.Breaks).Findings).Check);
    }

    [Fact]
    public void A_leg_that_only_gets_a_caution_more_is_named_apart()
    {
        var plan = Heavy(1, 8000);
        var answer = StressAnswer.Of(Hot, Checked(plan),
            Checked(plan with { Type = plan.Type with { MaximumRamp = null }, Aircraft = plan.Aircraft with { DeferredItems = "a lamp" } }), 5);
        Assert.Empty(answer.Breaks);
        Assert.Equal("ACFT-03", Assert.Single(Assert.Single(answer.Cautions).Findings).Check);
    }

    private static LegPlan.Planned Heavy(int number, double lb)
    {
        var plan = SomePlans.Planned();
        plan = plan with { Leg = SomePlans.AsRead(number), Load = plan.Load with { Takeoff = plan.Load.Takeoff with { Weight = new Pounds(lb) } } };
        return (number % 2 == 1 ? plan : plan.Between("XBEL", "XAND")).Later(Duration.FromHours(30 * (number - 1)));
    }

    private static CheckedWeek Checked(params LegPlan[] legs) =>
        WeekChecker.Check(SomePlans.Week(legs), RuleSet.Load("us-charter"), Ask.Fair("XAND", "XBEL", "XDUN"));
}
