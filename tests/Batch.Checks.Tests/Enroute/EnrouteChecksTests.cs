using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Flight.Route;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Checks.Tests.Enroute;

public sealed class EnrouteChecksTests
{
    // XAND 41 N 040 W to XBEL 41 N 036 W, some 181 NM, cruise between 30 and 151 NM.
    private static LegPlan.Planned Leg { get; } = SomePlans.Planned();

    private static LegPlan.Planned At(double level, LegPlan.Planned? plan = null) => (plan ?? Leg) with { Profile = SomePlans.Profile(Leg.Route, level) };

    private static LegPlan.Planned Minimum(double? feet) => Leg with { Route = SomePlans.Direct(Leg.From, Leg.To, feet) };

    private static PlannedWeek Land(PlannedWeek week, params LandRing[] land) => week with { Input = week.Input with { Land = [.. land] } };

    // 14 CFR 91.177 under IFR.
    [Fact]
    public void The_cruise_keeps_the_minimum_altitude()
    {
        Ask.Boundary("ENR-03", Minimum(15_000), Minimum(15_001), Minimum(null));
        Assert.Equal("The level from XAND to XBEL is 15,000 ft, 2,000 ft short of the 17,000 ft minimum altitude (altitude grid).",
            Ask.Worst("ENR-03", Minimum(17_000)).Text);
        var visual = Minimum(15_001) with { Rules = FlightRules.Vfr };
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ENR-03", visual).Verdict);
        Assert.Equal(Verdict.Caution, Ask.Worst("ENR-03", visual with { Daylight = visual.Daylight with { Night = Duration.FromMinutes(1) } }).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-03", Minimum(15_000) with { Rules = FlightRules.Vfr }).Verdict);
    }

    // A cruise that is flown at 15,000 ft and at 17,000 ft is said with both.
    [Fact]
    public void The_levels_that_are_flown_are_said()
    {
        var leg = Minimum(9000);
        var cruise = leg.Profile.Slices.First(slice => slice.Phase == FlightPhase.Cruise);
        var step = leg with { Profile = leg.Profile with { Slices = [.. leg.Profile.Slices, cruise with { StartFt = 17_000, EndFt = 17_000 }] } };
        Assert.Equal("The cruise at 15,000 ft to 17,000 ft is at or above the minimum altitude of every stretch.", Ask.Worst("ENR-03", step).Text);
        Assert.Equal("The cruise at 15,000 ft is at or above the minimum altitude of every stretch.", Ask.Worst("ENR-03", leg).Text);
    }

    [Fact]
    public void The_level_is_at_most_the_ceiling_of_type_and_aircraft()
    {
        LegPlan.Planned Ceiling(double? type, double? own) => At(15_000) with
        {
            Type = Leg.Type with { Ceiling = type is { } a ? new Feet(a) : null },
            Aircraft = Leg.Aircraft with { Ceiling = own is { } b ? new Feet(b) : null },
        };
        Ask.Boundary("ENR-08", Ceiling(15_000, null), Ceiling(14_999, null), Ceiling(null, null));
        Ask.Boundary("ENR-08", Ceiling(30_000, 15_000), Ceiling(30_000, 14_999), null);
    }

    // 14 CFR 91.180(a): nobody without authorization in such airspace; part 91 appendix G, section 1: FL290 to FL410, both included.
    [Fact]
    public void Reduced_vertical_separation_wants_the_letter_w()
    {
        LegPlan.Planned Equipped(string equipment, double level = 29_000) =>
            At(level, Leg with { Type = Leg.Type with { Equipment = equipment, Ceiling = new Feet(45_000) } });
        Ask.Boundary("ENR-08", Equipped("SDGRW/LB1"), Equipped("SDGR/LB1W"), Equipped(""));
        Assert.False(Ask.Worst("ENR-08", Equipped("SDGR/LB1")).IsBasisUnconfirmed);
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-08", Equipped("", 28_999)).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("ENR-08", Equipped("S/L", 41_000)).Verdict);
        // The European rule is from memory in its file.
        Assert.Equal(Verdict.Caution, Ask.Worst("ENR-08", Equipped("S/L", 41_000), rules: "eu-commercial").Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-08", Equipped("S/L", 41_001)).Verdict);
    }

    // 14 CFR 91.179, 91.159: eastbound odd, westbound even, 500 ft more under VFR.
    [Theory]
    [InlineData(15_000, FlightRules.Ifr, Verdict.Pass)]
    [InlineData(16_000, FlightRules.Ifr, Verdict.Caution)]
    [InlineData(15_500, FlightRules.Ifr, Verdict.Caution)]
    [InlineData(15_500, FlightRules.Vfr, Verdict.Pass)]
    [InlineData(14_500, FlightRules.Vfr, Verdict.Caution)]
    [InlineData(2_900, FlightRules.Vfr, Verdict.Pass)]
    [InlineData(18_500, FlightRules.Vfr, Verdict.NotApplicable)]
    public void The_level_suits_the_direction(double level, FlightRules rules, Verdict expected) =>
        Assert.Equal(expected, Ask.Worst("ENR-09", At(level) with { Rules = rules }).Verdict);

    // Land 20 NM south of the track for all its length; 20 NM of reach at 13.5 to 1 and 500 ft left take 20 x 6076.1155 / 13.5 + 500 = 9,501.7 ft.
    [Fact]
    public void Land_is_in_gliding_reach()
    {
        // Coasts 18 NM wide at both ends, so that climb and descent stay in reach.
        PlannedWeek South(PlannedWeek week, double nm) =>
            Land(week, Along(nm), SomePlans.Square("west", 40, 42, -41, -39.6), SomePlans.Square("east", 40, 42, -36.4, -35));
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-01", At(10_000), week => South(week, 20)).Verdict);
        var finding = Ask.Worst("ENR-01", At(9_000), week => South(week, 20));
        Assert.Equal((Verdict.Fail, "NM", "14 CFR 135.183(a)"), (finding.Verdict, finding.Unit, finding.Citation));
        Assert.InRange(finding.Required ?? 0, 19.7, 20.3);
        Assert.InRange(finding.Actual ?? 0, 18.88, 18.89); // (9,000 - 500) / 6,076.1155 x 13.5
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-01", At(9_000), week => South(week, 18)).Verdict);
    }

    [Fact]
    public void Glide_needs_land_and_a_ratio()
    {
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ENR-01", Leg, week => Land(week)).Verdict);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ENR-01", Leg).Verdict);
        PlannedWeek Far(PlannedWeek week) => Land(week, SomePlans.Square("far", 30, 31, -41, -35));
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ENR-01", Leg with { Type = Leg.Type with { GlideRatio = null } }, Far).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("ENR-01", Leg, Far).Verdict);
        var twin = Ask.Worst("ENR-01", Leg with { Type = Leg.Type with { Engines = 2 } }, Far);
        Assert.Equal((Verdict.Note, "14 CFR 135.183(c)"), (twin.Verdict, twin.Citation));
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ENR-01", Leg with { Purpose = LegPurpose.Ferry }, Far).Verdict);
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ENR-01", Leg with { Load = Leg.Load with { Passengers = 0 } }, Far).Verdict);
    }

    // 14 CFR 135.167 beyond 50 NM from the shore (14 CFR 1.1), 91.205(b)(12) beyond gliding reach.
    [Fact]
    public void Overwater_kit()
    {
        LegPlan.Planned Kit(string kit) => Leg with { Aircraft = Leg.Aircraft with { OverwaterKit = kit } };
        PlannedWeek Far(PlannedWeek week) => Land(week, Along(55));
        PlannedWeek Near(PlannedWeek week) => Land(week, Along(45));
        PlannedWeek Close(PlannedWeek week) => Land(week, Along(0.5));
        Ask.Boundary("ENR-02", Kit("rafts"), Kit("vests"), Kit(""), change: Far);
        Ask.Boundary("ENR-02", Kit("vests"), Kit("none"), Kit(""), change: Near);
        Assert.Equal(Verdict.NotChecked, Ask.Worst("ENR-02", Leg, week => Land(week)).Verdict);
        Assert.Equal(Verdict.Fail, Ask.Worst("ENR-02", Kit("none"), Close).Verdict); // on the runway at elevation 0 nothing glides
        Assert.Equal(Verdict.NotApplicable, Ask.Worst("ENR-02", Kit("none")).Verdict);
    }

    // The same 50 NM where the way leads from one shore straight to another: half way between them, wherever that is.
    [Theory]
    [InlineData(100.2, Verdict.Fail)]
    [InlineData(99.8, Verdict.Pass)]
    public void The_point_farthest_from_two_shores_is_found_wherever_it_lies(double apartNm, Verdict expected)
    {
        var vests = Leg with { Aircraft = Leg.Aircraft with { OverwaterKit = "vests" } };
        for (var shiftNm = 0.0; shiftNm < 4; shiftNm += 0.15)
        {
            var middle = Leg.Route.Segments[0].Path.At((Leg.Route.Length.Value / 2) + shiftNm).Point;
            var halfDeg = apartNm / 2 / 60 / Math.Cos(double.DegreesToRadians(middle.LatitudeDeg));
            var answer = Ask.Worst("ENR-02", vests, week => Land(week,
                SomePlans.Square("west", 30, 50, -50, middle.LongitudeDeg - halfDeg), SomePlans.Square("east", 30, 50, middle.LongitudeDeg + halfDeg, -25)));
            Assert.True(answer.Verdict == expected, FormattableString.Invariant($"shifted by {shiftNm:0.00} NM: {answer.Verdict}, {answer.Text}"));
        }
    }

    // 14 CFR 135.89(a), 135.157(a): not pressurised, two thirds of an hour of cruise and a sixth of climb and of descent.
    [Fact]
    public void Oxygen_without_pressure()
    {
        LegPlan.Planned Supply(double? minutes, double level) => At(level, Leg with
        {
            Type = Leg.Type with { Pressurised = false },
            Aircraft = Leg.Aircraft with { Oxygen = minutes is { } supply ? Duration.FromMinutes(supply) : null },
        });

        // 12,000 ft: above 10,000 ft for 40 + 2 x 10/6 minutes, 13 1/3 beyond 30 for the pilot and for one of two passengers: 26 2/3 person-minutes for three
        // persons.
        Ask.Boundary("ENR-05", Supply(8.89, 12_000), Supply(8.88, 12_000), Supply(null, 12_000));

        // 10,000 ft ask for nothing.
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-05", Supply(null, 10_000)).Verdict);

        // 15,000 ft: pilot 30 minutes less of (4 min in the band) and 44 min above 12,000 ft; one passenger for 46 2/3 - 30 minutes: (44 + 16 2/3) / 3 = 20.2
        // minutes.
        Ask.Boundary("ENR-05", Supply(20.23, 15_000), Supply(20.22, 15_000), Supply(null, 15_000));
        Assert.Contains("14 CFR 135.89(a), 135.157(a)", Ask.Worst("ENR-05", Supply(1, 15_000)).Citation, StringComparison.Ordinal);
    }

    // 14 CFR 135.157(b)(2): two hours for the pilot and one for each of two passengers: 240 / 3 minutes for all.
    [Fact]
    public void Oxygen_should_the_cabin_fail()
    {
        LegPlan.Planned Supply(double? minutes, double level = 17_000) =>
            At(level, Leg with { Aircraft = Leg.Aircraft with { Oxygen = minutes is { } supply ? Duration.FromMinutes(supply) : null } });
        Ask.Boundary("ENR-05", Supply(80), Supply(79.9), Supply(null));
        Assert.Equal("14 CFR 135.157(b)(2)", Ask.Worst("ENR-05", Supply(79.9)).Citation);
        Assert.Equal("14 CFR 135.157(b)(2)", Ask.Worst("ENR-05", Supply(null)).Citation);
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-05", Supply(null, 10_000)).Verdict);
    }

    // 14 CFR 135.89(b)(2): above 25,000 ft through 35,000 ft a mask is worn, unless each pilot has a quick-donning one; (b)(3): above 35,000 ft always.
    [Fact]
    public void High_up_a_pilot_wears_a_mask()
    {
        LegPlan.Planned With(bool? masks, double level) => At(level, Leg with { Aircraft = Leg.Aircraft with { QuickDonningMasks = masks } });
        Ask.Boundary("ENR-05", With(true, 25_001), With(false, 25_001), With(null, 25_001), Verdict.Caution);
        Assert.Equal("14 CFR 135.89(b)(2)(i)", Ask.Worst("ENR-05", With(false, 25_001)).Citation);
        Assert.Equal("14 CFR 135.89(b)(2)(i)", Ask.Worst("ENR-05", With(null, 25_001)).Citation);
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-05", With(null, 25_000)).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-05", With(true, 35_000)).Verdict);
        Assert.Equal((Verdict.Note, "14 CFR 135.89(b)(3)"),
            (Ask.Worst("ENR-05", With(true, 35_001)).Verdict, Ask.Worst("ENR-05", With(true, 35_001)).Citation));
    }

    // A leg that begins at 24,000 ft and steps up to 31,000 ft is flown at 31,000 ft: masks, ceiling (30,000 ft) and reduced separation go by that.
    [Fact]
    public void A_step_to_a_higher_level_counts()
    {
        var leg = At(24_000, Leg with { Aircraft = Leg.Aircraft with { QuickDonningMasks = false, Oxygen = Duration.FromHours(9) } });
        var slices = leg.Profile.Slices;
        var step = leg with
        {
            Profile = leg.Profile with
            {
                Slices = [slices[0],
            .. slices[1..].Select(slice => slice.Phase == FlightPhase.Cruise ? slice with { StartFt = 31_000, EndFt = 31_000 } : slice)]
            }
        };
        Assert.Equal("14 CFR 135.89(b)(2)(i)", Ask.Worst("ENR-05", step).Citation);
        Assert.Contains("31,000 ft", Ask.Worst("ENR-05", step).Text, StringComparison.Ordinal);
        Assert.Equal((Verdict.Fail, -1000.0), (Ask.Worst("ENR-08", step).Verdict, Ask.Worst("ENR-08", step).Margin));
    }

    // 14 CFR 91.179(b): eastbound odd thousands. A leg that begins at 15,000 ft and steps up to 16,000 ft does not keep to them, whatever its first level is;
    // begun at 14,000 ft and cruised at 15,000 ft it does.
    [Fact]
    public void A_step_suits_the_direction_by_the_level_that_is_flown()
    {
        LegPlan.Planned Cruising(double first, double flown) => At(flown) is var leg
            ? leg with { Profile = leg.Profile with { Level = new Feet(first) } }
            : null!;
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-09", Cruising(15_000, 15_000)).Verdict);
        var wrong = Ask.Worst("ENR-09", Cruising(15_000, 16_000));
        Assert.NotEqual(Verdict.Pass, wrong.Verdict);
        Assert.StartsWith("16,000 ft does not suit the magnetic course", wrong.Text, StringComparison.Ordinal);
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-09", Cruising(14_000, 15_000)).Verdict);
    }

    // 14 CFR 91.211(b)(1)(ii): above flight level 350, unless at or below 410 two pilots are at the controls, each with a quick-donning mask.
    [Fact]
    public void High_up_off_charter_two_pilots_with_quick_masks_need_not_wear_them()
    {
        LegPlan.Planned With(bool? masks, double level, int pilots = 2) => At(level,
            Leg with { Purpose = LegPurpose.Ferry, Aircraft = Leg.Aircraft with { QuickDonningMasks = masks }, Load = Leg.Load with { Pilots = pilots } });
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-05", With(null, 35_000)).Verdict);
        Ask.Boundary("ENR-05", With(true, 35_001), With(false, 35_001), With(null, 35_001), Verdict.Caution);
        Assert.Equal(Verdict.Caution, Ask.Worst("ENR-05", With(true, 35_001, pilots: 1)).Verdict);
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-05", With(true, 41_000)).Verdict);
        Assert.Equal((Verdict.Note, "14 CFR 91.211(b)(1)(ii)"),
            (Ask.Worst("ENR-05", With(true, 41_001)).Verdict, Ask.Worst("ENR-05", With(true, 41_001)).Citation));
    }

    // 14 CFR 91.211(b): above 25,000 ft ten minutes for everybody.
    [Fact]
    public void Oxygen_off_charter()
    {
        LegPlan.Planned Supply(double? minutes, double level) => At(level,
            Leg with { Purpose = LegPurpose.Ferry, Aircraft = Leg.Aircraft with { Oxygen = minutes is { } supply ? Duration.FromMinutes(supply) : null } });
        Ask.Boundary("ENR-05", Supply(10, 25_001), Supply(9.9, 25_001), Supply(null, 25_001));
        Assert.Equal(Verdict.Pass, Ask.Worst("ENR-05", Supply(null, 25_000)).Verdict);
    }

    [Fact]
    public void Ice_wants_protection()
    {
        LegPlan.Planned Protected(bool? has, double celsius = -15) => Leg with
        {
            Aircraft = Leg.Aircraft with { IcingProtection = has },
            Profile = Leg.Profile with
            {
                Slices =
                [.. Leg.Profile.Slices.Select(slice => slice with { Air = slice.Air with { Temperature = new Celsius(celsius) } })]
            },
        };
        Ask.Boundary("ENR-06", Protected(true), Protected(false), Protected(null), Verdict.Caution);
        Ask.Boundary("ENR-06", Protected(false, 1), Protected(false, 0), null, Verdict.Caution);
        Ask.Boundary("ENR-06", Protected(false, -21), Protected(false, -20), null, Verdict.Caution);
        // Part 135 is asked of a charter; under VFR it speaks of known icing, which no book holds.
        Assert.Equal("14 CFR 135.227(c)", Ask.Worst("ENR-06", Protected(false)).Citation);
        Assert.Equal("flight manual, operation in icing", Ask.Worst("ENR-06", Protected(false) with { Purpose = LegPurpose.Ferry }).Citation);
        var visual = Ask.Worst("ENR-06", Protected(false) with { Rules = FlightRules.Vfr });
        Assert.Equal((Verdict.NotApplicable, "14 CFR 135.227(a) to (c)"), (visual.Verdict, visual.Citation));
        Assert.StartsWith("Under VFR only icing that is known", visual.Text, StringComparison.Ordinal);
    }

    /// <summary>Land a distance south of the track for all its length: the track's own points moved south, closed far in the south.</summary>
    private static LandRing Along(double nm)
    {
        var path = Leg.Route.Segments[0].Path;
        var north = Enumerable.Range(-20, 141).Select(part => path.At(part / 100.0 * Leg.Route.Length.Value).Point)
            .Select(point => new GeoPoint(point.LatitudeDeg - (nm / 60), point.LongitudeDeg));
        return new LandRing("south", 1, [.. north, new GeoPoint(30, -35), new GeoPoint(30, -41)]);
    }
}
