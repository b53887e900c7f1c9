using System.Runtime.CompilerServices;

namespace Batch.Flight.Earth;

/// <summary>The first azimuth tried in the inverse problem; for short lines it is the answer (Karney 2013, section 5).</summary>
/// <param name="ShortArc">The arc [rad] of a short line solved here, else -1.</param>
/// <param name="ShortScale">Scale of that arc to the polar radius.</param>
/// <param name="SinAlpha1">Sine of the azimuth at the first point.</param>
/// <param name="CosAlpha1">Cosine of the azimuth at the first point.</param>
/// <param name="SinAlpha2">Sine of the azimuth at the second point; of a short line only.</param>
/// <param name="CosAlpha2">Cosine of the azimuth at the second point; of a short line only.</param>
[SkipLocalsInit]
internal readonly record struct GeodesicStart(
    double ShortArc, double ShortScale, double SinAlpha1, double CosAlpha1, double SinAlpha2, double CosAlpha2)
{
    private const double Tolerance1 = 200 * 2.220446049250313e-16;
    private const double Tolerance2 = 1.4901161193847656e-8;
    private const double AstroidThreshold = 1000 * Tolerance2;

    /// <summary>The starting azimuth.</summary>
    public static GeodesicStart Guess(Ellipsoid shape, in CanonicalPair pair)
    {
        var (sinBeta1, cosBeta1, sinBeta2, cosBeta2) = (pair.SinBeta1, pair.CosBeta1, pair.SinBeta2, pair.CosBeta2);
        var sinDifference = sinBeta2 * cosBeta1 - cosBeta2 * sinBeta1;
        var cosDifference = cosBeta2 * cosBeta1 + sinBeta2 * sinBeta1;
        var sinSum = sinBeta2 * cosBeta1 + cosBeta2 * sinBeta1;
        var isShort = cosDifference >= 0 && sinDifference < 0.5 && cosBeta2 * pair.Lambda12 < 0.5;
        var (sinOmega, cosOmega) = (pair.SinLambda12, pair.CosLambda12);
        var scale = 0.0;
        if (isShort)
        {
            // A sphere that fits the mean latitude (Karney 2013, equation 48).
            var sinSquared = (sinBeta1 + sinBeta2) * (sinBeta1 + sinBeta2);
            sinSquared /= sinSquared + (cosBeta1 + cosBeta2) * (cosBeta1 + cosBeta2);
            scale = Math.Sqrt(1 + shape.SecondEccentricitySquared * sinSquared);
            (sinOmega, cosOmega) = Math.SinCos(pair.Lambda12 / (shape.AxisRatio * scale));
        }

        var sinAlpha1 = cosBeta2 * sinOmega;
        var cosAlpha1 = cosOmega >= 0
            ? sinDifference + cosBeta2 * sinBeta1 * sinOmega * sinOmega / (1 + cosOmega)
            : sinSum - cosBeta2 * sinBeta1 * sinOmega * sinOmega / (1 - cosOmega);
        var sinSigma = GeodesicInverse.Length(sinAlpha1, cosAlpha1);
        var cosSigma = sinBeta1 * sinBeta2 + cosBeta1 * cosBeta2 * cosOmega;
        if (isShort && sinSigma < ShortLimit(shape.Flattening))
        {
            var cosAlpha2 = sinDifference - cosBeta1 * sinBeta2 * (cosOmega >= 0 ? sinOmega * sinOmega / (1 + cosOmega) : 1 - cosOmega);
            var (sin2, cos2) = GeodesicInverse.Unit(cosBeta1 * sinOmega, cosAlpha2);
            var (sin1, cos1) = GeodesicInverse.Unit(sinAlpha1, cosAlpha1);
            return new GeodesicStart(Math.Atan2(sinSigma, cosSigma), scale, sin1, cos1, sin2, cos2);
        }

        if (cosSigma < 0 && sinSigma < 6 * shape.ThirdFlattening * Math.PI * cosBeta1 * cosBeta1)
            (sinAlpha1, cosAlpha1) = NearlyAntipodal(shape, pair, sinSum);
        return sinAlpha1 > 0 ? Of(GeodesicInverse.Unit(sinAlpha1, cosAlpha1)) : Of((1, 0));

        static GeodesicStart Of((double Sin, double Cos) alpha1) => new(-1, 0, alpha1.Sin, alpha1.Cos, 0, 0);
    }

    // Below this arc the line on the fitted sphere is as exact as the series (after Karney 2013, section 5).
    private static double ShortLimit(double flattening) =>
        0.1 * Tolerance2 / Math.Sqrt(Math.Max(0.001, flattening) * Math.Min(1, 1 - flattening / 2) / 2);

    // Karney 2013, equations 51 to 57: the geodesics near the antipode touch an astroid.
    private static (double Sin, double Cos) NearlyAntipodal(Ellipsoid shape, in CanonicalPair pair, double sinSum)
    {
        var eps = shape.Epsilon(pair.SinBeta1);
        var longitudeScale = shape.Flattening * pair.CosBeta1 * GeodesicSeries.A3(shape.ThirdFlattening, eps) * Math.PI;
        var x = Math.Atan2(-pair.SinLambda12, -pair.CosLambda12) / longitudeScale;
        var y = sinSum / (longitudeScale * pair.CosBeta1);
        if (y > -Tolerance1 && x > -1 - AstroidThreshold)
        {
            var sin = Math.Min(1, -x);
            return (sin, -Math.Sqrt(1 - sin * sin));
        }

        var k = Astroid(x, y);
        var (sinOmega, cosOmega) = Math.SinCos(longitudeScale * -x * k / (1 + k));
        return (pair.CosBeta2 * sinOmega, sinSum - pair.CosBeta2 * pair.SinBeta1 * sinOmega * sinOmega / (1 + cosOmega));
    }

    // The positive root of k^4 + 2 k^3 - (x^2 + y^2 - 1) k^2 - 2 y^2 k - y^2 = 0 (Karney 2013, equation 55, solved by radicals).
    private static double Astroid(double x, double y)
    {
        var p = x * x;
        var q = y * y;
        var r = (p + q - 1) / 6;
        if (q == 0 && r <= 0) return 0;
        var s = p * q / 4;
        var r3 = r * r * r;
        var discriminant = s * (s + 2 * r3);
        var u = r;
        if (discriminant >= 0)
        {
            var cube = s + r3;
            cube += cube < 0 ? -Math.Sqrt(discriminant) : Math.Sqrt(discriminant);
            var t = Math.Cbrt(cube);
            u += t + (t != 0 ? r * r / t : 0);
        }
        else
        {
            u += 2 * r * Math.Cos(Math.Atan2(Math.Sqrt(-discriminant), -(s + r3)) / 3);
        }

        var v = Math.Sqrt(u * u + q);
        var uv = u < 0 ? q / (v - u) : u + v;
        var w = (uv - q) / (2 * v);
        return uv / (Math.Sqrt(uv + w * w) + w);
    }
}
