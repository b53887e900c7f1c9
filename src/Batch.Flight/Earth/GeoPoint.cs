namespace Batch.Flight.Earth;

/// <summary>A position on WGS84.</summary>
/// <param name="LatitudeDeg">Latitude [deg], -90 to 90, north positive.</param>
/// <param name="LongitudeDeg">Longitude [deg], -180 to 180, east positive.</param>
public readonly record struct GeoPoint(double LatitudeDeg, double LongitudeDeg);
