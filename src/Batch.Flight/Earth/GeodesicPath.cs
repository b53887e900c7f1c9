namespace Batch.Flight.Earth;

/// <summary>One geodesic between two places, prepared once so that many positions on it are cheap.</summary>
public sealed class GeodesicPath
{
    private readonly GeodesicRay _ray;

    /// <summary>Prepares the shortest line between two places; coincident places are allowed and give a length of zero.</summary>
    /// <param name="from">The first place.</param>
    /// <param name="to">The second place.</param>
    public GeodesicPath(GeoPoint from, GeoPoint to)
    {
        var line = Geodesic.Inverse(from, to);
        From = from;
        To = to;
        Length = NauticalMiles.FromMetres(line.DistanceM);
        InitialCourse = TrueDegrees.Of(line.InitialAzimuthDeg);
        FinalCourse = TrueDegrees.Of(line.FinalAzimuthDeg);
        _ray = new GeodesicRay(Geodesic.Wgs84, from.LatitudeDeg, from.LongitudeDeg, line.InitialAzimuthDeg);
    }

    /// <summary>The first place.</summary>
    public GeoPoint From { get; }

    /// <summary>The second place.</summary>
    public GeoPoint To { get; }

    /// <summary>The length of the line.</summary>
    public NauticalMiles Length { get; }

    /// <summary>The true course at the first place.</summary>
    public TrueDegrees InitialCourse { get; }

    /// <summary>The true course at the second place.</summary>
    public TrueDegrees FinalCourse { get; }

    /// <summary>The position at a distance from the first place; beyond the ends the line goes on.</summary>
    /// <param name="distanceNm">The distance from the first place [NM].</param>
    public GeodesicEnd At(double distanceNm) => _ray.At(distanceNm * NauticalMiles.MetresPerNauticalMile);
}
