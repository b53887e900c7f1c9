namespace Batch.Flight.Air.Bulletins;

/// <summary>A forecast of wind shear below 2,000 ft: the wind above it.</summary>
/// <param name="Height">Height above the aerodrome [ft] up to which the shear reaches.</param>
/// <param name="DirectionDeg">Direction of the wind there, true [deg].</param>
/// <param name="Speed">Its speed.</param>
public sealed record LowLevelWindShear(Feet Height, int DirectionDeg, Knots Speed);
