using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Plan;

/// <summary>Planned legs flown by nothing but what their navigation log prints.</summary>
public sealed class LogFlownTests
{
    private const double NearNm = 0.1;

    private static readonly string[] Routes = ["", "4130N03800W", "4130N03800W 4200N03700W", "N0220F150 40N038W"];

    private static LegPlan.Planned Planned(string route, double levelFt, double windFromDeg, double windKt) =>
        Assert.IsType<LegPlan.Planned>(Assert.Single(Some.Planned(Some.Week(
        [Some.Leg(1, "XAND", "XBEL", Some.Noon, alternate: "XDUN") with { Level = new Feet(levelFt), Route = route }],
        winds: Some.Reports(windFromDeg, windKt))).Legs));

    [Fact]
    public void Courses_times_and_ground_speeds_of_the_log_lead_to_every_point_and_to_the_destination()
    {
        Gen.Select(Gen.Int[0, Routes.Length - 1], Gen.Int[8, 13], Gen.Double[0, 360], Gen.Double[0, 90]).Sample((route, level, windFrom, wind) =>
        {
            var plan = Planned(Routes[route], (level * 2000) - 1000, windFrom, wind);
            var at = plan.Log[0].Position;
            foreach (var line in plan.Log.Skip(1))
            {
                if (line is { TrueCourse: { } course, GroundSpeed: { } groundSpeed })
                {
                    // The last stretch holds the approach allowance, in which nothing is flown along the route.
                    var allowance = line == plan.Log[^1] ? plan.Type.ApproachTime ?? Duration.Zero : Duration.Zero;
                    at = Geodesic.Direct(at, course.Value, groundSpeed.Value * (line.Time - allowance).TotalHours * NauticalMiles.MetresPerNauticalMile);
                }

                Assert.InRange(NauticalMiles.FromMetres(Geodesic.Inverse(at, line.Position).DistanceM).Value, 0, NearNm);
            }

            Assert.Equal(plan.To.Position, plan.Log[^1].Position);
        }, iter: 40);
    }

    [Fact]
    public void The_heading_with_the_wind_of_the_log_gives_its_course_and_ground_speed()
    {
        var plan = Planned("4130N03800W", 20_000, 30, 55);
        foreach (var line in plan.Log.Skip(1))
        {
            if (line is not
                {
                    TrueCourse: { } course, Heading: { } heading, VariationDeg: { } variation, TrueAirspeed: { } airspeed, WindFrom: { } from,
                    WindSpeed: { } speed, GroundSpeed: { } groundSpeed
                })
                continue;
            var (headingRad, fromRad) = ((heading.Value + variation) * Math.PI / 180, from.Value * Math.PI / 180);
            var east = (airspeed.Value * Math.Sin(headingRad)) - (speed.Value * Math.Sin(fromRad));
            var north = (airspeed.Value * Math.Cos(headingRad)) - (speed.Value * Math.Cos(fromRad));
            Assert.Equal(groundSpeed.Value, Math.Sqrt((east * east) + (north * north)), 0.5);
            Assert.Equal(0, Math.IEEERemainder((Math.Atan2(east, north) * 180 / Math.PI) - course.Value, 360), 0.3);
        }
    }
}
