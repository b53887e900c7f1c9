using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests;

public sealed class ThinnestMarginsTests
{
    [Fact]
    public void The_thinnest_of_each_leg_stands_in_order_of_its_share_of_the_limit()
    {
        var heavy = AtTakeoff(SomePlans.Planned(), 8990);
        var light = (AtTakeoff(SomePlans.Planned(), 8900) with { Leg = SomePlans.AsRead(2) }).Between("XBEL", "XAND").Later(Duration.FromHours(30));
        var margins = ThinnestMargins.Of(Checked(light, heavy), 5);
        Assert.Equal(["T101/1 WB-03", "T101/2 WB-03"], margins.Select(margin => $"{margin.Plan.Key} {margin.Finding.Check}"));
        Assert.Equal(10.0 / 9000, margins[0].Share, 12);
        Assert.Equal(100.0 / 9000, margins[1].Share, 12);
        Assert.Equal(heavy.Key, Assert.Single(ThinnestMargins.Of(Checked(light, heavy), 1)).Plan.Key);
    }

    [Fact]
    public void Fuel_planned_to_the_least_a_full_cabin_and_legs_that_fail_are_no_thin_margins()
    {
        var plan = SomePlans.Planned();
        Assert.Contains(Checked(plan).Legs[0].Findings, finding => finding is { Check: "FUEL-03", Margin: 0 });
        Assert.DoesNotContain(ThinnestMargins.Of(Checked(plan), 5),
            margin => margin.Finding.Check.StartsWith("FUEL", StringComparison.Ordinal) || margin.Finding.Unit == "persons");
        Assert.Empty(ThinnestMargins.Of(Checked(AtTakeoff(plan, 9001)), 5));
    }

    [Fact]
    public void A_centre_of_gravity_counts_by_the_width_between_its_limits()
    {
        var finding = Checked(SomePlans.Planned()).Legs[0].Findings.First(finding => finding.Check == "WB-04");
        Assert.Equal(10, finding.Span);
        Assert.Equal(finding.Margin / 10, finding.Share);
    }

    private static CheckedWeek Checked(params LegPlan[] legs) =>
        WeekChecker.Check(SomePlans.Week(legs), RuleSet.Load("us-charter"), Ask.Fair("XAND", "XBEL", "XDUN"));

    private static LegPlan.Planned AtTakeoff(LegPlan.Planned plan, double lb) => plan with
    {
        Load = plan.Load with { Takeoff = plan.Load.Takeoff with { Weight = new Pounds(lb) } },
    };
}
