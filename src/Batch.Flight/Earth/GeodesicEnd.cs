namespace Batch.Flight.Earth;

/// <summary>The end of a geodesic.</summary>
/// <param name="Point">The point.</param>
/// <param name="AzimuthDeg">Azimuth of the geodesic there [deg], 0 to 360.</param>
public readonly record struct GeodesicEnd(GeoPoint Point, double AzimuthDeg);
