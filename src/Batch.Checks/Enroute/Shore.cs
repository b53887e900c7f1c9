using System.Runtime.CompilerServices;
using Batch.Flight.Earth;
using Batch.Flight.Route;

namespace Batch.Checks.Enroute;

/// <summary>
/// How far land is from a point. Shorelines are measured on a plane that keeps true distances along the meridian and the parallel of the point, which is good
/// to one part in a hundred within 150 NM below 70 degrees of latitude; finer than shorelines drawn in a spreadsheet.
/// </summary>
internal static class Shore
{
    /// <summary>Nautical miles in a degree of latitude [NM/deg], mean; 1 NM was defined as a minute of it.</summary>
    private const double NmPerDegree = 60;

    /// <summary>Distance from a point to the nearest land [NM]; 0 on land, infinite where there is no land at all.</summary>
    /// <param name="point">The point.</param>
    /// <param name="land">Shorelines.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static double DistanceNm(GeoPoint point, ImmutableArray<LandRing> land)
    {
        foreach (var ring in land)
        {
            if (IsWithin(ring, point)) return 0;
        }

        var nearest = double.PositiveInfinity;
        var eastScale = NmPerDegree * Math.Cos(point.LatitudeDeg * Math.PI / 180);
        foreach (var ring in land)
        {
            var (x1, y1) = Plane(ring.Vertices[^1], point, eastScale);
            foreach (var vertex in ring.Vertices)
            {
                var (x2, y2) = Plane(vertex, point, eastScale);
                nearest = Math.Min(nearest, FromOriginSquared(x1, y1, x2, y2));
                (x1, y1) = (x2, y2);
            }
        }

        return Math.Sqrt(nearest);
    }

    // Whether a line from the point to the east crosses the shore an odd number of times.
    private static bool IsWithin(LandRing ring, GeoPoint point)
    {
        var inside = false;
        var (x1, y1) = Plane(ring.Vertices[^1], point, 1);
        foreach (var vertex in ring.Vertices)
        {
            var (x2, y2) = Plane(vertex, point, 1);
            if (y1 > 0 != y2 > 0 && x1 - (y1 * (x2 - x1) / (y2 - y1)) > 0) inside = !inside;
            (x1, y1) = (x2, y2);
        }

        return inside;
    }

    private static (double EastNm, double NorthNm) Plane(GeoPoint vertex, GeoPoint origin, double eastScale) =>
        (EastDeg(vertex.LongitudeDeg - origin.LongitudeDeg) * eastScale, (vertex.LatitudeDeg - origin.LatitudeDeg) * NmPerDegree);

    private static double EastDeg(double differenceDeg) => differenceDeg is >= -180 and <= 180 ? differenceDeg : Math.IEEERemainder(differenceDeg, 360);

    /// <summary>Square of the distance of a straight side from the origin [NM2].</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static double FromOriginSquared(double x1, double y1, double x2, double y2)
    {
        var (dx, dy) = (x2 - x1, y2 - y1);
        var length = (dx * dx) + (dy * dy);
        var along = length == 0 ? 0 : Math.Clamp(-((x1 * dx) + (y1 * dy)) / length, 0, 1);
        var (east, north) = (x1 + (along * dx), y1 + (along * dy));
        return (east * east) + (north * north);
    }
}
