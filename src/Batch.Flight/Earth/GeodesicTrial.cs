using System.Runtime.CompilerServices;

namespace Batch.Flight.Earth;

/// <summary>The geodesic that leaves the first point at a trial azimuth, where it meets the latitude of the second (Karney 2013, section 4).</summary>
[SkipLocalsInit]
internal readonly struct GeodesicTrial
{
    private GeodesicTrial(
        double longitudeMiss, double sinAlpha2, double cosAlpha2, double sigma12, (double Sin, double Cos) sigma1, (double Sin, double Cos) sigma2, double eps)
    {
        LongitudeMiss = longitudeMiss;
        SinAlpha2 = sinAlpha2;
        CosAlpha2 = cosAlpha2;
        Sigma12 = sigma12;
        Sigma1 = sigma1;
        Sigma2 = sigma2;
        Epsilon = eps;
    }

    /// <summary>How far beyond the wanted longitude it arrives [rad]; zero is the answer.</summary>
    public double LongitudeMiss { get; }

    /// <summary>Sine of the azimuth where it arrives.</summary>
    public double SinAlpha2 { get; }

    /// <summary>Cosine of the azimuth where it arrives, at least 0.</summary>
    public double CosAlpha2 { get; }

    /// <summary>Its arc on the auxiliary sphere [rad].</summary>
    public double Sigma12 { get; }

    /// <summary>Arc from the equator to the first point.</summary>
    public (double Sin, double Cos) Sigma1 { get; }

    /// <summary>Arc from the equator to the second point.</summary>
    public (double Sin, double Cos) Sigma2 { get; }

    /// <summary>Its expansion parameter.</summary>
    public double Epsilon { get; }

    /// <summary>The geodesic at a trial azimuth.</summary>
    /// <param name="shape">The ellipsoid.</param>
    /// <param name="pair">The two points.</param>
    /// <param name="sinAlpha1">Sine of the trial azimuth, above 0.</param>
    /// <param name="cosAlpha1">Cosine of the trial azimuth.</param>
    public static GeodesicTrial At(Ellipsoid shape, in CanonicalPair pair, double sinAlpha1, double cosAlpha1)
    {
        var (sinBeta1, cosBeta1, sinBeta2, cosBeta2) = (pair.SinBeta1, pair.CosBeta1, pair.SinBeta2, pair.CosBeta2);
        if (sinBeta1 == 0 && cosAlpha1 == 0) cosAlpha1 = -GeodesicInverse.Tiny;
        var sinAlpha0 = sinAlpha1 * cosBeta1;
        var cosAlpha0 = GeodesicInverse.Length(cosAlpha1, sinAlpha1 * sinBeta1);
        var cosOmega1 = cosAlpha1 * cosBeta1;
        var sinOmega1 = sinAlpha0 * sinBeta1;
        var sigma1 = GeodesicInverse.Unit(sinBeta1, cosOmega1);

        var sinAlpha2 = cosBeta2 != cosBeta1 ? sinAlpha0 / cosBeta2 : sinAlpha1;
        var cosAlpha2 = cosBeta2 != cosBeta1 || Math.Abs(sinBeta2) != -sinBeta1
            ? Math.Sqrt(cosOmega1 * cosOmega1 + (cosBeta1 < -sinBeta1
                ? (cosBeta2 - cosBeta1) * (cosBeta1 + cosBeta2)
                : (sinBeta1 - sinBeta2) * (sinBeta1 + sinBeta2))) / cosBeta2
            : Math.Abs(cosAlpha1);
        var cosOmega2 = cosAlpha2 * cosBeta2;
        var sinOmega2 = sinAlpha0 * sinBeta2;
        var sigma2 = GeodesicInverse.Unit(sinBeta2, cosOmega2);

        var sigma12 = GeodesicInverse.ArcBetween(sigma1.Sin, sigma1.Cos, sigma2.Sin, sigma2.Cos);
        var sinOmega12 = Math.Max(0, cosOmega1 * sinOmega2 - sinOmega1 * cosOmega2);
        var cosOmega12 = cosOmega1 * cosOmega2 + sinOmega1 * sinOmega2;
        var eta = Math.Atan2(
            sinOmega12 * pair.CosLambda12 - cosOmega12 * pair.SinLambda12,
            cosOmega12 * pair.CosLambda12 + sinOmega12 * pair.SinLambda12);
        var eps = shape.Epsilon(cosAlpha0);
        GeodesicSeries.C3(shape.ThirdFlattening, eps, out var c3);
        var b3 = SeriesTerms.SineSum(c3, sigma2.Sin, sigma2.Cos) - SeriesTerms.SineSum(c3, sigma1.Sin, sigma1.Cos);
        var miss = eta - shape.Flattening * GeodesicSeries.A3(shape.ThirdFlattening, eps) * sinAlpha0 * (sigma12 + b3);
        return new GeodesicTrial(miss, sinAlpha2, cosAlpha2, sigma12, sigma1, sigma2, eps);
    }

    /// <summary>Change of the longitude reached with the trial azimuth (Karney 2013, equation 46).</summary>
    public double Slope(Ellipsoid shape, in CanonicalPair pair)
    {
        if (CosAlpha2 == 0) return -2 * shape.AxisRatio * pair.Dn1 / pair.SinBeta1;
        var (_, reduced) = GeodesicInverse.Lengths(Epsilon, Sigma12, Sigma1, pair.Dn1, Sigma2, pair.Dn2);
        return reduced * shape.AxisRatio / (CosAlpha2 * pair.CosBeta2);
    }
}
