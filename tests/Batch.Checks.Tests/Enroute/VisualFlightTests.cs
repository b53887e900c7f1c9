using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Enroute;

public sealed class VisualFlightTests
{
    private const double ThreeMiles = 3 * 1609.344;
    private const double TwoMiles = 2 * 1609.344;
    private const double OneMile = 1609.344;

    private static LegPlan.Planned Leg { get; } = SomePlans.Planned() with { Rules = FlightRules.Vfr };

    private static LegPlan.Planned In(string airspace, LegPlan.Planned? plan = null) => (plan ?? Leg) with { To = Leg.To with { Airspace = airspace } };

    private static Finding At(string check, double? ceiling, double visibility, LegPlan.Planned? plan = null, string rules = "us-charter") =>
        Ask.Worst(check, plan ?? Leg, rules: rules, forecasts: Ask.Fair("XAND").And(Ask.Forecast("XBEL", ceiling, visibility)));

    // 14 CFR 91.155(c): a ceiling of less than 1,000 ft; (d): ground visibility of at least 3 statute miles.
    [Theory]
    [InlineData("us-charter")]
    [InlineData("us-general")]
    public void A_thousand_feet_and_three_miles_in_controlled_airspace(string rules)
    {
        Assert.Equal(Verdict.Pass, At("ENR-07", 1000, ThreeMiles, rules: rules).Verdict);
        Assert.Equal((Verdict.Fail, "14 CFR 91.155(c)"),
            (At("ENR-07", 999, ThreeMiles, rules: rules).Verdict, At("ENR-07", 999, ThreeMiles, rules: rules).Citation));
        Assert.Equal((Verdict.Fail, "14 CFR 91.155(a),(d)"),
            (At("ENR-07", 1000, ThreeMiles - 1, rules: rules).Verdict, At("ENR-07", 1000, ThreeMiles - 1, rules: rules).Citation));
    }

    // 14 CFR 135.205(a): uncontrolled airspace, a ceiling of less than 1,000 ft: 2 miles; 14 CFR 91.155(a): by day 1, by night 3.
    [Fact]
    public void Outside_controlled_airspace_less_is_enough()
    {
        Assert.Equal(Verdict.Pass, At("ENR-07", 999, TwoMiles, In("G")).Verdict);
        Assert.Equal((Verdict.Fail, "14 CFR 135.205"), (At("ENR-07", 999, TwoMiles - 1, In("G")).Verdict, At("ENR-07", 999, TwoMiles - 1, In("G")).Citation));
        Assert.Equal(Verdict.Pass, At("ENR-07", 999, OneMile, In("G", Leg with { Purpose = LegPurpose.Ferry })).Verdict);
        Assert.Equal(Verdict.Pass, At("ENR-07", 1000, OneMile, In("G")).Verdict);
        Assert.Equal(Verdict.Fail, At("ENR-07", 1000, OneMile - 1, In("G")).Verdict);
        var night = In("G", Leg with { Daylight = Leg.Daylight with { IsNightLanding = true } });
        Assert.Equal(Verdict.Pass, At("ENR-07", 999, ThreeMiles, night).Verdict);
        Assert.Equal(Verdict.Fail, At("ENR-07", 1000, ThreeMiles - 1, night).Verdict);
    }

    [Fact]
    public void Without_the_class_of_the_airspace_only_the_clear_cases_are_answered()
    {
        Assert.Equal(Verdict.Pass, At("ENR-07", 1000, ThreeMiles, In("")).Verdict);
        Assert.Equal(Verdict.NotChecked, At("ENR-07", 999, TwoMiles, In("")).Verdict);
        Assert.Equal(Verdict.Fail, At("ENR-07", 999, TwoMiles - 1, In("")).Verdict);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ENR-07", Leg).Verdict);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ENR-07", Leg with { Rules = FlightRules.Ifr }).Verdict);
    }

    // From memory: SERA.5005(b), 1,500 ft and 5 km; a caution only.
    [Fact]
    public void European_minima_are_from_memory_and_a_caution()
    {
        Assert.Equal(Verdict.Pass, At("ENR-07", 1500, 5000, rules: "eu-commercial").Verdict);
        var low = At("ENR-07", 1499, 5000, rules: "eu-commercial");
        Assert.Equal((Verdict.Caution, true), (low.Verdict, low.IsBasisUnconfirmed));
        Assert.Equal(Verdict.Caution, At("ENR-07", 1500, 4999, rules: "eu-commercial").Verdict);
    }

    // 14 CFR 135.181 and 135.211. The cruise is at 15,000 ft; XBEL is at its own elevation.
    [Fact]
    public void Above_a_ceiling_the_weather_under_it_decides()
    {
        var over = 15_000 - Leg.To.Elevation.Value;
        Assert.Equal(Verdict.Pass, At("ENR-04", over, 10_000).Verdict);
        Assert.Equal((Verdict.Caution, "14 CFR 135.181(d)(2); 14 CFR 135.211"),
            (At("ENR-04", over - 1, 10_000).Verdict, At("ENR-04", over - 1, 10_000).Citation));
        Assert.Equal(Verdict.Caution, At("ENR-04", 1000, ThreeMiles).Verdict);
        Assert.Equal((Verdict.Fail, "14 CFR 135.181(a)(1),(c); 14 CFR 135.211(a)"),
            (At("ENR-04", 999, ThreeMiles).Verdict, At("ENR-04", 999, ThreeMiles).Citation));
        Assert.Equal(Verdict.Fail, At("ENR-04", 1000, ThreeMiles - 1).Verdict);
        Assert.Equal("14 CFR 135.211(a)", At("ENR-04", 999, ThreeMiles, Leg with { Type = Leg.Type with { Engines = 2 } }).Citation);
    }

    // A route that begins at 2,500 ft and steps up to 15,000 ft is over the ceiling at 3,000 ft, whatever its first level is.
    [Fact]
    public void A_step_above_the_ceiling_counts()
    {
        var step = Leg with { Profile = Leg.Profile with { Level = new Feet(2500) } };
        var finding = At("ENR-04", 3000, 10_000, step);
        Assert.Equal(Verdict.Caution, finding.Verdict);
        Assert.Contains("The cruise at 15,000 ft", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Over_the_top_is_asked_of_passengers_for_hire_under_VFR_only()
    {
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ENR-04", Leg).Verdict);
        Assert.Equal(Verdict.NotApplicable, At("ENR-04", 500, 1000, Leg with { Load = Leg.Load with { Passengers = 0 } }).Verdict);
        Assert.Equal(Verdict.NotApplicable, At("ENR-04", 500, 1000, Leg with { Rules = FlightRules.Ifr }).Verdict);
    }
}
