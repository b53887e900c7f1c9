using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests;

public sealed class RuleSetTests
{
    private static readonly Operator Plain = new();

    private static PlanningRules For(string rules, Func<AircraftType, AircraftType>? type = null, Func<Leg, Leg>? leg = null, Operator? op = null) =>
        RuleSet.Load(rules).For((leg ?? (plain => plain))(SomePlans.AsRead()), (type ?? (plain => plain))(SomePlans.Type()), op ?? Plain);

    public static IEnumerable<object[]> Names => RuleSet.Names.Select(name => new object[] { name });

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_rule_file_can_be_read_and_serves_the_checks_there_are(string name)
    {
        var set = RuleSet.Load(name);
        Assert.Equal((name, name + " 2026-09"), (set.Name, set.Title));
        Assert.NotEmpty(set.About);
        var checks = AllChecks.List.Select(check => check.Id).ToHashSet();
        Assert.All(set.Rules, rule =>
        {
            Assert.Contains(rule.Check, checks);
            Assert.NotEmpty(rule.Citation);
            Assert.NotEmpty(rule.Says);
        });
    }

    [Theory]
    [InlineData("us-chater", "us-charter")]
    [InlineData("US CHARTER", "us-charter")]
    [InlineData("icao-anex-6", "icao-annex-6")]
    public void An_unknown_name_is_told_its_nearest(string name, string nearest)
    {
        var fault = Assert.Throws<UnknownRuleSetException>(() => RuleSet.Load(name));
        Assert.Equal(nearest, fault.Near[0]);
        Assert.Contains($"did you mean {nearest}?", fault.Message, StringComparison.Ordinal);
        Assert.Equal(4, fault.Near.Length);
    }

    [Fact]
    public void An_empty_name_lists_what_there_is() => Assert.StartsWith("No rule set is named; there are ",
        Assert.Throws<UnknownRuleSetException>(() => RuleSet.Load(" ")).Message, StringComparison.Ordinal);

    [Fact]
    public void Case_does_not_matter() => Assert.Equal("us-charter", RuleSet.Load(" US-Charter ").Name);

    [Fact]
    public void A_charter_leg_under_instrument_rules_must_meet_both_parts()
    {
        var fuel = For("us-charter").Fuel;
        Assert.Equal((Duration.FromMinutes(45), Duration.FromMinutes(45), ReserveBasis.Cruise),
            (fuel.FinalReserveDay, fuel.FinalReserveNight, fuel.FinalReserveBasis));
        Assert.Equal("14 CFR 91.167(a)(3); 14 CFR 135.223(a)(3)", fuel.FinalReserveCitation);
        Assert.Equal("14 CFR 91.169(b); 14 CFR 135.223(b)", fuel.AlternateCitation);
        Assert.Equal((0, Duration.Zero, Duration.Zero), (fuel.ContingencyFraction, fuel.ContingencyFloor, fuel.WithoutAlternateHold));
    }

    [Theory]
    [InlineData(LegPurpose.Ferry)]
    [InlineData(LegPurpose.Training)]
    public void A_leg_off_charter_is_planned_under_part_91(LegPurpose purpose) =>
        Assert.Equal("14 CFR 91.167(a)(3)", For("us-charter", leg: leg => leg with { Purpose = purpose }).Fuel.FinalReserveCitation);

    [Fact]
    public void A_visual_leg_has_a_day_and_a_night_reserve()
    {
        var fuel = For("us-charter", leg: leg => leg with { Rules = FlightRules.Vfr }).Fuel;
        Assert.Equal((30, 45), (fuel.FinalReserveDay.TotalMinutes, fuel.FinalReserveNight.TotalMinutes));
        Assert.Equal("14 CFR 91.151(a)(1); 14 CFR 135.209(a)(1); 14 CFR 91.151(a)(2); 14 CFR 135.209(a)(2)", fuel.FinalReserveCitation);
    }

    [Fact]
    public void Empty_cells_are_planned_as_the_stricter() =>
        Assert.Equal("14 CFR 91.167(a)(3); 14 CFR 135.223(a)(3)",
            For("us-charter", leg: leg => leg with { Rules = null, Purpose = null }).Fuel.FinalReserveCitation);

    [Theory]
    [InlineData("icao-annex-6", EngineKind.Turboprop, 30, ReserveBasis.Holding)]
    [InlineData("icao-annex-6", EngineKind.Jet, 30, ReserveBasis.Holding)]
    [InlineData("icao-annex-6", EngineKind.Piston, 45, ReserveBasis.Cruise)]
    [InlineData("icao-annex-6", null, 45, ReserveBasis.Cruise)]
    [InlineData("eu-commercial", EngineKind.Turboprop, 30, ReserveBasis.Holding)]
    [InlineData("eu-commercial", EngineKind.Piston, 45, ReserveBasis.Cruise)]
    public void The_reserve_depends_on_the_engine_and_is_the_greater_where_it_is_not_said(string rules, EngineKind? engine, double minutes, ReserveBasis basis)
    {
        var fuel = For(rules, type => type with { Engine = engine }).Fuel;
        Assert.Equal((minutes, basis), (fuel.FinalReserveDay.TotalMinutes, fuel.FinalReserveBasis));
    }

    [Fact]
    public void Contingency_of_the_rules_and_of_the_operator_the_stricter_holds()
    {
        var icao = For("icao-annex-6").Fuel;
        Assert.Equal((0.05, 5, 15), (icao.ContingencyFraction, icao.ContingencyFloor.TotalMinutes, icao.WithoutAlternateHold.TotalMinutes));
        Assert.Equal(0.05, For("icao-annex-6", op: Plain with { Contingency = 0.03 }).Fuel.ContingencyFraction);
        Assert.Equal((0.08, "operator's contingency"), (For("icao-annex-6", op: Plain with { Contingency = 0.08 }).Fuel.ContingencyFraction,
            For("icao-annex-6", op: Plain with { Contingency = 0.08 }).Fuel.ContingencyCitation));
        Assert.Equal(0.05, For("us-charter", op: Plain with { Contingency = 0.05 }).Fuel.ContingencyFraction);
    }

    [Fact]
    public void Only_duties_enter_the_runway_plan()
    {
        Assert.Equal((1, 1), (For("us-charter").Runway.TakeoffFactor, For("us-charter").Runway.LandingFactor));
        var europe = For("eu-commercial").Runway;
        Assert.Equal(1.25, europe.TakeoffFactor);
        Assert.Equal(1 / 0.7, europe.LandingFactor, 12);
        Assert.Equal(("CAT.POL.A.305(b)", "CAT.POL.A.330(a)"), (europe.TakeoffCitation, europe.LandingCitation));
    }

    [Fact]
    public void Standard_weights_are_the_operators_own_else_a_named_default()
    {
        var own = Plain with { StandardWeights = Plain.StandardWeights.Add("adult", new Pounds(180)) };
        var weights = For("us-charter", op: own).Weights;
        Assert.Equal((180, 205, 210), (weights.Adult.Value, weights.Man.Value, weights.Pilot.Value));
        Assert.StartsWith("operator's own standard weights; AC 120-27E (cancelled 2019), winter (basis to be confirmed)", weights.Source,
            StringComparison.Ordinal);
        var europe = For("eu-commercial").Weights;
        Assert.Equal(96, europe.Adult.Kilograms, 9);
        Assert.Equal(85, europe.Pilot.Kilograms, 9);
        Assert.Equal(104, For("eu-commercial", type => type with { Seats = null }).Weights.Adult.Kilograms, 9);
    }

    [Fact]
    public void A_condition_with_an_unknown_fact_is_neither_met_nor_failed()
    {
        var condition = new RuleCondition { Engine = "turbine", Seats = "10.." };
        var facts = LegFacts.Of(SomePlans.Planned()) with { Seats = null };
        Assert.Equal(Holds.Unknown, condition.HoldsFor(facts));
        Assert.Equal("number of seats of the type", Assert.Single(condition.Missing(facts)));
        Assert.Equal(Holds.No, condition.HoldsFor(facts with { Engine = EngineKind.Piston }));
        Assert.Equal(Holds.Yes, condition.HoldsFor(facts with { Seats = 10 }));
        Assert.Equal(Holds.No, condition.HoldsFor(facts with { Seats = 9 }));
    }
}
