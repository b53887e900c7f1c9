using Batch.Flight.Air;

namespace Batch.Flight.Plan;

/// <summary>
/// What a route would burn at a level, by a few readings of the tables and the air at three places instead of a flight: only to tell which levels are worth
/// flying when the thriftiest is sought.
/// </summary>
internal static class LevelEstimate
{
    private static readonly double[] Shares = [1 / 6.0, 0.5, 5 / 6.0];

    /// <summary>The estimate [lb].</summary>
    /// <param name="request">The flight; its level is not looked at.</param>
    /// <param name="level">Level [ft].</param>
    /// <returns>Infinite where the route is too short for the level; null where a reading fails, which a flight must explain.</returns>
    public static double? BurnLb(ProfileRequest request, Feet level)
    {
        var tables = request.Type.Tables;
        if (tables.Climb is not { } climb || tables.Descent is not { } descent || !tables.Cruise.TryGetValue(request.Setting, out var cruise)) return null;
        var track = new ProfileTrack(request.Route, request.Air, request.Takeoff);
        var (weightLb, startFt, endFt) = (request.TakeoffWeight.Value, request.StartElevation.Value, request.EndElevation.Value);
        Span<double> low = stackalloc double[3];
        Span<double> high = stackalloc double[3];
        var middleFt = (startFt + level.Value) / 2;
        var deviationK = StandardAtmosphere.DeviationK(track.Air(track.At(0, 0), middleFt, 0).Temperature, new Feet(middleFt));
        climb.Read([weightLb, deviationK, startFt], low);
        if (!climb.Read([weightLb, deviationK, level.Value], high).IsInside) return null;
        var (hours, burnLb, climbNm) = ((high[0] - low[0]) / 60, high[1] - low[1], high[2] - low[2]);
        descent.Read([endFt], low);
        if (!descent.Read([level.Value], high).IsInside) return null;
        var cruiseNm = track.LengthNm - climbNm - (high[2] - low[2]);
        if (!(cruiseNm > 0)) return double.PositiveInfinity;

        burnLb += high[1] - low[1];
        foreach (var share in Shares)
        {
            var alongNm = climbNm + (cruiseNm * share);
            var segment = SegmentAt(track, alongNm);
            var at = track.At(segment, alongNm);
            var air = track.Air(at, level.Value, hours);
            if (!cruise.Read([weightLb - burnLb, StandardAtmosphere.DeviationK(air.Temperature, level), level.Value], low[..2]).IsInside || !(low[0] > 0))
                return null;
            var solution = WindTriangle.Solve(TrueDegrees.Of(at.AzimuthDeg), new Knots(low[0]), air.WindFrom, air.WindSpeed);
            if (!solution.IsFlyable) return null;
            var third = cruiseNm / Shares.Length / solution.GroundSpeed.Value;
            hours += third;
            burnLb += third * low[1];
        }

        return burnLb;
    }

    private static int SegmentAt(ProfileTrack track, double alongNm)
    {
        var segment = 0;
        while (segment < track.Last && track.EndNm(segment) < alongNm) segment++;
        return segment;
    }
}
