namespace Batch.Flight.Earth;

/// <summary>An oblate ellipsoid of revolution, with what the geodesic series need of it.</summary>
internal sealed class Ellipsoid
{
    /// <summary>Describes an ellipsoid.</summary>
    /// <param name="equatorialRadiusM">Equatorial radius [m], above zero.</param>
    /// <param name="flattening">Flattening, 0 to 0.02; beyond that the series lose their accuracy.</param>
    /// <exception cref="ArgumentOutOfRangeException">The flattening is outside that range, or the radius is not above zero.</exception>
    public Ellipsoid(double equatorialRadiusM, double flattening)
    {
        if (!(equatorialRadiusM > 0)) throw new ArgumentOutOfRangeException(nameof(equatorialRadiusM), equatorialRadiusM, "The radius is above zero.");
        if (!(flattening is >= 0 and <= 0.02)) throw new ArgumentOutOfRangeException(nameof(flattening), flattening, "The flattening is 0 to 0.02.");
        EquatorialRadiusM = equatorialRadiusM;
        Flattening = flattening;
        AxisRatio = 1 - flattening;
        PolarRadiusM = equatorialRadiusM * AxisRatio;
        ThirdFlattening = flattening / (2 - flattening);
        SecondEccentricitySquared = flattening * (2 - flattening) / (AxisRatio * AxisRatio);
    }

    /// <summary>Equatorial radius a [m].</summary>
    public double EquatorialRadiusM { get; }

    /// <summary>Flattening f.</summary>
    public double Flattening { get; }

    /// <summary>1 - f, the ratio of the polar to the equatorial radius.</summary>
    public double AxisRatio { get; }

    /// <summary>Polar radius b [m].</summary>
    public double PolarRadiusM { get; }

    /// <summary>Third flattening n.</summary>
    public double ThirdFlattening { get; }

    /// <summary>Second eccentricity squared, e'^2.</summary>
    public double SecondEccentricitySquared { get; }

    /// <summary>The expansion parameter epsilon of a geodesic (Karney 2013, equations 9 and 16).</summary>
    /// <param name="cosEquatorialAzimuth">Cosine of the azimuth where the geodesic crosses the equator northward.</param>
    public double Epsilon(double cosEquatorialAzimuth)
    {
        var k2 = SecondEccentricitySquared * cosEquatorialAzimuth * cosEquatorialAzimuth;
        return k2 / (2 * (1 + Math.Sqrt(1 + k2)) + k2);
    }

    /// <summary>Sine and cosine of the reduced latitude; the cosine at a pole is tiny, not zero, so that a direction remains.</summary>
    /// <param name="latDeg">Geodetic latitude [deg].</param>
    public (double Sin, double Cos) ReducedLatitude(double latDeg)
    {
        var (sin, cos) = Angle.SinCosDeg(latDeg);
        (sin, cos) = GeodesicInverse.Unit(sin * AxisRatio, cos);
        return (sin, Math.Max(GeodesicInverse.Tiny, cos));
    }
}
