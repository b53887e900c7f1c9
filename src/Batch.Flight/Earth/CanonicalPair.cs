using System.Runtime.CompilerServices;

namespace Batch.Flight.Earth;

/// <summary>
/// Two points turned by the symmetries of the ellipsoid so that the first is the farther from the equator, south of it, and the second lies east of it
/// (Karney 2013, equation 44): lat1 at most 0, |lat2| at most |lat1|, 0 to 180 degrees of longitude between them.
/// </summary>
[SkipLocalsInit]
internal readonly struct CanonicalPair
{
    /// <summary>Prepares the pair.</summary>
    /// <param name="shape">The ellipsoid.</param>
    /// <param name="lat1Deg">Latitude of the first [deg].</param>
    /// <param name="lat2Deg">Latitude of the second [deg].</param>
    /// <param name="differenceDeg">Difference of longitude [deg], 0 to 180.</param>
    /// <param name="errorDeg">What rounding took from that difference [deg].</param>
    public CanonicalPair(Ellipsoid shape, double lat1Deg, double lat2Deg, double differenceDeg, double errorDeg)
    {
        (SinBeta1, CosBeta1) = shape.ReducedLatitude(lat1Deg);
        (SinBeta2, CosBeta2) = shape.ReducedLatitude(lat2Deg);
        if (CosBeta1 < -SinBeta1)
        {
            if (CosBeta2 == CosBeta1) SinBeta2 = Math.CopySign(SinBeta1, SinBeta2);
        }
        else if (Math.Abs(SinBeta2) == -SinBeta1)
        {
            CosBeta2 = CosBeta1;
        }

        Dn1 = Math.Sqrt(1 + shape.SecondEccentricitySquared * SinBeta1 * SinBeta1);
        Dn2 = Math.Sqrt(1 + shape.SecondEccentricitySquared * SinBeta2 * SinBeta2);
        Lambda12 = (differenceDeg + errorDeg) * Angle.RadiansPerDegree;
        (SinLambda12, CosLambda12) = Angle.SinCosDeg(differenceDeg, errorDeg);
        SupplementDeg = 180 - differenceDeg - errorDeg;
        IsMeridional = lat1Deg == -90 || SinLambda12 == 0;
    }

    /// <summary>Sine of the reduced latitude of the first point, at most 0.</summary>
    public double SinBeta1 { get; }

    /// <summary>Cosine of the reduced latitude of the first point, above 0.</summary>
    public double CosBeta1 { get; }

    /// <summary>Sine of the reduced latitude of the second point.</summary>
    public double SinBeta2 { get; }

    /// <summary>Cosine of the reduced latitude of the second point, above 0.</summary>
    public double CosBeta2 { get; }

    /// <summary>sqrt(1 + e'^2 sin^2 beta1).</summary>
    public double Dn1 { get; }

    /// <summary>sqrt(1 + e'^2 sin^2 beta2).</summary>
    public double Dn2 { get; }

    /// <summary>Difference of longitude [rad], 0 to pi.</summary>
    public double Lambda12 { get; }

    /// <summary>Its sine.</summary>
    public double SinLambda12 { get; }

    /// <summary>Its cosine.</summary>
    public double CosLambda12 { get; }

    /// <summary>180 degrees less the difference of longitude [deg].</summary>
    public double SupplementDeg { get; }

    /// <summary>Both points lie on one meridian, or the first is a pole.</summary>
    public bool IsMeridional { get; }
}
