using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Fuel;

public sealed class FuelChecksTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned Visual { get; } = Leg with
    {
        Rules = FlightRules.Vfr,
        Alternates = [],
        Fuel = Leg.Fuel with { FinalReserve = new Pounds(200), FinalReserveTime = Duration.FromMinutes(30) }
    };

    private static LegPlan.Planned With(LegPlan.Planned plan, Func<FuelLadder, FuelLadder> change) => plan with { Fuel = change(plan.Fuel) };

    private static LegPlan.Planned Aboard(LegPlan.Planned plan, double pounds) => With(plan, fuel => fuel with { Aboard = new Pounds(pounds) });

    // 14 CFR 91.151(a)(1), 135.209(a)(1): taxi 40 + trip 640 + 30 minutes of 400 lb/h.
    [Fact]
    public void A_visual_day_leg_needs_thirty_minutes() => Ask.Boundary("FUEL-01", Aboard(Visual, 880), Aboard(Visual, 879), null);

    // 14 CFR 91.151(a)(2): 45 minutes of 400 lb/h although the plan was made with 30.
    [Fact]
    public void A_visual_night_leg_needs_forty_five_minutes_whatever_it_was_planned_with()
    {
        var night = Visual with { Daylight = Visual.Daylight with { IsNightLanding = true } };
        Ask.Boundary("FUEL-02", Aboard(night, 980), Aboard(night, 979), null);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("FUEL-01", night).Verdict);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("FUEL-02", Visual).Verdict);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("FUEL-03", Visual).Verdict);
    }

    // Civil dusk at XBEL on 14 July 2026 is after 22:00 UTC; 30 minutes more of flight reach it.
    [Fact]
    public void A_reserve_that_reaches_into_the_night_is_a_night_reserve()
    {
        var dusk = Visual.Daylight.Destination.CivilDusk ?? throw new InvalidOperationException("no dusk");
        LegPlan.Planned Landing(Instant at) => Visual.Later(at - Visual.Times.Landing);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("FUEL-02", Landing(dusk - Duration.FromMinutes(48))).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("FUEL-02", Aboard(Landing(dusk - Duration.FromMinutes(27)), 979)).Verdict);
    }

    // 14 CFR 91.167(a), 135.223(a): taxi 40 + trip 640 + alternate 160 + 45 minutes of 400 lb/h.
    [Fact]
    public void An_instrument_leg_needs_the_alternate_and_forty_five_minutes()
    {
        Ask.Boundary("FUEL-03", Leg, Aboard(Leg, 1139), null);
        var finding = Ask.Worst("FUEL-03", Aboard(Leg, 1020));
        Assert.Equal("Fuel aboard is 1,020 lb, 120 lb short of the 1,140 lb required: taxi 40 lb + trip 640 lb + alternate XDUN 160 lb + final reserve 300 lb for 45 min at 400 lb/h.", finding.Text);
        Assert.Equal((1140, 1020, -120, "lb"), (finding.Required, finding.Actual, finding.Margin, finding.Unit));
        Assert.Equal("14 CFR 91.167(a)(3); 14 CFR 135.223(a)(3)", finding.Citation);
        Assert.Equal(["week.xlsx/Legs/M2", "week.xlsx/Legs/N2"], finding.Cells.ToArray());
    }

    [Fact]
    public void A_ferry_leg_is_held_against_part_91_alone()
    {
        var finding = Ask.Worst("FUEL-03", Aboard(Leg, 1139) with { Purpose = LegPurpose.Ferry });
        Assert.Equal("14 CFR 91.167(a)(3)", finding.Citation);
        Assert.Equal(Verdict.Fail, finding.Verdict);
    }

    [Fact]
    public void Without_an_alternate_its_fuel_is_not_asked_for() =>
        Ask.Boundary("FUEL-03", Aboard(Leg with { Alternates = [] }, 980), Aboard(Leg with { Alternates = [] }, 979), null);

    // From memory in the rule file, so at most a caution.
    [Fact]
    public void An_unconfirmed_basis_never_fails_a_leg_by_itself()
    {
        var piston = Aboard(Leg with { Type = Leg.Type with { Engine = EngineKind.Piston } }, 1139);
        var finding = Ask.Worst("FUEL-03", piston, rules: "icao-annex-6");
        Assert.Equal((Verdict.Caution, true), (finding.Verdict, finding.IsBasisUnconfirmed));
        var raised = Ask.Worst("FUEL-03", piston, week => week.With(new CheckSetting { Check = "FUEL-03", State = State.Fail }), "icao-annex-6");
        Assert.Equal((Verdict.Fail, true), (raised.Verdict, raised.IsBasisUnconfirmed));
    }

    [Fact]
    public void An_engine_that_is_not_said_leaves_the_reserve_open() =>
        Assert.Contains("engine kind of the type", Ask.Worst("FUEL-03", Leg with { Type = Leg.Type with { Engine = null } }, rules: "icao-annex-6").Text,
            StringComparison.Ordinal);

    // AMC2 CAT.OP.MPA.181: not less than 5 % of trip fuel, 32 of 640 lb.
    [Fact]
    public void Contingency_is_five_percent_of_trip_fuel()
    {
        Ask.Boundary("FUEL-04", Aboard(Leg, 1172), Aboard(Leg, 1171), null, rules: "eu-commercial");
        Ask.Boundary("FUEL-04", Aboard(Leg, 1172), Aboard(Leg, 1171), Aboard(Leg, 1172) with { Type = Leg.Type with { Tables = new PerformanceTables() } },
            Verdict.Caution, "icao-annex-6");
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("FUEL-04", Leg).Verdict);
        Assert.Equal(Verdict.Caution, Ask.Worst("FUEL-04", With(Leg, fuel => fuel with { Contingency = new Pounds(1) })).Verdict);
    }

    [Fact]
    public void Without_an_alternate_some_holding_is_carried()
    {
        // 15 minutes at 360 lb/h in the ladder: 40 + 640 + 90 + 300.
        var alone = With(Leg with { Alternates = [] }, fuel => fuel with { Alternate = new Pounds(90) });
        Ask.Boundary("FUEL-05", Aboard(alone, 1070), Aboard(alone, 1069), With(alone, fuel => fuel with { Alternate = Pounds.Zero }), Verdict.Caution,
            "icao-annex-6");
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("FUEL-05", Leg, rules: "icao-annex-6").Verdict);
    }

    [Fact]
    public void Tanks_hold_no_more_than_they_hold()
    {
        var full = Leg with { Type = Leg.Type with { UsableFuel = new Pounds(1140) } };
        Ask.Boundary("FUEL-06", full, Aboard(full, 1141), Leg with { Type = Leg.Type with { UsableFuel = null } });
        Assert.Equal(Verdict.Fail, Ask.Worst("FUEL-06", With(full, fuel => fuel with { Trip = new Pounds(641) })).Verdict);
    }

    [Fact]
    public void The_operators_landing_fuel_is_a_caution()
    {
        // 1140 - 40 - 640 = 460 lb land; 69 minutes of 400 lb/h are 460 lb.
        PlannedWeek Own(PlannedWeek week) => week.With(op => op with { LandingFuel = Duration.FromMinutes(69) });
        Ask.Boundary("FUEL-07", Leg, Aboard(Leg, 1139), null, Verdict.Caution, change: Own);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("FUEL-07", Leg).Verdict);
    }

    [Fact]
    public void Fuel_is_loaded_where_it_is_sold()
    {
        Ask.Boundary("FUEL-09", Leg, With(Leg, fuel => fuel with { IsSoldHere = false }), With(Leg, fuel => fuel with { IsSoldHere = null }));
        Assert.Equal(Verdict.Pass, Ask.Worst("FUEL-09", With(Leg, fuel => fuel with { IsSoldHere = false, Uplift = Pounds.Zero })).Verdict);
        Assert.Contains("empty tanks", Ask.Worst("FUEL-09", With(Leg, fuel => fuel with { IsBeforeKnown = false })).Text, StringComparison.Ordinal);
        Assert.Contains("must come off", Ask.Worst("FUEL-09", With(Leg, fuel => fuel with { Before = new Pounds(1141), Uplift = Pounds.Zero })).Text,
            StringComparison.Ordinal);
        var notice = new Notice { Subject = "xand", Effect = NoticeEffect.NoFuel, From = Leg.Times.OffBlocks, Origin = SomePlans.Row("week.xlsx/Notices", 2) };
        var finding = Ask.Worst("FUEL-09", Leg, week => week.With(notice));
        Assert.Equal((Verdict.Fail, "week.xlsx/Notices/2"), (finding.Verdict, finding.Cells[0]));
        Assert.Equal(Verdict.Pass, Ask.Worst("FUEL-09", Leg, week => week.With(notice with { From = null, To = Leg.Times.OffBlocks })).Verdict);
    }

    [Fact]
    public void What_the_next_departure_needs_is_still_there_on_landing()
    {
        Ask.Boundary("FUEL-10", With(Leg, fuel => fuel with { NeededAfterLanding = new Pounds(460) }),
            With(Leg, fuel => fuel with { NeededAfterLanding = new Pounds(461) }), null);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("FUEL-10", Leg).Verdict);
    }
}
