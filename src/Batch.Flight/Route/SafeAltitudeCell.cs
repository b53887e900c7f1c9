namespace Batch.Flight.Route;

/// <summary>One square of the altitude grid.</summary>
/// <param name="SouthDeg">Southern edge [deg].</param>
/// <param name="WestDeg">Western edge [deg].</param>
/// <param name="SizeDeg">Side [deg], above zero.</param>
/// <param name="MinimumAltitude">Safe altitude inside [ft].</param>
/// <param name="Origin">Where it was read.</param>
public sealed record SafeAltitudeCell(double SouthDeg, double WestDeg, double SizeDeg, Feet MinimumAltitude, Origin Origin);
