using Batch.Flight.Plan;

namespace Batch.Checks.Enroute;

/// <summary>The profile as a row of points with their distance to land.</summary>
internal static class OverWater
{
    /// <summary>Feet in a nautical mile [ft/NM]: 1852 m / 0.3048 m, exact by definition of both.</summary>
    public const double FeetPerNauticalMile = 1852 / 0.3048;

    private const double StepNm = 2;

    /// <summary>Points at most 2 NM apart, departure and destination included.</summary>
    /// <param name="leg">The leg.</param>
    public static ImmutableArray<WaterPoint> Points(LegUnderCheck leg)
    {
        var points = ImmutableArray.CreateBuilder<WaterPoint>();
        var segments = leg.Plan.Route.Segments;
        var land = leg.Week.Plan.Input.Land;
        foreach (var slice in leg.Plan.Profile.Slices.Where(slice => slice.Phase != FlightPhase.Approach && slice.Segment < segments.Length))
        {
            var segment = segments[slice.Segment];
            var parts = Math.Max(1, (int)Math.Ceiling(slice.GroundNm / StepNm));
            for (var part = 0; part <= parts; part++)
            {
                var along = slice.StartNm + (slice.GroundNm * part / parts);
                var altitude = slice.StartFt + ((slice.EndFt - slice.StartFt) * part / parts);
                points.Add(new WaterPoint(along, altitude, Shore.DistanceNm(segment.Path.At(along - segment.Start.Value).Point, land)));
            }
        }

        return points.DrainToImmutable();
    }

    /// <summary>Distance that a glide covers in still air [NM].</summary>
    /// <param name="altitudeFt">Altitude where the engine stops [ft].</param>
    /// <param name="leftFt">Height to be left at the shore [ft].</param>
    /// <param name="glideRatio">Distance over height.</param>
    public static double ReachNm(double altitudeFt, double leftFt, double glideRatio) => Math.Max(altitudeFt - leftFt, 0) / FeetPerNauticalMile * glideRatio;
}
