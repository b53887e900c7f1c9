using Batch.Flight.Earth;

namespace Batch.Sheets.Pictures;

/// <summary>
/// Places as seen from above the middle of a route: distance and direction from the middle are true (azimuthal equidistant), so that neither the date line nor
/// a pole tears the picture.
/// </summary>
/// <param name="middle">The middle of the picture; north is up there.</param>
internal sealed class PlanProjection(GeoPoint middle)
{
    /// <summary>A projection about the middle of some places.</summary>
    /// <param name="places">At least one place.</param>
    public static PlanProjection About(IReadOnlyCollection<GeoPoint> places)
    {
        double x = 0, y = 0, z = 0;
        foreach (var place in places)
        {
            var (latitude, longitude) = (place.LatitudeDeg * Math.PI / 180, place.LongitudeDeg * Math.PI / 180);
            x += Math.Cos(latitude) * Math.Cos(longitude);
            y += Math.Cos(latitude) * Math.Sin(longitude);
            z += Math.Sin(latitude);
        }
        var across = Math.Sqrt((x * x) + (y * y));
        return new PlanProjection(across + Math.Abs(z) < 1e-9
            ? places.First()
            : GeoPoint.Of(Math.Atan2(z, across) * 180 / Math.PI, Math.Atan2(y, x) * 180 / Math.PI));
    }

    /// <summary>East and north of the middle [NM].</summary>
    /// <param name="place">The place.</param>
    public (double East, double North) Of(GeoPoint place)
    {
        var line = Geodesic.Inverse(middle, place);
        var (sin, cos) = Math.SinCos(line.InitialAzimuthDeg * Math.PI / 180);
        var nm = line.DistanceM / NauticalMiles.MetresPerNauticalMile;
        return (nm * sin, nm * cos);
    }

    /// <summary>The shortest way between two places as a line of points: the ends, and between them a point every 50 NM or so.</summary>
    /// <param name="path">The way.</param>
    public IEnumerable<(double East, double North)> Of(GeodesicPath path)
    {
        var pieces = Math.Clamp((int)Math.Ceiling(path.Length.Value / 50), 1, 60);
        return Enumerable.Range(0, pieces + 1).Select(k => Of(k == 0 ? path.From : k == pieces ? path.To : path.At(path.Length.Value * k / pieces).Point));
    }
}
