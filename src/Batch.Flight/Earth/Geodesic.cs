namespace Batch.Flight.Earth;

/// <summary>
/// Shortest lines on the WGS84 ellipsoid, by the series of order 6 of C. F. F. Karney, Algorithms for geodesics,
/// Journal of Geodesy 87 (2013) 43-55, doi:10.1007/s00190-012-0578-z. Accuracy some 15 nm of length; every pair of points has a solution.
/// </summary>
public static class Geodesic
{
    /// <summary>Equatorial radius of WGS84 [m] (NGA.STND.0036, table 3.1).</summary>
    public const double EquatorialRadiusM = 6378137;

    /// <summary>Flattening of WGS84, exact as the inverse of this number (NGA.STND.0036, table 3.1).</summary>
    public const double InverseFlattening = 298.257223563;

    internal static readonly Ellipsoid Wgs84 = new(EquatorialRadiusM, 1 / InverseFlattening);

    /// <summary>
    /// The shortest line between two places: length and directions at both ends. Coincident points give length 0 and azimuths 0.
    /// At a pole the direction is the limit on the meridian of the given longitude. Antipodal points have several shortest lines;
    /// one is given: over the north pole, or over the south pole for a start in the southern hemisphere; between antipodes on the equator northward.
    /// </summary>
    /// <param name="from">The first place.</param>
    /// <param name="to">The second place.</param>
    public static GeodesicLine Inverse(GeoPoint from, GeoPoint to) =>
        GeodesicInverse.Solve(Wgs84, from.LatitudeDeg, from.LongitudeDeg, to.LatitudeDeg, to.LongitudeDeg);

    /// <summary>The place reached along a geodesic.</summary>
    /// <param name="from">The start; at a pole the azimuth counts from the meridian of its longitude.</param>
    /// <param name="azimuthDeg">The true direction at the start [deg], any finite angle.</param>
    /// <param name="distanceM">The distance [m]; negative goes backward.</param>
    public static GeoPoint Direct(GeoPoint from, double azimuthDeg, double distanceM) => DirectWithAzimuth(from, azimuthDeg, distanceM).Point;

    /// <summary>The place reached along a geodesic and the direction of the line there.</summary>
    /// <param name="from">The start; at a pole the azimuth counts from the meridian of its longitude.</param>
    /// <param name="azimuthDeg">The true direction at the start [deg], any finite angle.</param>
    /// <param name="distanceM">The distance [m]; negative goes backward.</param>
    public static GeodesicEnd DirectWithAzimuth(GeoPoint from, double azimuthDeg, double distanceM) =>
        new GeodesicRay(Wgs84, from.LatitudeDeg, from.LongitudeDeg, azimuthDeg).At(distanceM);
}
