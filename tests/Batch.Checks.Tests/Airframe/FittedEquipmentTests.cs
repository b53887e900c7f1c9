using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Airframe;

public sealed class FittedEquipmentTests
{
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned With(Func<Aircraft, Aircraft> change, LegPlan.Planned? plan = null) =>
        (plan ?? Leg) with { Aircraft = change(Leg.Aircraft) };

    // 14 CFR 91.205(d) and 135.163: under IFR.
    [Fact]
    public void Equipment_for_IFR()
    {
        Ask.Boundary("ACFT-04", With(one => one with { InstrumentEquipment = true }), With(one => one with { InstrumentEquipment = false }),
            With(one => one with { InstrumentEquipment = null }));
        Assert.Equal(Verdict.Pass, Ask.Worst("ACFT-04", With(one => one with { InstrumentEquipment = false }, Leg with { Rules = FlightRules.Vfr })).Verdict);
    }

    // 14 CFR 91.205(c): at night.
    [Fact]
    public void Equipment_for_the_night()
    {
        var night = Leg with { Daylight = Leg.Daylight with { Night = Duration.FromMinutes(1) } };
        Ask.Boundary("ACFT-04", With(one => one with { NightEquipment = false }), With(one => one with { NightEquipment = false }, night),
            With(one => one with { NightEquipment = null }, night));
    }

    // 14 CFR 135.163(f),(h) and 135.421(c)-(e): one engine, passengers, IFR.
    [Fact]
    public void One_engine_with_passengers_under_IFR()
    {
        Ask.Boundary("ACFT-04", With(one => one with { SecondPowerSource = true }), With(one => one with { SecondPowerSource = false }),
            With(one => one with { SecondPowerSource = null }));
        Ask.Boundary("ACFT-04", With(one => one with { TrendMonitoring = true }), With(one => one with { TrendMonitoring = false }),
            With(one => one with { TrendMonitoring = null }));
        Assert.Equal(Verdict.Pass,
            Ask.Worst("ACFT-04", With(one => one with { SecondPowerSource = false }) with { Type = Leg.Type with { Engines = 2 } }).Verdict);
        Assert.Equal(Verdict.Pass,
            Ask.Worst("ACFT-04", With(one => one with { SecondPowerSource = false }) with { Load = Leg.Load with { Passengers = 0 } }).Verdict);
    }

    // 14 CFR 91.205(e): at and above 24,000 ft, where VOR is used, distance measuring or area navigation.
    [Theory]
    [InlineData("us-charter")]
    [InlineData("us-general")]
    public void From_24_000_feet_distance_measuring(string rules)
    {
        LegPlan.Planned At(string equipment, double level = 24_000) =>
            Leg with { Type = Leg.Type with { Equipment = equipment }, Profile = SomePlans.Profile(Leg.Route, level) };
        Ask.Boundary("ACFT-04", At("SD/LB1"), At("S/LB1"), At(""), rules: rules);
        Assert.Equal("14 CFR 91.205(e)", Ask.Worst("ACFT-04", At("S/LB1"), rules: rules).Citation);
        Assert.Equal(Verdict.Pass, Ask.Worst("ACFT-04", At("S/LB1", 23_999), rules: rules).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("ACFT-04", At("SG/LB1"), rules: rules).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("ACFT-04", At("VG/LB1"), rules: rules).Verdict);
    }

    // 14 CFR 135.154: turbine, six to nine seats class B, ten or more class A.
    [Theory]
    [InlineData(5, "none", Verdict.Pass)]
    [InlineData(6, "none", Verdict.Fail)]
    [InlineData(6, "B", Verdict.Pass)]
    [InlineData(9, "A", Verdict.Pass)]
    [InlineData(10, "B", Verdict.Fail)]
    [InlineData(10, "A", Verdict.Pass)]
    [InlineData(6, "", Verdict.NotChecked)]
    public void Terrain_warning(int seats, string has, Verdict expected) =>
        Assert.Equal(expected, Ask.Worst("ACFT-04", With(one => one with { TerrainWarning = has }) with { Type = Leg.Type with { Seats = seats } }).Verdict);

    [Fact]
    public void A_piston_aircraft_needs_no_terrain_warning() =>
        Assert.Equal(Verdict.Pass,
            Ask.Worst("ACFT-04", With(one => one with { TerrainWarning = "none" }) with { Type = Leg.Type with { Engine = EngineKind.Piston } }).Verdict);
}
