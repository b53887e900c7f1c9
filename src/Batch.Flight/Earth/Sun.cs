namespace Batch.Flight.Earth;

/// <summary>
/// Sunrise, sunset and civil twilight (J. Meeus, Astronomical Algorithms, second edition 1998, chapters 12 and 25: the low accuracy sun, good to 0.01 degree;
/// the method of NOAA's solar calculator). Sunrise and sunset: the sun's centre at zenith distance 90.833 degrees (34' of refraction, 16' of radius, sea
/// level); civil twilight: 96 degrees. Agrees with almanacs to a minute, beyond 65 degrees of latitude to two.
/// </summary>
public static class Sun
{
    /// <summary>
    /// Altitude of the sun's centre at sunrise and sunset [deg]: 90 less the official zenith distance of 90 deg 50' (USNO, Almanac for Computers 1990).
    /// </summary>
    public const double HorizonAltitudeDeg = -50.0 / 60;

    /// <summary>Altitude of the sun's centre at the end of evening and the start of morning civil twilight [deg] (USNO; used by 14 CFR 1.1 "night").</summary>
    public const double CivilTwilightAltitudeDeg = -6;

    /// <summary>
    /// The events inside one local civil day, which may be 23 or 25 hours long. An event that does not happen that day is null; of two sunrises in one day
    /// (possible near the start and end of polar day) the first is given. Times are given to the second.
    /// </summary>
    /// <param name="date">The local date.</param>
    /// <param name="zone">The zone whose midnights bound the day.</param>
    /// <param name="place">The place.</param>
    public static SunDay On(LocalDate date, DateTimeZone zone, GeoPoint place)
    {
        var start = zone.AtStartOfDay(date).ToInstant();
        var end = zone.AtStartOfDay(date.PlusDays(1)).ToInstant();
        var course = new SunCourse(start, end, place);
        var (sunrise, sunset, dayState) = course.Crossings(HorizonAltitudeDeg);
        var (dawn, dusk, civilState) = course.Crossings(CivilTwilightAltitudeDeg);
        return new SunDay { Sunrise = sunrise, Sunset = sunset, CivilDawn = dawn, CivilDusk = dusk, DayState = dayState, CivilState = civilState };
    }

    /// <summary>The altitude of the sun's centre above the true horizon [deg], without refraction.</summary>
    /// <param name="at">The moment.</param>
    /// <param name="place">The place.</param>
    public static double AltitudeDeg(Instant at, GeoPoint place)
    {
        var sun = SunPosition.At(at);
        var (sinLat, cosLat) = Angle.SinCosDeg(place.LatitudeDeg);
        var (sinDeclination, cosDeclination) = Angle.SinCosDeg(sun.DeclinationDeg);
        var (_, cosHour) = Angle.SinCosDeg(sun.GreenwichHourAngleDeg + place.LongitudeDeg);
        return Math.Asin(Math.Clamp(sinLat * sinDeclination + cosLat * cosDeclination * cosHour, -1, 1)) * Angle.DegreesPerRadian;
    }

    /// <summary>Whether it is night: between the end of evening and the start of morning civil twilight (14 CFR 1.1).</summary>
    /// <param name="at">The moment.</param>
    /// <param name="place">The place.</param>
    public static bool IsNight(Instant at, GeoPoint place) => AltitudeDeg(at, place) < CivilTwilightAltitudeDeg;

    /// <summary>Whether the sun is down.</summary>
    /// <param name="at">The moment.</param>
    /// <param name="place">The place.</param>
    public static bool IsBetweenSunsetAndSunrise(Instant at, GeoPoint place) => AltitudeDeg(at, place) < HorizonAltitudeDeg;
}
