using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Flight.Route;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

public sealed partial class ProfileFlyerTests
{
    [Fact]
    public void Still_air_is_as_reckoned_by_hand()
    {
        // Plank 1 from sea level to sea level at 10,000 ft over 200 NM on the equator, no wind.
        // Climb    10 x (2 min, 10 lb, 4 NM) = 20 min, 100 lb, 40 NM
        // Descent  10 x (1 min,  3 lb, 4 NM) = 10 min,  30 lb, 40 NM
        // Cruise   200 - 40 - 40 = 120 NM at 200 kt = 36 min; 0.6 h x 400 lb/h = 240 lb
        // Together 66 min, 370 lb; top of climb 40 NM after 20 min, top of descent 160 NM after 56 min.
        var profile = Flown(Plain(EquatorRoute(200)));
        Assert.Equal(66, profile.Time.TotalMinutes, 1e-6);
        Assert.Equal(370, profile.TripFuel.Value, 1e-6);
        Assert.Equal(200, profile.Distance.Value, 1e-6);
        Assert.Equal(200, profile.AirDistance.Value, 1e-6);
        Assert.Equal(40, profile.TopOfClimb.Distance.Value, 1e-6);
        Assert.Equal(20, profile.TopOfClimb.Elapsed.TotalMinutes, 1e-6);
        Assert.Equal(160, profile.TopOfDescent.Distance.Value, 1e-6);
        Assert.Equal(56, profile.TopOfDescent.Elapsed.TotalMinutes, 1e-6);
        Assert.Equal(400, profile.CruiseFlow.Value, 1e-9);
        // 10 slices up, 10 down; 60 NM of cruise on each side of the middle point in steps of 25 NM.
        Assert.Equal((10, 6, 10), (Count(profile, FlightPhase.Climb), Count(profile, FlightPhase.Cruise), Count(profile, FlightPhase.Descent)));
    }

    [Fact]
    public void A_headwind_is_as_reckoned_by_hand()
    {
        // The same, 20 kt on the nose: flying east along the equator, wind from 090.
        // Climb    20 min, 100 lb at 120 - 20 = 100 kt: 33.333 NM
        // Descent  10 min,  30 lb at 240 - 20 = 220 kt: 36.667 NM
        // Cruise   130 NM at 180 kt = 43.333 min, 288.889 lb
        var profile = Flown(Plain(EquatorRoute(200)) with { Air = Some.SteadyWind(90, 20) });
        Assert.Equal(20 + 10 + 130 / 3.0, profile.Time.TotalMinutes, 1e-4);
        Assert.Equal(130 + 130 / 180.0 * 400, profile.TripFuel.Value, 1e-3);
        Assert.Equal(100 / 3.0, profile.TopOfClimb.Distance.Value, 1e-4);
        Assert.Equal(200 - 220 / 6.0, profile.TopOfDescent.Distance.Value, 1e-4);
        // Air distance: 40 + 40 + 43.333 min x 200 kt.
        Assert.Equal(80 + 130 / 180.0 * 200, profile.AirDistance.Value, 1e-3);
    }

    [Fact]
    public void Elevations_and_allowances_are_as_reckoned_by_hand()
    {
        // From 2,500 ft to 1,000 ft at 10,000 ft, burn 10 % above the tables, approach allowance 5 min and 20 lb.
        // Climb    7.5 x (2 min, 10 lb, 4 NM) = 15 min, 75 lb, 30 NM
        // Descent  9   x (1 min,  3 lb, 4 NM) =  9 min, 27 lb, 36 NM
        // Cruise   200 - 66 = 134 NM = 40.2 min, 268 lb
        // Together 64.2 + 5 = 69.2 min; (75 + 27 + 268 + 20) x 1.1 = 429 lb
        var type = Some.PlainType() with { ApproachFuel = new Pounds(20), ApproachTime = Duration.FromMinutes(5) };
        var profile = Flown(Plain(EquatorRoute(200)) with { Type = type, StartElevation = new Feet(2500), EndElevation = new Feet(1000), BurnBias = 0.1 });
        Assert.Equal(69.2, profile.Time.TotalMinutes, 1e-6);
        Assert.Equal(429, profile.TripFuel.Value, 1e-6);
        Assert.Equal(440, profile.CruiseFlow.Value, 1e-9);
        var last = profile.Slices[^1];
        Assert.Equal((FlightPhase.Approach, 0.0, 1000.0), (last.Phase, last.GroundNm, last.EndFt));
        Assert.Equal(22, last.BurnLb, 1e-9);
    }

    [Fact]
    public void Below_sea_level_nothing_is_climbed()
    {
        var low = Flown(Plain(EquatorRoute(200)) with { StartElevation = new Feet(-1300), EndElevation = new Feet(-200) });
        Assert.Equal(370, low.TripFuel.Value, 1e-6);
        Assert.Equal(66, low.Time.TotalMinutes, 1e-6);
    }

    [Fact]
    public void A_table_that_begins_higher_falls_to_zero_at_sea_level()
    {
        // Rows at 5,000 and 20,000 ft only: (10 min, 50 lb, 20 NM) and (40, 200, 80) lie on the same line from zero.
        var tables = Some.PlainType().Tables with
        {
            Climb = Some.Table("Climb", ["weight [lb]", "ISA deviation [K]", "pressure altitude [ft]"], ["time [min]", "fuel [lb]", "distance [NM]"],
                [Some.Row([double.NaN, double.NaN, 5000], 10, 50, 20), Some.Row([double.NaN, double.NaN, 20_000], 40, 200, 80)]),
        };
        var request = Plain(EquatorRoute(200));
        Assert.Equal(Flown(request).TripFuel.Value, Flown(request with { Type = request.Type with { Tables = tables } }).TripFuel.Value, 1e-9);
    }

    [Fact]
    public void Slices_follow_each_other_and_never_cross_a_route_point()
    {
        foreach (var profile in new[] { Flown(Skua("NORRA V12 GULLS") with { Air = Some.SteadyWind(200, 45, 7) }),
            Flown(Skua("NOR XCOR 41N038W 4100N03630W")) })
        {
            var slices = profile.Slices;
            Assert.Equal(0, slices[0].StartNm);
            for (var index = 0; index < slices.Length; index++)
            {
                var slice = slices[index];
                Assert.InRange(Math.Abs(slice.EndFt - slice.StartFt), 0, 1000);
                Assert.InRange(slice.GroundNm, 0, 25 + 1e-6);
                if (slice.Phase != FlightPhase.Approach)
                {
                    Assert.Equal(slice.GroundNm, slice.GroundSpeedKt * slice.Hours, 1e-7);
                    Assert.Equal(slice.AirNm, slice.TrueAirspeedKt * slice.Hours, 1e-7);
                }

                if (index == 0) continue;
                Assert.Equal(slices[index - 1].EndNm, slice.StartNm, 1e-8);
                Assert.Equal(slices[index - 1].EndFt, slice.StartFt, 1e-6);
                Assert.InRange(slice.Segment - slices[index - 1].Segment, 0, 1);
            }

            Assert.Equal(slices.Sum(slice => slice.BurnLb), profile.TripFuel.Value, 1e-9);
            Assert.Equal(slices.Sum(slice => slice.Hours), profile.Time.TotalHours, 1e-9);
        }
    }

    [Fact]
    public void Every_slice_lies_on_its_segment()
    {
        var request = Skua("NORRA V12 GULLS LN");
        var segments = request.Route.Segments;
        Assert.All(Flown(request).Slices, slice =>
        {
            var segment = segments[slice.Segment];
            Assert.InRange(slice.StartNm, segment.Start.Value - 1e-8, (segment.Start + segment.Length).Value + 1e-8);
            Assert.InRange(slice.EndNm, segment.Start.Value - 1e-8, (segment.Start + segment.Length).Value + 1e-8);
        });
    }

    [Fact]
    public void A_step_climb_is_as_reckoned_by_hand()
    {
        // 300 NM on the equator in two halves; 10,000 ft, then 15,000 ft from the middle.
        // Climb to 10,000  20 min, 100 lb, 40 NM; cruise to 150 NM: 110 NM = 33 min, 220 lb
        // Climb 5,000 ft   10 min,  50 lb, 20 NM to 170 NM
        // Descent          15 min,  45 lb, 60 NM from 240 NM; cruise 70 NM = 21 min, 140 lb
        // Together 99 min, 555 lb
        var profile = Flown(Plain(EquatorRoute(300, new Feet(15_000))));
        Assert.Equal(99, profile.Time.TotalMinutes, 1e-6);
        Assert.Equal(555, profile.TripFuel.Value, 1e-6);
        Assert.Equal(240, profile.TopOfDescent.Distance.Value, 1e-6);
        Assert.Equal(15_000, profile.TopOfDescent.Altitude.Value);
        Assert.Equal(10_000, profile.TopOfClimb.Altitude.Value);
        Assert.Empty(profile.Notes);
    }

    [Fact]
    public void A_step_climb_without_room_is_left_out_and_said()
    {
        // In the middle of 150 NM there are 75 NM left; 20 NM up and 60 NM down do not fit.
        var profile = Flown(Plain(EquatorRoute(150, new Feet(15_000))));
        Assert.Equal(Flown(Plain(EquatorRoute(150))).TripFuel.Value, profile.TripFuel.Value, 1e-9);
        Assert.Equal("FL150 from MIDDL was not flown; it leaves less than two minutes of cruise.", Assert.Single(profile.Notes));
    }

    [Fact]
    public void A_lower_level_asked_for_is_not_flown_and_said()
    {
        var profile = Flown(Plain(EquatorRoute(300, new Feet(8000))));
        Assert.Equal(10_000, profile.TopOfDescent.Altitude.Value);
        Assert.Equal("8,000 ft from MIDDL was not flown; it lies below FL100.", Assert.Single(profile.Notes));
    }

    [Fact]
    public void Another_level_asked_for_at_the_start_is_said()
    {
        Assert.Equal("FL160 from XAND was not flown; the level planned is FL190.", Assert.Single(Flown(Skua("N0250F160 NORRA")).Notes));
        Assert.Empty(Flown(Skua("N0250F190 NORRA")).Notes);
    }

    [Theory]
    [InlineData(86.6, true)] // 80 NM up and down, 6.6 NM = 1.98 min
    [InlineData(86.7, false)] // 6.7 NM = 2.01 min
    [InlineData(60, true)]
    [InlineData(10, true)]
    public void Less_than_two_minutes_of_cruise_are_too_short(double lengthNm, bool isTooShort)
    {
        var result = ProfileFlyer.Fly(Plain(EquatorRoute(lengthNm)));
        Assert.Equal(isTooShort, result is ProfileResult.TooShort);
        if (result is ProfileResult.TooShort(var minutes)) Assert.Equal((lengthNm - 80) / 200 * 60, minutes, 1e-6);
    }

    [Fact]
    public void A_route_to_the_same_airport_is_too_short()
    {
        var route = Assert.IsType<RouteResult.Resolved>(RouteReader.Resolve(Some.Book(), Some.Xand, Some.Xand, "", Some.Day, null)).Route;
        Assert.IsType<ProfileResult.TooShort>(ProfileFlyer.Fly(Plain(route)));
    }

    [Theory]
    [InlineData(0, 250, "crosswind of 250 kt is above the true airspeed of 120 kt", "over WESTR at 0 ft")]
    [InlineData(90, 130, "headwind of 130 kt leaves no ground speed at a true airspeed of 120 kt", "over WESTR at 0 ft")]
    public void Wind_above_the_airspeed_stops_the_leg_where_it_happens(double fromDeg, double knots, string why, string where) =>
        Stopped(Plain(EquatorRoute(200)) with { Air = Some.SteadyWind(fromDeg, knots) }, why, where);

    [Fact]
    public void Wind_that_is_too_strong_in_cruise_names_the_place()
    {
        // A jet of 210 kt from the north at 10,000 ft, 150 NM east of the departure; calm below and at the departure. By inverse square distance it passes 200
        // kt where (150 - x)^2 : x^2 = 10 : 200, at 122.6 NM, so first in the step from 115 to 140 NM (the climb ends at 40 NM).
        var air = new AirField([
            Wind(9000, 0, null), Wind(10_000, 210, new GeoPoint(0, 2.5)), Wind(9000, 0, new GeoPoint(0, 2.5)), Wind(10_000, 0, new GeoPoint(0, 0)),
            Wind(9000, 0, new GeoPoint(0, 0)),
        ]);
        var stopped = Assert.IsType<ProfileResult.NotFlyable>(ProfileFlyer.Fly(Plain(EquatorRoute(300)) with { Air = air }));
        Assert.Contains("crosswind", stopped.Why, StringComparison.Ordinal);
        Assert.Equal("115 NM past WESTR at FL100", stopped.Where);

        static AirReport Wind(double feet, double knots, GeoPoint? place) =>
            new() { Altitude = new Feet(feet), WindFrom = new TrueDegrees(0), WindSpeed = new Knots(knots), Place = place };
    }

    [Fact]
    public void Outside_a_table_the_leg_stops_unless_the_edge_may_be_used()
    {
        var hot = Skua("") with { Air = Some.SteadyWind(0, 0, 23) };
        Stopped(hot, "Climb of Skua 9 ends at ISA deviation 20 K", "over XAND at 0 ft");
        var profile = Flown(hot with { MayUseTableEdge = true });
        Assert.Equal(2, profile.TableEdges.Length);
        Assert.StartsWith("Climb of Skua 9 ends at ISA deviation 20 K; 23", profile.TableEdges[0], StringComparison.Ordinal);
        Assert.StartsWith("Cruise (long range) of Skua 9 ends at ISA deviation 20 K; 23", profile.TableEdges[1], StringComparison.Ordinal);
        Assert.EndsWith("; the value at the edge was taken.", profile.TableEdges[0], StringComparison.Ordinal);
        Assert.Equal(Flown(Skua("") with { Air = Some.SteadyWind(0, 0, 20) }).TripFuel.Value, profile.TripFuel.Value, 1e-6);
    }

    [Fact]
    public void A_climb_above_its_table_is_never_taken_at_the_edge() =>
        Stopped(Skua("") with { Level = new Feet(30_000), MayUseTableEdge = true }, "Climb of Skua 9 ends at pressure altitude 28,000 ft; 29,000 ft was asked",
            "at FL280");

    [Fact]
    public void What_is_missing_is_named()
    {
        var request = Skua("");
        Stopped(request with { Setting = "turbo" }, "Skua 9 has no cruise setting 'turbo'; it has: long range, fast.", "");
        Stopped(request with { Type = request.Type with { Tables = request.Type.Tables with { Climb = null } } }, "Skua 9 has no climb table.", "");
        Stopped(request with { Type = request.Type with { Tables = request.Type.Tables with { Descent = null } } }, "Skua 9 has no descent table.", "");
        Stopped(request with { Level = new Feet(2000), StartElevation = new Feet(3000) }, "lies below the elevation of the departure", "");
    }

    [Fact]
    public void The_winds_of_the_descent_are_those_of_its_own_time()
    {
        // Calm until 12:45, then 60 kt on the nose. The 200 NM take 66 min in still air, so the descent lies wholly in the wind and the climb in the calm.
        AirReport report = new()
        {
            Altitude = Feet.Zero,
            WindFrom = new TrueDegrees(90),
            WindSpeed = new Knots(60),
            From = Some.Noon + Duration.FromMinutes(45)
        };
        var profile = Flown(Plain(EquatorRoute(200)) with { Air = new AirField([report]) });
        Assert.All(profile.Slices.Where(slice => slice.Phase == FlightPhase.Descent), slice => Assert.Equal(60, slice.Air.WindSpeed.Value, 1e-9));
        Assert.All(profile.Slices.Where(slice => slice.Phase == FlightPhase.Climb), slice => Assert.True(slice.Air.WindAssumed));
        // 10 min of descent at 240 - 60 kt.
        Assert.Equal(200 - 30, profile.TopOfDescent.Distance.Value, 1e-4);
    }

    [Fact]
    public void A_wind_that_changes_between_the_two_arrivals_counts_from_its_own_time()
    {
        // Headwind of 40 kt from the start until 13:17. Climb 20 min at 80 kt to 26.7 NM. First arrival: 133.3 NM of still air at 200 kt and 10 min down,
        // 13:10, before the change; with it the descent takes 33.3 NM and the cruise 140 NM at 160 kt, so the second arrival is 13:22:30 and the last 5.5
        // slices are calm. They go 4 NM instead of 3.3, which brings the top of descent 3.7 NM nearer to the departure: 1.4 min that the second arrival was
        // late.
        AirReport report = new() { Altitude = Feet.Zero, WindFrom = new TrueDegrees(90), WindSpeed = new Knots(40), To = Some.Noon + Duration.FromMinutes(77) };
        var profile = Flown(Plain(EquatorRoute(200)) with { Air = new AirField([report]) });
        var hours = 0.0;
        foreach (var slice in profile.Slices)
        {
            var middle = (hours + slice.Hours / 2) * 60;
            if (Math.Abs(middle - 77) > 2) Assert.Equal(middle < 77 ? 40 : 0, slice.Air.WindSpeed.Value, 1e-9);
            hours += slice.Hours;
        }

        Assert.Equal(20 + 10 + (200 - 80 / 3.0 - 22 - 15) / 160 * 60, hours * 60, 0.4);
    }

    private static int Count(FlightProfile profile, FlightPhase phase) => profile.Slices.Count(slice => slice.Phase == phase);
}
