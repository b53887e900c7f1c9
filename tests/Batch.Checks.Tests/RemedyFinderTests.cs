using Batch.Checks.Remedies.Kinds;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests;

/// <summary>Remedies for a small week: two legs out and back, then one more.</summary>
public sealed class RemedyFinderTests
{
    private static readonly ImmutableDictionary<string, string> Columns = ImmutableDictionary<string, string>.Empty
        .Add(nameof(Leg.OffBlocks), "D").Add("Date", "C").Add(nameof(Leg.Aircraft), "E").Add(nameof(Leg.FuelPlan), "M").Add(nameof(Leg.Level), "J")
            .Add(nameof(Leg.Captain), "K").Add(nameof(Leg.Alternate), "H");

    [Fact]
    public void A_written_amount_of_fuel_that_is_short_becomes_the_minimum_at_its_cell()
    {
        var finding = Failures(Week(fuel: 320)).First(finding => finding.Check == "FUEL-03");
        var remedy = finding.Remedies[0];
        Assert.Equal("week.xlsx/Legs/M2", Assert.Single(remedy.Changes).Key);
        Assert.Equal("minimum", remedy.Changes["week.xlsx/Legs/M2"]);
        Assert.Contains("week.xlsx/Legs/M2: minimum", remedy.Text, StringComparison.Ordinal);
        Assert.InRange(finding.Replans ?? 0, 1, 150);
    }

    [Fact]
    public void A_sheet_without_the_column_gets_the_words_and_no_changes()
    {
        var finding = Failures(Week(fuel: 320, Columns.Remove(nameof(Leg.FuelPlan)))).First(finding => finding.Check == "FUEL-03");
        Assert.Contains(finding.Remedies,
            remedy => remedy.Changes.IsEmpty && remedy.Text.Contains("has no column for it yet: minimum", StringComparison.Ordinal));
    }

    [Fact]
    public void Remedies_come_least_disruptive_first_and_no_more_than_three()
    {
        foreach (var finding in Failures(Week(fuel: 320)))
        {
            Assert.InRange(finding.Remedies.Length, 0, RemedyFinder.Most);
            Assert.Equal(finding.Remedies.Select(remedy => remedy.Disruption).Order(), finding.Remedies.Select(remedy => remedy.Disruption));
        }
    }

    [Fact]
    public void Fuel_enough_leaves_no_failure_of_fuel_to_look_at()
    {
        var (finder, _) = Finder(Week(fuel: 1200));
        Assert.DoesNotContain(finder.Failing.SelectMany(leg => leg.Findings), finding => finding is { Verdict: Verdict.Fail, Check: "FUEL-03" });
    }

    [Fact]
    public void An_aircraft_that_stands_elsewhere_is_brought_by_a_leg_before_when_there_is_time()
    {
        var back = Failures(Elsewhere(hoursLater: 9)).First(finding => finding is { Check: "CREW-11", Verdict: Verdict.Fail });
        var remedy = back.Remedies.First(remedy => remedy.Text.StartsWith("Add a leg XBEL-XAND before it", StringComparison.Ordinal));
        Assert.Empty(remedy.Changes);
        Assert.Contains("alternate XBEL", remedy.Text, StringComparison.Ordinal);

        var tight = Failures(Elsewhere(hoursLater: 2)).First(finding => finding is { Check: "CREW-11", Verdict: Verdict.Fail });
        Assert.DoesNotContain(tight.Remedies, remedy => remedy.Text.StartsWith("Add a leg", StringComparison.Ordinal));
    }

    // The tank holds 60 lb less than the leg needs; XCOR lies on the way, and its country is not said as that of the ends is.
    [Fact]
    public void A_stop_for_fuel_names_the_leg_that_it_adds_and_only_what_the_leg_itself_does_not_ask()
    {
        var week = Week(fuel: 1200);
        var minimum = week.Legs[0] with { FuelPlan = new FuelPlan.Minimum(Pounds.Zero) };
        var needed = Assert.IsType<LegPlan.Planned>(Finder(week with { Legs = [minimum] }).Week.Legs[0].Plan).Fuel.Required;
        week = week with
        {
            Legs = [minimum with { FuelPlan = new FuelPlan.Amount(needed) }],
            Types = week.Types.SetItems(
                week.Types.Select(pair => KeyValuePair.Create(pair.Key, pair.Value with { UsableFuel = new Pounds(needed.Value - 60) }))),
        };
        const string stop =
            "Land at XCOR for fuel, which adds 67 min: a leg XAND-XCOR and a leg XCOR-XBEL, off blocks 13:16 there, direct and with minimum fuel";
        Assert.Equal(stop, Assert.Single(Assert.Single(Failures(week)).Remedies).Text);
        var abroad = week with
        {
            Airports = week.Airports.SetItems(new[] { "XAND", "XBEL" }
            .Select(ident => KeyValuePair.Create(ident, week.Airports[ident] with { Country = "Here" })))
        };
        Assert.Equal(stop + "; then look at ADM-03 of leg T1/1, ADM-03 of the added leg", Assert.Single(Assert.Single(Failures(abroad)).Remedies).Text);
    }

    // Below the landing minima at the departure, and the takeoff alternate named is 15 degrees of latitude (900 NM) off; XCOR lies near.
    [Fact]
    public void A_takeoff_alternate_too_far_off_is_replaced_by_one_that_is_near()
    {
        static Airport Equipped(Airport airport) =>
            airport with { ApproachKind = "ILS", ApproachMinimum = new Feet(200), ApproachVisibilityM = 800, TakeoffVisibilityM = 400 };
        var week = Week(fuel: 1200, Columns.Add(nameof(Leg.TakeoffAlternate), "P"));
        week = week with
        {
            Legs = [week.Legs[0] with { TakeoffAlternate = "XFAR" }, .. week.Legs[1..]],
            Airports = week.Airports.SetItems(week.Airports.Values.Append(Some.Airport("XFAR", 26, -40, 0))
                .Select(airport => KeyValuePair.Create(airport.Ident, Equipped(airport)))),
        };
        var forecasts = Ask.Fair("XBEL", "XCOR", "XDUN", "XFAR").And(Ask.Forecast("XAND", 100, 600));
        var (finder, planned) = Finder(week, forecasts);
        var finding = finder.Find(planned.Legs[0]).Findings.Single(finding => finding is { Check: "ALT-04", Verdict: Verdict.Fail });
        Assert.Contains("XFAR, the takeoff alternate,", finding.Text, StringComparison.Ordinal);
        var remedy = finding.Remedies.First(remedy => remedy.Changes.ContainsKey("week.xlsx/Legs/P2"));
        Assert.Equal("XCOR", remedy.Changes["week.xlsx/Legs/P2"]);
        Assert.StartsWith("Name XCOR as takeoff alternate instead of XFAR", remedy.Text, StringComparison.Ordinal);
    }

    // Empty 6,000 lb with a pilot of 190 lb and 4,500 lb of fuel: over 10,000 lb, where the climb table ends.
    [Fact]
    public void A_leg_too_heavy_to_be_planned_is_offered_the_minimum_fuel()
    {
        var week = Week(fuel: 4500);
        week = week with { Operator = week.Operator with { MayUseTableEdge = false } };
        var (finder, planned) = Finder(week);
        var heavy = planned.Legs[0];
        Assert.Equal(LegState.Unplanned, heavy.State);
        var finding = Assert.Single(finder.Find(Assert.Single(finder.Failing, leg => leg.Plan.Key == heavy.Plan.Key)).Findings);
        Assert.Contains("more than Climb of Skua 9 goes up to", finding.Text, StringComparison.Ordinal);
        Assert.Equal("Plan leg T1/1 with the minimum fuel of the rules (week.xlsx/Legs/M2: minimum)", finding.Remedies[0].Text);
        Assert.Equal("minimum", finding.Remedies[0].Changes["week.xlsx/Legs/M2"]);
        Assert.InRange(finding.Replans ?? 0, 1, 150);
    }

    [Fact]
    public void Fuel_in_a_remedy_is_written_with_its_thousands_apart()
    {
        var leg = Week(fuel: 4500).Legs[0];
        Assert.StartsWith("Plan leg T1/1 with the minimum fuel of the rules instead of 4,500 lb", FuelEdits.Minimum(leg, new Pounds(4500)).Text,
            StringComparison.Ordinal);
        Assert.StartsWith("Plan leg T1/1 with 2,790 lb of fuel instead of 4,500 lb", FuelEdits.Amount(leg, new Pounds(2790), new Pounds(4500), WeightUnit.Pounds).Text,
            StringComparison.Ordinal);
    }

    // With 9,900 lb empty the leg is over the 10,000 lb of the climb table whatever is left behind; the other aircraft of the type is as light as before.
    [Fact]
    public void A_leg_too_heavy_to_be_planned_is_offered_another_aircraft()
    {
        var week = Week(fuel: 1200);
        var usual = week.Fleet.Values.Single();
        week = week with
        {
            Operator = week.Operator with { MayUseTableEdge = false },
            Fleet = week.Fleet.SetItem(usual.Registration, usual with { BasicEmptyWeight = new Pounds(9900) })
                .Add("X-FREE", usual with { Registration = "X-FREE" }),
        };
        var (finder, planned) = Finder(week);
        Assert.Equal(LegState.Unplanned, planned.Legs[0].State);
        var finding = Assert.Single(finder.Find(finder.Failing[0]).Findings);
        var remedy = Assert.Single(finding.Remedies);
        Assert.StartsWith($"Fly T1/1, T1/2 with X-FREE instead of {usual.Registration}", remedy.Text, StringComparison.Ordinal);
        Assert.Equal("X-FREE", remedy.Changes["week.xlsx/Legs/E2"]);
        // One that is no better is not offered.
        var worse = week with { Fleet = week.Fleet.SetItem("X-FREE", week.Fleet["X-FREE"] with { BasicEmptyWeight = new Pounds(9900) }) };
        var (again, _) = Finder(worse);
        Assert.Empty(Assert.Single(again.Find(again.Failing[0]).Findings).Remedies);
    }

    [Fact]
    public void A_leg_of_which_something_could_not_be_read_is_not_searched()
    {
        var week = Week(fuel: 1200);
        week = week with { Legs = [week.Legs[0] with { Route = "NOWHERE" }, .. week.Legs[1..]] };
        var (finder, planned) = Finder(week);
        Assert.Equal(LegState.Unplanned, planned.Legs[0].State);
        Assert.DoesNotContain(finder.Failing, leg => leg.State == LegState.Unplanned);
    }

    private static OperatorWeek Elsewhere(int hoursLater)
    {
        Leg Row(Leg leg, int row) => leg with { Origin = new Origin("week.xlsx/Legs", row, Columns) };
        var week = Some.Week(
        [
            Row(Some.Leg(1, "XAND", "XBEL", Some.Noon, alternate: "XCOR"), 2),
            Row(Some.Leg(2, "XAND", "XCOR", Some.Noon + Duration.FromHours(hoursLater), alternate: "XBEL"), 3),
        ]);
        return week with { Operator = week.Operator with { MayUseTableEdge = true } };
    }

    private static ImmutableArray<Finding> Failures(OperatorWeek week)
    {
        var (finder, planned) = Finder(week);
        Assert.All(planned.Legs, leg => Assert.True(leg.Plan is LegPlan.Planned, leg.Plan is LegPlan.Unplanned unplanned ? unplanned.Why : ""));
        Assert.True(finder.Failing.Length > 0, string.Join('\n',
            planned.Legs.SelectMany(leg => leg.Findings).Where(finding => finding.Verdict != Verdict.Pass)
                .Select(finding => finding.Check + " " + finding.Verdict + " " + finding.Text)));
        return [.. finder.Failing.SelectMany(leg => finder.Find(leg).Findings).Where(finding => finding.Verdict == Verdict.Fail)];
    }

    private static (RemedyFinder Finder, CheckedWeek Week) Finder(OperatorWeek week, Forecasts? forecasts = null)
    {
        var rules = RuleSet.Load("us-charter");
        var planner = new WeekPlanner(week, (leg, type) => rules.For(leg, type, week.Operator));
        var planned = WeekChecker.Check(planner.Plan(), rules, forecasts);
        return (new RemedyFinder(planner, planned, rules, forecasts ?? Forecasts.None, (_, plan) => plan()), planned);
    }

    private static OperatorWeek Week(double fuel, ImmutableDictionary<string, string>? columns = null)
    {
        Leg Row(Leg leg, int row) => leg with { Origin = new Origin("week.xlsx/Legs", row, columns ?? Columns) };
        var week = Some.Week(
        [
            Row(Some.Leg(1, "XAND", "XBEL", Some.Noon, new FuelPlan.Amount(new Pounds(fuel)), aboardLb: 50, alternate: "XCOR"), 2),
            Row(Some.Leg(2, "XBEL", "XAND", Some.Noon + Duration.FromHours(4), alternate: "XCOR"), 3),
        ]);
        return week with { Operator = week.Operator with { MayUseTableEdge = true } };
    }
}
