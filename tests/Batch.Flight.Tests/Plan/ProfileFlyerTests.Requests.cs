using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Flight.Route;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

public sealed partial class ProfileFlyerTests
{
    internal static ProfileRequest Plain(FlownRoute route) => new()
    {
        Route = route,
        Type = Some.PlainType(),
        Level = new Feet(10_000),
        Setting = "cruise",
        TakeoffWeight = new Pounds(5000),
        Takeoff = Some.Noon,
        StartElevation = Feet.Zero,
        EndElevation = Feet.Zero,
        Air = Some.StillAir,
    };

    internal static ProfileRequest Skua(string route) => new()
    {
        Route = Assert.IsType<RouteResult.Resolved>(RouteReader.Resolve(Some.Book(), Some.Xand, Some.Xbel, route, Some.Day, null)).Route,
        Type = Some.Type(),
        Level = new Feet(19_000),
        Setting = "long range",
        TakeoffWeight = new Pounds(9500),
        Takeoff = Some.Noon,
        StartElevation = Feet.Zero,
        EndElevation = Feet.Zero,
        Air = Some.StillAir,
    };

    /// <summary>WESTR, MIDDL and EASTR on the equator, where an east course stays 090.</summary>
    internal static FlownRoute EquatorRoute(double lengthNm, Feet? levelFromMiddle = null)
    {
        var start = new GeoPoint(0, 0);
        var points = new[] { 0, lengthNm / 2, lengthNm }.Select(nm => Geodesic.Direct(start, 90, nm * 1852)).ToArray();
        string[] idents = ["WESTR", "MIDDL", "EASTR"];
        var segments = ImmutableArray.CreateBuilder<RouteSegment>();
        var from = NauticalMiles.Zero;
        for (var index = 0; index < 2; index++)
        {
            var path = new GeodesicPath(points[index], points[index + 1]);
            segments.Add(new RouteSegment
            {
                From = Point(index),
                To = Point(index + 1),
                Via = "DCT",
                Path = path,
                Start = from,
                VariationDeg = -5,
                LevelFromHere = index == 1 ? levelFromMiddle : null,
            });
            from += path.Length;
        }

        return new FlownRoute { Text = "MIDDL", Elements = ["MIDDL"], Segments = segments.ToImmutable(), Length = from };

        RoutePoint Point(int index) => new() { Ident = idents[index], Position = points[index], Kind = "waypoint" };
    }

    internal static FlightProfile Flown(ProfileRequest request) => ProfileFlyer.Fly(request) switch
    {
        ProfileResult.Flown(var profile) => profile,
        var other => throw new Xunit.Sdk.XunitException(other.ToString()),
    };

    private static void Stopped(ProfileRequest request, string why, string where)
    {
        var stopped = Assert.IsType<ProfileResult.NotFlyable>(ProfileFlyer.Fly(request));
        Assert.Contains(why, stopped.Why, StringComparison.Ordinal);
        Assert.EndsWith(where, stopped.Where, StringComparison.Ordinal);
    }
}
