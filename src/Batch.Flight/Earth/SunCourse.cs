namespace Batch.Flight.Earth;

/// <summary>
/// The sun's altitude over one day at a place. Declination and equation of time are taken at start, middle and end of the day and interpolated by a parabola
/// (error below 0.0001 degree), so that the altitude at any moment is cheap and events can be looked for by steps, polar days included.
/// </summary>
internal readonly struct SunCourse
{
    private const int Steps = 24;
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
        var (fromAt, from) = (0.0, Above(0, limit));
        for (var step = 1; step <= Steps; step++)
        {
            var (toAt, to) = ((double)step / Steps, Above((double)step / Steps, limit));
            var isTurning = from.Value < 0 ? from.Slope > 0 && to.Slope < 0 : from.Slope < 0 && to.Slope > 0;
            if (from.Value < 0 == to.Value < 0 && isTurning)
            {
                // Between two moments on one side the sun may still touch the other side, where it turns.
                var turnAt = Turn(fromAt, toAt, limit, from.Slope > 0);
                var turn = Above(turnAt, limit);
                Note(fromAt, from.Value, turnAt, turn.Value, limit, ref rise, ref fall);
                Note(turnAt, turn.Value, toAt, to.Value, limit, ref rise, ref fall);
            }
            else
            {
                Note(fromAt, from.Value, toAt, to.Value, limit, ref rise, ref fall);
            }

            (fromAt, from) = (toAt, to);
        }

        var state = rise is not null || fall is not null ? SunState.Normal : from.Value >= 0 ? SunState.PolarDay : SunState.PolarNight;
        return (Moment(rise), Moment(fall), state);
    }

    private void Note(double fromAt, double from, double toAt, double to, double limit, ref double? rise, ref double? fall)
    {
        if (from < 0 == to < 0) return;
        if (from < 0) rise ??= Root(fromAt, toAt, limit, rising: true);
        else fall ??= Root(fromAt, toAt, limit, rising: false);
    }

    // Newton's method, halving where it would leave the bracket, to a thousandth of a second.
    private double Root(double lowAt, double highAt, double limit, bool rising)
    {
        var at = (lowAt + highAt) / 2;
        for (var round = 0; round < 60; round++)
        {
            var (value, slope) = Above(at, limit);
            if (value < 0 == rising) lowAt = at;
            else highAt = at;
            var next = at - value / slope;
            if (!(next > lowAt && next < highAt)) next = (lowAt + highAt) / 2;
            var step = Math.Abs(next - at);
            at = next;
            if (step < 1e-8) break;
        }

        return at;
    }

    // Halving on the slope.
    private double Turn(double lowAt, double highAt, double limit, bool isRisingFirst)
    {
        for (var round = 0; round < 30; round++)
        {
            var middle = (lowAt + highAt) / 2;
            if (Above(middle, limit).Slope > 0 == isRisingFirst) lowAt = middle;
            else highAt = middle;
        }

        return (lowAt + highAt) / 2;
    }

    // Sine of the altitude less the sine of the limit, at a fraction of the day, and its change with that fraction.
    private (double Value, double Slope) Above(double fraction, double limit)
    {
        var declination = Parabola(_declinationDeg, fraction) * Angle.RadiansPerDegree;
        var hour = (_startHourDeg + 360 * fraction * _lengthDays + Parabola(_leadDeg, fraction)) * Angle.RadiansPerDegree;
        var (sinDeclination, cosDeclination) = Math.SinCos(declination);
        var (sinHour, cosHour) = Math.SinCos(hour);
        var declinationSlope = Slope(_declinationDeg, fraction) * Angle.RadiansPerDegree;
        var hourSlope = (360 * _lengthDays + Slope(_leadDeg, fraction)) * Angle.RadiansPerDegree;
        var value = _sinLat * sinDeclination + _cosLat * cosDeclination * cosHour - limit;
        var slope = declinationSlope * (_sinLat * cosDeclination - _cosLat * sinDeclination * cosHour) - hourSlope * _cosLat * cosDeclination * sinHour;
        return (value, slope);
    }

    private static double Slope((double First, double Middle, double Last) at, double fraction) =>
        4 * at.Middle - 3 * at.First - at.Last + fraction * 4 * (at.First - 2 * at.Middle + at.Last);

    private static double Parabola((double First, double Middle, double Last) at, double fraction) =>
        at.First + fraction * (4 * at.Middle - 3 * at.First - at.Last + fraction * 2 * (at.First - 2 * at.Middle + at.Last));

    private Instant? Moment(double? fraction)
    {
        if (fraction is not { } known) return null;
        var seconds = Math.Round((_start - SunPosition.J2000).TotalSeconds + known * _lengthDays * 86400);
        return SunPosition.J2000 + Duration.FromSeconds((long)seconds);
    }
}
