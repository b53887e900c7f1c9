using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Runways;

public sealed class RunwayChecksTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned Takeoff(RunwayUse use) => Leg with { Departure = new RunwayResult.Computed(use) };

    private static LegPlan.Planned Landing(RunwayUse use) => Leg with { Arrival = new RunwayResult.Computed(use) };

    private static LegPlan.Planned NoTakeoff { get; } = Leg with { Departure = new RunwayResult.NotComputed("Skua 9 has no Takeoff table") };

    private static LegPlan.Planned NoLanding { get; } = Leg with { Arrival = new RunwayResult.NotComputed("Skua 9 has no Landing table") };

    [Fact]
    public void Takeoff_distance_fits_the_distance_available()
    {
        Ask.Boundary("PERF-01", Takeoff(SomePlans.Use(4000)), Takeoff(SomePlans.Use(4001)), NoTakeoff);
        Assert.Contains("Skua 9 has no Takeoff table", Ask.Worst("PERF-01", NoTakeoff).Text, StringComparison.Ordinal);
        Assert.Equal("Takeoff distance on XAND 09 4,120 ft is 120 ft over the takeoff distance available 4,000 ft.", Ask.Worst("PERF-01", Takeoff(SomePlans.Use(4120))).Text);
    }

    // CAT.POL.A.305(b): 1.25 times the takeoff distance within the takeoff run available; seen in a copy only, so a caution even where it is a duty.
    [Theory]
    [InlineData("us-charter")]
    [InlineData("eu-commercial")]
    public void Takeoff_with_a_margin_of_a_quarter(string rules) => Ask.Boundary("PERF-02", Takeoff(SomePlans.Use(3200)), Takeoff(SomePlans.Use(3201)), NoTakeoff, Verdict.Caution, rules);

    // With clearway and stopway: 1.0 within the run, 1.15 within the distance, 1.3 within the accelerate-stop distance.
    [Theory]
    [InlineData(4000, 4600, 5200, 4000)]
    [InlineData(3900, 4600, 5200, 3900)]
    [InlineData(4000, 4485, 5200, 3900)]
    [InlineData(4000, 4600, 5070, 3900)]
    public void Takeoff_with_clearway_and_stopway(double run, double distance, double stop, double fits)
    {
        RunwayUse Use(double corrected) => SomePlans.Use(corrected) with
        {
            Runway = SomePlans.Runway with { TakeoffRun = new Feet(run), TakeoffDistance = new Feet(distance), AccelerateStop = new Feet(stop) },
            Available = new Feet(distance),
        };
        Ask.Boundary("PERF-02", Takeoff(Use(fits)), Takeoff(Use(fits + 1)), null, Verdict.Caution);
    }

    [Fact]
    public void Landing_distance_fits_the_distance_available() => Ask.Boundary("PERF-03", Landing(SomePlans.Use(4000)), Landing(SomePlans.Use(4001)), NoLanding);

    // CAT.POL.A.330(a): within 70 % of the landing distance available; a duty in Europe, a margin in the United States.
    [Theory]
    [InlineData("us-charter", Verdict.Caution)]
    [InlineData("eu-commercial", Verdict.Fail)]
    public void Landing_within_seven_tenths(string rules, Verdict expected) => Ask.Boundary("PERF-04", Landing(SomePlans.Use(2800)), Landing(SomePlans.Use(2801)), NoLanding, expected, rules);

    // 14 CFR 135.385(b): 60 %, where the type has ten seats or more.
    [Fact]
    public void Landing_within_six_tenths_for_ten_seats()
    {
        LegPlan.Planned Ten(double feet) => Landing(SomePlans.Use(feet)) with { Type = Leg.Type with { Seats = 10 } };
        Ask.Boundary("PERF-04", Ten(2400), Ten(2401), null, Verdict.Caution);
    }

    [Fact]
    public void Wind_components_against_the_limits()
    {
        LegPlan.Planned Wind(double head, double cross) => Takeoff(SomePlans.Use() with { Headwind = new Knots(head), Crosswind = new Knots(cross) });
        Ask.Boundary("PERF-07", Wind(5, 15), Wind(5, 16), NoTakeoff, Verdict.Caution);
        Ask.Boundary("PERF-07", Wind(5, -15), Wind(5, -16), null, Verdict.Caution);
        Ask.Boundary("PERF-07", Wind(-10, 0), Wind(-11, 0), null, Verdict.Caution);
        Assert.Equal(Verdict.Caution, Ask.Worst("PERF-07", Landing(SomePlans.Use() with { Headwind = new Knots(-11) })).Verdict);
    }

    // 14 CFR 135.229(b): passengers at night.
    [Fact]
    public void Passengers_at_night_need_lights()
    {
        var night = Leg with { Daylight = Leg.Daylight with { IsNightLanding = true } };
        RunwayResult Lit(bool? lighted) => new RunwayResult.Computed(SomePlans.Use() with { Runway = SomePlans.Runway with { Lighted = lighted } });
        Ask.Boundary("PERF-08", night, night with { Arrival = Lit(false) }, night with { Arrival = Lit(null), To = night.To with { Lighting = "" } });
        Assert.Equal(Verdict.Fail, Ask.Worst("PERF-08", night with { To = night.To with { Lighting = "none" } }).Verdict);
        Assert.Equal(Verdict.Note, Ask.Worst("PERF-08", night with { To = night.To with { Lighting = "On request" } }).Verdict);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("PERF-08", Leg).Verdict);
        Assert.Equal(Verdict.Caution, Ask.Worst("PERF-08", night with { Arrival = Lit(false), Purpose = LegPurpose.Ferry }).Verdict);
        var outage = new Notice { Subject = "XBEL", Effect = NoticeEffect.NoLights };
        Assert.Equal(Verdict.Fail, Ask.Worst("PERF-08", night, week => week.With(outage)).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("PERF-08", night, week => week.With(outage with { Subject = "XBEL 09" })).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("PERF-08", night, week => week.With(outage with { To = night.Times.Landing })).Verdict);
    }
}
