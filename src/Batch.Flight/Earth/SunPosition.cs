namespace Batch.Flight.Earth;

/// <summary>Where the sun stands, seen from the earth's centre (Meeus 1998, chapter 25, low accuracy, apparent place).</summary>
/// <param name="DeclinationDeg">Declination [deg].</param>
/// <param name="GreenwichHourAngleDeg">Hour angle at Greenwich [deg], westward, in 360 turns of the day; bring it into a circle before printing.</param>
internal readonly record struct SunPosition(double DeclinationDeg, double GreenwichHourAngleDeg)
{
    private const double DaysPerCentury = 36525;

    /// <summary>The epoch J2000.0, taken in universal time.</summary>
    public static readonly Instant J2000 = Instant.FromUtc(2000, 1, 1, 12, 0);

    /// <summary>The sun at a moment.</summary>
    public static SunPosition At(Instant at)
    {
        var days = (at - J2000).TotalDays;
        return new SunPosition(Apparent(days, out var leadDeg), 360 * (days - Math.Floor(days)) + leadDeg);
    }

    /// <summary>The declination, and by how much the sun leads mean time.</summary>
    /// <param name="days">Days since J2000.0.</param>
    /// <param name="leadDeg">Hour angle at Greenwich at noon of universal time [deg]: the equation of time, within 5 of zero.</param>
    public static double Apparent(double days, out double leadDeg)
    {
        var t = days / DaysPerCentury;
        var meanLongitude = 280.46646 + t * (36000.76983 + t * 0.0003032);
        var anomaly = (357.52911 + t * (35999.05029 - t * 0.0001537)) * Angle.RadiansPerDegree;
        var centre = (1.914602 - t * (0.004817 + t * 0.000014)) * Math.Sin(anomaly)
            + (0.019993 - t * 0.000101) * Math.Sin(2 * anomaly)
            + 0.000289 * Math.Sin(3 * anomaly);
        var (sinNode, cosNode) = Math.SinCos((125.04 - 1934.136 * t) * Angle.RadiansPerDegree);
        var longitude = (meanLongitude + centre - 0.00569 - 0.00478 * sinNode) * Angle.RadiansPerDegree;
        var obliquity = (23.439291 - t * 0.0130042 + 0.00256 * cosNode) * Angle.RadiansPerDegree;
        var (sinLongitude, cosLongitude) = Math.SinCos(longitude);
        var (sinObliquity, cosObliquity) = Math.SinCos(obliquity);
        var rightAscension = Math.Atan2(cosObliquity * sinLongitude, cosLongitude) * Angle.DegreesPerRadian;
        // Sidereal time (Meeus 1998, equation 12.4) less the whole turns of the solar day, corrected for nutation.
        var sidereal = 280.46061837 + 0.98564736629 * days + 0.000387933 * t * t - 0.00478 * sinNode * cosObliquity;
        leadDeg = Math.IEEERemainder(sidereal - rightAscension, 360);
        return Math.Asin(sinObliquity * sinLongitude) * Angle.DegreesPerRadian;
    }
}
