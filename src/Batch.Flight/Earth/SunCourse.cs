namespace Batch.Flight.Earth;

/// <summary>
/// The sun's altitude over one day at a place. Declination and equation of time are taken at start, middle and end of the day and interpolated by a parabola
/// (error below 0.0001 degree), so that the altitude at any moment is cheap and events can be looked for by steps, polar days included.
/// </summary>
internal readonly struct SunCourse
{
    private const int Steps = 48;
    private readonly Instant _start;
    private readonly double _lengthDays;
    private readonly double _startHourDeg;
    private readonly double _sinLat;
    private readonly double _cosLat;
    private readonly (double First, double Middle, double Last) _declinationDeg;
    private readonly (double First, double Middle, double Last) _leadDeg;

    /// <summary>Prepares a day.</summary>
    /// <param name="start">Its start.</param>
    /// <param name="end">Its end, at most some 30 hours later.</param>
    /// <param name="place">The place.</param>
    public SunCourse(Instant start, Instant end, GeoPoint place)
    {
        _start = start;
        _lengthDays = (end - start).TotalDays;
        var days = (start - SunPosition.J2000).TotalDays;
        _startHourDeg = 360 * (days - Math.Floor(days)) + place.LongitudeDeg;
        (_sinLat, _cosLat) = Angle.SinCosDeg(place.LatitudeDeg);
        _declinationDeg.First = SunPosition.Apparent(days, out _leadDeg.First);
        _declinationDeg.Middle = SunPosition.Apparent(days + _lengthDays / 2, out _leadDeg.Middle);
        _declinationDeg.Last = SunPosition.Apparent(days + _lengthDays, out _leadDeg.Last);
    }

    /// <summary>The first rise above and the first fall below an altitude inside the day, and what the sun does if there is neither.</summary>
    /// <param name="altitudeDeg">The altitude of the sun's centre [deg].</param>
    public (Instant? Rise, Instant? Fall, SunState State) Crossings(double altitudeDeg)
    {
        var limit = Math.Sin(altitudeDeg * Angle.RadiansPerDegree);
        double? rise = null, fall = null;
        double beforeAt = 0, hereAt = 0, before = Above(0, limit), here = before;
        for (var step = 1; step <= Steps; step++)
        {
            var nextAt = (double)step / Steps;
            var next = Above(nextAt, limit);
            // Between three steps on one side the sun may still touch the other side: look at the turning point.
            if (step > 1 && here < 0 == before < 0 && here < 0 == next < 0 && Math.Abs(here) <= Math.Abs(before) && Math.Abs(here) <= Math.Abs(next))
            {
                var (turnAt, turn) = Turn(beforeAt, nextAt, limit, here < 0 ? 1 : -1);
                if (turn < 0 != here < 0)
                {
                    Note(beforeAt, before, turnAt, turn, limit, ref rise, ref fall);
                    Note(turnAt, turn, nextAt, next, limit, ref rise, ref fall);
                }
            }

            Note(hereAt, here, nextAt, next, limit, ref rise, ref fall);
            (beforeAt, before, hereAt, here) = (hereAt, here, nextAt, next);
        }

        var state = rise is not null || fall is not null ? SunState.Normal : here >= 0 ? SunState.PolarDay : SunState.PolarNight;
        return (Moment(rise), Moment(fall), state);
    }

    private void Note(double fromAt, double from, double toAt, double to, double limit, ref double? rise, ref double? fall)
    {
        if (from < 0 == to < 0) return;
        if (from < 0) rise ??= Root(fromAt, toAt, limit, rising: true);
        else fall ??= Root(fromAt, toAt, limit, rising: false);
    }

    // Halving; 32 rounds of half an hour are below a microsecond.
    private double Root(double lowAt, double highAt, double limit, bool rising)
    {
        for (var round = 0; round < 32; round++)
        {
            var middle = (lowAt + highAt) / 2;
            if (Above(middle, limit) < 0 == rising) lowAt = middle;
            else highAt = middle;
        }

        return (lowAt + highAt) / 2;
    }

    // Golden section for the highest (sign 1) or lowest (sign -1) altitude between two moments.
    private (double At, double Value) Turn(double lowAt, double highAt, double limit, int sign)
    {
        const double Golden = 0.6180339887498949;
        for (var round = 0; round < 40; round++)
        {
            var (left, right) = (highAt - Golden * (highAt - lowAt), lowAt + Golden * (highAt - lowAt));
            if (sign * Above(left, limit) >= sign * Above(right, limit)) highAt = right;
            else lowAt = left;
        }

        var at = (lowAt + highAt) / 2;
        return (at, Above(at, limit));
    }

    // Sine of the altitude less the sine of the limit, at a fraction of the day.
    private double Above(double fraction, double limit)
    {
        var declinationDeg = Parabola(_declinationDeg, fraction);
        var hourDeg = _startHourDeg + 360 * fraction * _lengthDays + Parabola(_leadDeg, fraction);
        var (sinDeclination, cosDeclination) = Math.SinCos(declinationDeg * Angle.RadiansPerDegree);
        return _sinLat * sinDeclination + _cosLat * cosDeclination * Math.Cos(hourDeg * Angle.RadiansPerDegree) - limit;
    }

    private static double Parabola((double First, double Middle, double Last) at, double fraction) =>
        at.First + fraction * (4 * at.Middle - 3 * at.First - at.Last + fraction * 2 * (at.First - 2 * at.Middle + at.Last));

    private Instant? Moment(double? fraction)
    {
        if (fraction is not { } known) return null;
        var seconds = Math.Round((_start - SunPosition.J2000).TotalSeconds + known * _lengthDays * 86400);
        return SunPosition.J2000 + Duration.FromSeconds((long)seconds);
    }
}
