using System.Globalization;

namespace Batch.Flight.Earth;

/// <summary>A place on the WGS84 ellipsoid.</summary>
/// <param name="LatitudeDeg">Geodetic latitude [deg], -90 to 90, north positive.</param>
/// <param name="LongitudeDeg">Longitude [deg], -180 up to but not 180, east positive; build with <see cref="Of"/> to bring it there.</param>
public readonly record struct GeoPoint(double LatitudeDeg, double LongitudeDeg)
{
    /// <summary>The place with its latitude proven and its longitude brought into -180 up to but not 180.</summary>
    /// <param name="latitudeDeg">Geodetic latitude [deg], -90 to 90.</param>
    /// <param name="longitudeDeg">Longitude [deg], any finite angle.</param>
    /// <exception cref="ArgumentOutOfRangeException">The latitude is beyond a pole, or a number is not finite.</exception>
    public static GeoPoint Of(double latitudeDeg, double longitudeDeg)
    {
        if (!(Math.Abs(latitudeDeg) <= 90))
            throw new ArgumentOutOfRangeException(nameof(latitudeDeg), latitudeDeg, "A latitude lies between -90 and 90 degrees.");
        if (!double.IsFinite(longitudeDeg))
            throw new ArgumentOutOfRangeException(nameof(longitudeDeg), longitudeDeg, "A longitude is a finite number of degrees.");
        return new GeoPoint(latitudeDeg, Angle.NormalLongitudeDeg(longitudeDeg));
    }

    /// <summary>Degrees and whole minutes as in a flight plan (ICAO Doc 4444, appendix 2, item 15): <c>4130N03915W</c>.</summary>
    public override string ToString()
    {
        var latitudeMinutes = (int)Math.Round(Math.Abs(LatitudeDeg) * 60, MidpointRounding.AwayFromZero);
        var longitudeMinutes = (int)Math.Round(Math.Abs(LongitudeDeg) * 60, MidpointRounding.AwayFromZero);
        var northSouth = LatitudeDeg < 0 ? 'S' : 'N';
        var eastWest = LongitudeDeg < 0 ? 'W' : 'E';
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{latitudeMinutes / 60:00}{latitudeMinutes % 60:00}{northSouth}{longitudeMinutes / 60:000}{longitudeMinutes % 60:00}{eastWest}");
    }
}
