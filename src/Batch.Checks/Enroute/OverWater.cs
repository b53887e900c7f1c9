using Batch.Flight.Plan;

namespace Batch.Checks.Enroute;

/// <summary>The profile as a row of points with their distance to land.</summary>
internal static class OverWater
{
    /// <summary>Feet in a nautical mile [ft/NM]: 1852 m / 0.3048 m, exact by definition of both.</summary>
    public const double FeetPerNauticalMile = 1852 / 0.3048;

    private const double StepNm = 2;

    /// <summary>Steps in which the point farthest from land is sought round the farthest of the others [NM].</summary>
    private const double FineNm = 0.05;

    /// <summary>Points at most 2 NM apart, departure and destination included, and the point farthest from land.</summary>
    /// <param name="leg">The leg.</param>
    public static ImmutableArray<WaterPoint> Points(LegUnderCheck leg)
    {
        var points = ImmutableArray.CreateBuilder<WaterPoint>();
        var slices = leg.Plan.Profile.Slices.Where(slice => slice.Phase != FlightPhase.Approach && slice.Segment < leg.Plan.Route.Segments.Length)
            .ToImmutableArray();
        foreach (var slice in slices)
        {
            var parts = Math.Max(1, (int)Math.Ceiling(slice.GroundNm / StepNm));
            for (var part = 0; part <= parts; part++) points.Add(At(leg, slice, slice.GroundNm * part / parts));
        }

        AddFarthest(leg, slices, points);
        return points.DrainToImmutable();
    }

    // The shore may be farthest between two points: by up to their distance where the way leads straight out and back.
    private static void AddFarthest(LegUnderCheck leg, ImmutableArray<ProfileSlice> slices, ImmutableArray<WaterPoint>.Builder points)
    {
        var known = points.DefaultIfEmpty().MaxBy(point => point.ShoreNm);
        if (!(known.ShoreNm > 0) || double.IsInfinity(known.ShoreNm)) return;
        var farthest = known;
        foreach (var slice in slices)
        {
            var (from, to) = (Math.Max(slice.StartNm, known.AlongNm - StepNm), Math.Min(slice.StartNm + slice.GroundNm, known.AlongNm + StepNm));
            for (var along = from; along < to; along += FineNm)
            {
                var point = At(leg, slice, along - slice.StartNm);
                if (point.ShoreNm > farthest.ShoreNm) farthest = point;
            }
        }

        if (farthest == known) return;
        var after = 0;
        while (after < points.Count && points[after].AlongNm <= farthest.AlongNm) after++;
        points.Insert(after, farthest);
    }

    private static WaterPoint At(LegUnderCheck leg, ProfileSlice slice, double onNm)
    {
        var segment = leg.Plan.Route.Segments[slice.Segment];
        var along = slice.StartNm + onNm;
        var altitude = slice.GroundNm > 0 ? slice.StartFt + ((slice.EndFt - slice.StartFt) * onNm / slice.GroundNm) : slice.StartFt;
        return new WaterPoint(along, altitude, Shore.DistanceNm(segment.Path.At(along - segment.Start.Value).Point, leg.Week.Plan.Input.Land));
    }

    /// <summary>Distance that a glide covers in still air [NM].</summary>
    /// <param name="altitudeFt">Altitude where the engine stops [ft].</param>
    /// <param name="leftFt">Height to be left at the shore [ft].</param>
    /// <param name="glideRatio">Distance over height.</param>
    public static double ReachNm(double altitudeFt, double leftFt, double glideRatio) => Math.Max(altitudeFt - leftFt, 0) / FeetPerNauticalMile * glideRatio;
}
