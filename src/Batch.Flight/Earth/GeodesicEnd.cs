namespace Batch.Flight.Earth;

/// <summary>A place on a geodesic and the direction of the line there.</summary>
/// <param name="Point">The place.</param>
/// <param name="AzimuthDeg">The true direction, forward [deg], 0 up to but not 360.</param>
public readonly record struct GeodesicEnd(GeoPoint Point, double AzimuthDeg);
