namespace Batch.Flight.Earth;

/// <summary>The shortest line between two places on the ellipsoid.</summary>
/// <param name="DistanceM">Its length [m], zero or more.</param>
/// <param name="InitialAzimuthDeg">Its true direction at the first place [deg], 0 up to but not 360.</param>
/// <param name="FinalAzimuthDeg">Its true direction, forward, at the second place [deg], 0 up to but not 360.</param>
public readonly record struct GeodesicLine(double DistanceM, double InitialAzimuthDeg, double FinalAzimuthDeg);
