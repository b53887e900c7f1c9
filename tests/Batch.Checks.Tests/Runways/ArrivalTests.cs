using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Checks.Tests.Runways;

public sealed class ArrivalTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned Type(Func<RunwayCorrections, RunwayCorrections> change, LegPlan.Planned? plan = null) =>
        (plan ?? Leg) with { Type = Leg.Type with { Corrections = change(Leg.Type.Corrections) } };

    private static LegPlan.Planned Landing(RunwayUse use) => Leg with { Arrival = new RunwayResult.Computed(use) };

    private static LegPlan.Planned Takeoff(RunwayUse use) => Leg with { Departure = new RunwayResult.Computed(use) };

    private static RunwayUse Wet(double corrected) => SomePlans.Use(corrected) with { IsWet = true, Factors = [new RunwayFactor("wet", 1.1)] };

    private static LegPlan.Planned NoLanding { get; } = Leg with { Arrival = new RunwayResult.NotComputed("Skua 9 has no Landing table") };

    // CAT.OP.MPA.303(c), SAFO 19001: 115 % of the distance in the conditions of the arrival; 4,000 ft are there. 4,000 / 1.15 = 3,478.26.
    [Theory]
    [InlineData("us-charter")]
    [InlineData("eu-commercial")]
    public void Fifteen_percent_are_left_at_the_arrival(string rules) =>
        Ask.Boundary("PERF-05", Landing(SomePlans.Use(3478)), Landing(SomePlans.Use(3479)), NoLanding, Verdict.Caution, rules);

    [Fact]
    public void A_wet_arrival_wants_a_wet_correction()
    {
        Assert.Equal(Verdict.NotChecked, Ask.Worst("PERF-05", Landing(Wet(1000))).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("PERF-05", Type(own => own with { LandingWet = 0.1 }, Landing(Wet(3478)))).Verdict);
    }

    // CAT.POL.A.335: the dry distance times 1.15 within 70 % of 4,000 ft: 2,800 / 1.15 = 2,434.8 dry, 2,678.3 with a correction of 1.1.
    [Fact]
    public void A_wet_runway_takes_the_dry_distance_and_fifteen_percent()
    {
        Ask.Boundary("PERF-04", Landing(Wet(2678)), Landing(Wet(2679)), null, Verdict.Caution);
        var finding = Ask.Worst("PERF-04", Landing(Wet(2679)), rules: "eu-commercial");
        Assert.Equal((Verdict.Caution, "CAT.POL.A.335", true), (finding.Verdict, finding.Citation, finding.IsBasisUnconfirmed));
        Assert.Equal(Verdict.Pass, Ask.Worst("PERF-04", Landing(SomePlans.Use(2679))).Verdict);
    }

    [Fact]
    public void A_wet_runway_is_held_against_the_manuals_own_wet_distance_too() =>
        Assert.Equal((Verdict.Fail, "CAT.POL.A.330(a)"), (Ask.Worst("PERF-04", Landing(Wet(2801)), rules: "eu-commercial").Verdict,
            Ask.Worst("PERF-04", Landing(Wet(2801)), rules: "eu-commercial").Citation));

    // AMC2 CAT.POL.A.305: more than 2 % wants demonstrated data.
    [Fact]
    public void A_steep_runway_wants_demonstrated_data()
    {
        LegPlan.Planned Slope(double percent) => Type(own => own with { TakeoffUpslopePerPercent = 0.05 },
            Takeoff(SomePlans.Use() with { Runway = SomePlans.Runway with { SlopePercent = percent } }));
        Ask.Boundary("PERF-06", Slope(2), Slope(2.01), null, Verdict.Caution);
        Ask.Boundary("PERF-06", Slope(-2), Slope(-2.01), null, Verdict.Caution);
    }

    [Fact]
    public void What_the_distance_does_not_hold_is_said()
    {
        var uphill = Takeoff(SomePlans.Use() with { Runway = SomePlans.Runway with { SlopePercent = 0.5 } });
        Ask.Boundary("PERF-06", Type(own => own with { TakeoffUpslopePerPercent = 0.05 }, uphill), uphill, null, Verdict.Caution);
        var tailwind = Landing(SomePlans.Use() with { Headwind = new Knots(-3) });
        Ask.Boundary("PERF-06", Type(own => own with { LandingTailwindPerKnot = 0.03 }, tailwind), tailwind, null, Verdict.Caution);
        var rain = Landing(Wet(2000));
        Ask.Boundary("PERF-06", Type(own => own with { LandingWet = 0.1 }, rain), rain, null, Verdict.Caution);
        Assert.Equal("3 kt of tailwind at XBEL runway 09, and the Types sheet gives no landing correction for a tailwind: the distance is without it.",
            Ask.Worst("PERF-06", tailwind).Text);
    }

    [Fact]
    public void Gravel_is_a_caution_and_an_unknown_surface_is_not_checked()
    {
        LegPlan.Planned Surface(RunwaySurface? surface) => Landing(SomePlans.Use() with { Runway = SomePlans.Runway with { Surface = surface } });
        Ask.Boundary("PERF-06", Surface(RunwaySurface.Paved), Surface(RunwaySurface.Gravel), Surface(null), Verdict.Caution);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("PERF-06", NoLanding).Verdict);
    }

    // What the passing answer says of the wind is what the factors of the distance hold.
    [Fact]
    public void The_passing_answer_says_how_much_of_the_wind_is_in_the_distance()
    {
        string Of(RunwayUse use) => Ask.All("PERF-06",
            Leg with
            {
                Type = Leg.Type with { Corrections = new RunwayCorrections { LandingTailwindPerKnot = 0.03 } },
                Arrival = new RunwayResult.Computed(use)
            })
            .Single(finding => finding.Verdict == Verdict.Pass && finding.Text.StartsWith("The landing distance", StringComparison.Ordinal)).Text;
        var eight = SomePlans.Use() with { Headwind = new Knots(8) };
        Assert.Equal("The landing distance at XBEL runway 09 holds half of its 8 kt of headwind, its slope and its surface.",
            Of(eight with { Factors = [new RunwayFactor("8 kt headwind, half credited", 0.96)] }));
        Assert.Equal("The landing distance at XBEL runway 09 holds none of its headwind (the wind is known from aloft alone), its slope and its surface.",
            Of(eight with { IsWindFromAloft = true }));
        Assert.StartsWith("The landing distance at XBEL runway 09 holds none of its headwind (the Types sheet gives no correction", Of(eight),
            StringComparison.Ordinal);
        Assert.StartsWith("The landing distance at XBEL runway 09 holds one and a half times its 3 kt of tailwind",
            Of(SomePlans.Use() with { Headwind = new Knots(-3) }), StringComparison.Ordinal);
        Assert.StartsWith("The landing distance at XBEL runway 09 holds its wind (none along the runway)", Of(SomePlans.Use()), StringComparison.Ordinal);
    }
}
