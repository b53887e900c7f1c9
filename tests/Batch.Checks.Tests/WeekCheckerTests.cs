using Batch.Testing;

namespace Batch.Checks.Tests;

public sealed class WeekCheckerTests
{
    [Theory]
    [InlineData("us-charter")]
    [InlineData("us-general")]
    [InlineData("icao-annex-6")]
    [InlineData("eu-commercial")]
    public void A_good_leg_passes_and_every_check_answers(string rules)
    {
        var plan = SomePlans.Planned();
        plan = plan with { Fuel = plan.Fuel with { Contingency = new Pounds(40), Aboard = new Pounds(1180), Uplift = new Pounds(680) } };
        var leg = WeekChecker.CheckLeg(plan, SomePlans.Week(plan), RuleSet.Load(rules), Ask.Fair("XAND", "XBEL", "XDUN"));
        // ICAO leaves the limits of flight time, duty and rest to the State: each says so until the Checks sheet gives a number.
        string[] left = rules == "icao-annex-6" ? ["CREW-01", "CREW-02", "CREW-03", "CREW-14"] : [];
        Assert.Equal(left, leg.Findings.Where(finding => finding.Verdict == Verdict.NotChecked
            && finding.Text.Contains("for the State of the operator to set", StringComparison.Ordinal)).Select(finding => finding.Check));
        Assert.Empty(leg.Findings.Where(finding => finding.Verdict > Verdict.NotApplicable && !left.Contains(finding.Check))
            .Select(finding => finding.Check + ": " + finding.Text));
        Assert.Equal(LegState.Pass, leg.State);
        Assert.Equal(AllChecks.List.Select(check => check.Id).Order(StringComparer.Ordinal),
            leg.Findings.Select(finding => finding.Check).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_week_is_checked_leg_by_leg_and_names_its_rules()
    {
        var plan = SomePlans.Planned();
        var week = WeekChecker.Check(SomePlans.Week(plan, SomePlans.Unplanned(2, Some.Noon + Duration.FromHours(3))), RuleSet.Load("us-charter"),
            Ask.Fair("XAND", "XBEL", "XDUN"));
        Assert.Equal("us-charter 2026-09", week.RuleSet);
        Assert.Equal([LegState.Pass, LegState.Unplanned], week.Legs.Select(leg => leg.State));
        var why = Assert.Single(week.Legs[1].Findings);
        Assert.Equal("Not planned: the route element NORA is not known (NORRA).", why.Text);
        Assert.Equal("week.xlsx/Legs/I9", Assert.Single(why.Cells));
    }

    [Fact]
    public void The_worst_stands_first()
    {
        var plan = SomePlans.Planned();
        plan = plan with { Fuel = plan.Fuel with { Aboard = new Pounds(1000) }, Type = plan.Type with { MaximumRamp = null } };
        var verdicts = WeekChecker.CheckLeg(plan, SomePlans.Week(plan), RuleSet.Load("us-charter")).Findings.Select(finding => finding.Verdict).ToList();
        Assert.Equal(Verdict.Fail, verdicts[0]);
        Assert.Contains(Verdict.NotChecked, verdicts);
        Assert.Equal(verdicts.OrderDescending(), verdicts);
    }

    [Theory]
    [InlineData(1000, "", true)]
    [InlineData(1000, "the chief pilot agreed", false)]
    [InlineData(1180, "the chief pilot agreed", false)]
    public void A_leg_that_fails_holds_its_trip_unless_somebody_gave_a_reason(double aboardLb, string reason, bool isHeld)
    {
        var plan = SomePlans.Planned();
        plan = plan with
        {
            Leg = plan.Leg with { Override = reason },
            Fuel = plan.Fuel with { Contingency = new Pounds(40), Aboard = new Pounds(aboardLb), Uplift = new Pounds(680) },
        };
        var week = WeekChecker.Check(SomePlans.Week(plan), RuleSet.Load("us-charter"), Ask.Fair("XBEL", "XDUN"));
        var leg = Assert.Single(week.Legs);
        Assert.Equal(aboardLb == 1000, leg.State == LegState.Fail);
        Assert.Equal(leg.State == LegState.Fail ? reason : "", leg.Override);
        Assert.Equal(isHeld, leg.IsHeld);
        Assert.Equal(isHeld ? [plan.Key.Trip] : [], week.HeldTrips);
    }

    [Fact]
    public void A_leg_that_could_not_be_planned_is_held_whatever_the_reason()
    {
        var week = WeekChecker.Check(SomePlans.Week(SomePlans.Unplanned(2, Some.Noon)), RuleSet.Load("us-charter"), Ask.Fair("XBEL", "XDUN"));
        Assert.True(Assert.Single(week.Legs).IsHeld);
    }
}
