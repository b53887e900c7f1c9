using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Flight.Route;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Plan;

public sealed class NavigationLogTests
{
    private static readonly Pounds Aboard = new(1500);

    private static readonly Gen<ProfileRequest> Requests = Gen.Select(
        Gen.Int[0, 4], Gen.Int[4, 26], Gen.Double[6500, 9900], Gen.Double[0, 359], Gen.Double[0, 60], Gen.Double[-15, 15])
            .Select((route, level, lb, from, knots, kelvin) =>
        ProfileFlyerTests.Skua(new[] { "", "NORRA V12 GULLS", "NOR LN", "41N039W 4100N03630W", "TIDES XCOR/N0200F270 GULLS" }[route]) with
        {
            Level = new Feet(level * 1000),
            TakeoffWeight = new Pounds(lb),
            Air = Some.SteadyWind(from, knots, kelvin),
        });

    [Fact]
    public void Lines_add_up_to_the_leg() => Fly((request, profile, log) =>
    {
        Assert.Equal(profile.Time, log.Aggregate(Duration.Zero, (sum, line) => sum + line.Time));
        Assert.Equal(profile.Distance.Value, log.Sum(line => line.Distance.Value), 1e-9);
        Assert.Equal(request.Route.Length.Value, log.Sum(line => line.Distance.Value), 1e-7);
        Assert.Equal(profile.TripFuel.Value, log.Sum(line => line.Burn.Value), 1e-9);
        Assert.Equal(Some.Noon + profile.Time, log[^1].Over);
        Assert.Equal(Aboard.Value - profile.TripFuel.Value, log[^1].Remaining.Value, 1e-9);
    });

    [Fact]
    public void A_leg_flown_by_the_log_comes_out_at_the_destination() => Fly((request, _, log) =>
    {
        var place = log[0].Position;
        foreach (var line in log.Skip(1))
        {
            if (line.GroundSpeed is not { } speed || line.TrueCourse is not { } course) continue;
            var time = line.Point == request.Route.To.Ident && line.Kind == LogPointKind.Airport ? line.Time - Duration.FromMinutes(5) : line.Time;
            place = Geodesic.Direct(place, course.Value, (speed * time).Metres);
            Assert.InRange(Geodesic.Inverse(place, line.Position).DistanceM / 1852, 0, 0.1);
        }

        Assert.InRange(Geodesic.Inverse(place, request.Route.To.Position).DistanceM / 1852, 0, 0.1);
    });

    [Fact]
    public void Heading_and_airspeed_in_the_wind_give_the_ground_speed() => Fly((_, _, log) =>
    {
        foreach (var line in log.Skip(1))
        {
            if (line is not
                {
                    TrueCourse: { } course, TrueAirspeed: { } airspeed, WindFrom: { } from, WindSpeed: { } wind, GroundSpeed: { } speed,
                    Heading: { } heading, VariationDeg: { } variation
                })
                continue;
            var solution = WindTriangle.Solve(course, airspeed, from, wind);
            // The course turns over a long stretch and the airspeed grows over a climb; the means differ a little from the triangle of the means.
            Assert.InRange(Math.Abs(solution.GroundSpeed.Value - speed.Value), 0, 2.5);
            Assert.Equal(0, Math.IEEERemainder(heading.ToTrue(variation).Value - solution.Heading.Value, 360), 1e-9);
        }
    });

    [Fact]
    public void Points_come_in_the_order_of_the_route_with_the_tops_between() => Fly((request, profile, log) =>
    {
        string[] fixes = [request.Route.From.Ident, .. request.Route.Segments.Select(segment => segment.To.Ident)];
        Assert.Equal(fixes, log.Where(line => line.Kind is LogPointKind.Airport or LogPointKind.Fix).Select(line => line.Point));
        var climbs = log.Where(line => line.Kind == LogPointKind.TopOfClimb).ToList();
        Assert.Equal(profile.TopOfClimb.Distance.Value, climbs[0].AlongRoute.Value, 1e-8);
        Assert.Equal(profile.TopOfClimb.Altitude, climbs[0].Altitude);
        Assert.Equal(profile.TopOfDescent.Altitude, climbs[^1].Altitude);
        var descent = Assert.Single(log, line => line.Kind == LogPointKind.TopOfDescent);
        Assert.Equal(profile.TopOfDescent.Distance.Value, descent.AlongRoute.Value, 1e-8);
        Assert.InRange(Geodesic.Inverse(profile.TopOfDescent.Position, descent.Position).DistanceM, 0, 0.01);
        for (var index = 1; index < log.Length; index++)
        {
            Assert.True(log[index].AlongRoute >= log[index - 1].AlongRoute);
            Assert.True(log[index].Over >= log[index - 1].Over);
            Assert.True(log[index].Remaining <= log[index - 1].Remaining);
            Assert.Equal(log[index].Over - log[index - 1].Over, log[index].Time);
        }
    });

    [Fact]
    public void Anywhere_on_earth_the_log_leads_to_the_destination()
    {
        var place = Gen.Select(Gen.Double[-88, 88], Gen.Double[-180, 180]).Select((lat, lon) => new GeoPoint(lat, lon));
        Gen.Select(place, Gen.Double[0, 360], Gen.Double[160, 700], Gen.Double[0, 50]).Sample(
            (from, course, lengthNm, knots) =>
            {
                var to = Geodesic.Direct(from, course, lengthNm * 1852);
                var book = new NavigationBook(
                    [Some.Airport("XONE", from.LatitudeDeg, from.LongitudeDeg, 0), Some.Airport("XTWO", to.LatitudeDeg, to.LongitudeDeg, 0)], [], [], []);
                var route = book.Airport("XONE") is { } start && book.Airport("XTWO") is { } end
                    ? Assert.IsType<RouteResult.Resolved>(RouteReader.Resolve(book, start, end, "", Some.Day, null)).Route
                    : throw new InvalidOperationException("The book holds both.");
                var request = ProfileFlyerTests.Plain(route) with { Air = Some.SteadyWind(300, knots) };
                var log = NavigationLog.Of(ProfileFlyerTests.Flown(request), route, Some.Noon, Aboard, Some.Day);
                var at = log[0].Position;
                foreach (var line in log.Skip(1))
                    at = Geodesic.Direct(at, line.TrueCourse?.Value ?? double.NaN, ((line.GroundSpeed ?? Knots.Zero) * line.Time).Metres);
                Assert.Equal(lengthNm, log.Sum(line => line.Distance.Value), 1e-6);
                Assert.InRange(Geodesic.Inverse(at, to).DistanceM, 0, 10);
            },
            iter: 200);
    }

    [Fact]
    public void A_log_is_as_reckoned_by_hand()
    {
        // The leg of 200 NM reckoned by hand in ProfileFlyerTests, middle point at 100 NM, variation 5 W, still standard air.
        var route = ProfileFlyerTests.EquatorRoute(200);
        var log = NavigationLog.Of(ProfileFlyerTests.Flown(ProfileFlyerTests.Plain(route)), route, Some.Noon, new Pounds(1000), Some.Day);
        Assert.Equal("WESTR TOC MIDDL TOD EASTR", string.Join(' ', log.Select(line => line.Point)));
        Assert.Equal([0.0, 40, 60, 60, 40], log.Select(line => Math.Round(line.Distance.Value, 6)));
        Assert.Equal([0.0, 20, 18, 18, 10], log.Select(line => Math.Round(line.Time.TotalMinutes, 6)));
        Assert.Equal([1000.0, 900, 780, 660, 630], log.Select(line => Math.Round(line.Remaining.Value, 6)));
        Assert.Equal([null, 120.0, 200, 200, 240], log.Select(line => line.GroundSpeed is { } speed ? Math.Round(speed.Value, 6) : (double?)null));
        // At the segments' starts the variation is theirs: magnetic 090 + 5.
        Assert.Equal(95, log[1].MagneticCourse?.Value ?? 0, 1e-9);
        Assert.Equal(95, log[1].Heading?.Value ?? 0, 1e-9);
        Assert.Equal(95, log[3].MagneticCourse?.Value ?? 0, 1e-9);
        // Between them it is the model's.
        Assert.Equal(MagneticModel.VariationDeg(log[1].Position, new Feet(10_000), Some.Day), log[2].VariationDeg ?? 0, 1e-9);
        // The mean temperature of a climb from 15 °C at sea level to 10,000 ft is the one half-way up: 15 - 9.906.
        Assert.Equal(15 - 5 * 1.9812, log[1].Temperature?.Value ?? 0, 1e-3);
    }

    [Fact]
    public void A_step_climb_has_its_own_top()
    {
        var route = ProfileFlyerTests.EquatorRoute(300, new Feet(15_000));
        var log = NavigationLog.Of(ProfileFlyerTests.Flown(ProfileFlyerTests.Plain(route)), route, Some.Noon, Aboard, Some.Day);
        Assert.Equal("WESTR/0 TOC/10000 MIDDL/10000 TOC/15000 TOD/15000 EASTR/0",
            string.Join(' ', log.Select(line => line.Point + "/" + line.Altitude.ToString().Split(' ')[0])));
    }

    [Fact]
    public void Winds_are_averaged_by_components()
    {
        // Climb through 20 kt from 350 below and 20 kt from 010 above: the mean is from the north, not from the south.
        AirReport report = new() { Altitude = new Feet(4000), WindFrom = new TrueDegrees(350), WindSpeed = new Knots(20) };
        var air = new AirField([report, report with { Altitude = new Feet(6000), WindFrom = new TrueDegrees(10) }]);
        var route = ProfileFlyerTests.EquatorRoute(200);
        var log = NavigationLog.Of(ProfileFlyerTests.Flown(ProfileFlyerTests.Plain(route) with { Air = air }), route, Some.Noon, Aboard, Some.Day);
        Assert.InRange(Math.Abs(Math.IEEERemainder(log[1].WindFrom?.Value ?? 180, 360)), 0, 1);
        Assert.InRange(log[1].WindSpeed?.Value ?? 0, 19, 20);
    }

    private static void Fly(Action<ProfileRequest, FlightProfile, ImmutableArray<LogLine>> look) => Requests.Sample(
        request =>
        {
            if (ProfileFlyer.Fly(request) is not ProfileResult.Flown(var profile)) return;
            look(request, profile, NavigationLog.Of(profile, request.Route, Some.Noon, Aboard, Some.Day));
        },
        iter: 200);
}
