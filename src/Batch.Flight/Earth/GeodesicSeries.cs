using System.Runtime.CompilerServices;

namespace Batch.Flight.Earth;

/// <summary>The expansions of the geodesic integrals in the small parameter epsilon, to order 6 (Karney 2013, equations 17 to 25 and 41 to 43).</summary>
[SkipLocalsInit]
internal static class GeodesicSeries
{
    /// <summary>A1 less 1 (equation 17).</summary>
    public static double A1Less1(double eps)
    {
        var e2 = eps * eps;
        return (e2 * (1.0 / 4 + e2 * (1.0 / 64 + e2 / 256)) + eps) / (1 - eps);
    }

    /// <summary>C1 (equation 18): distance from arc.</summary>
    public static void C1(double eps, out SeriesTerms c)
    {
        var e2 = eps * eps;
        var power = eps;
        Unsafe.SkipInit(out c); // all but the first, which is not used, are set below
        c[1] = power * (-1.0 / 2 + e2 * (3.0 / 16 - e2 / 32));
        power *= eps;
        c[2] = power * (-1.0 / 16 + e2 * (1.0 / 32 - e2 * 9 / 2048));
        power *= eps;
        c[3] = power * (-1.0 / 48 + e2 * 3 / 256);
        power *= eps;
        c[4] = power * (-5.0 / 512 + e2 * 3 / 512);
        power *= eps;
        c[5] = power * (-7.0 / 1280);
        power *= eps;
        c[6] = power * (-7.0 / 2048);
    }

    /// <summary>C1' (equation 21): arc from distance.</summary>
    public static void C1Reverted(double eps, out SeriesTerms c)
    {
        var e2 = eps * eps;
        var power = eps;
        Unsafe.SkipInit(out c);
        c[1] = power * (1.0 / 2 + e2 * (-9.0 / 32 + e2 * 205 / 1536));
        power *= eps;
        c[2] = power * (5.0 / 16 + e2 * (-37.0 / 96 + e2 * 1335 / 4096));
        power *= eps;
        c[3] = power * (29.0 / 96 - e2 * 75 / 128);
        power *= eps;
        c[4] = power * (539.0 / 1536 - e2 * 2391 / 2560);
        power *= eps;
        c[5] = power * (3467.0 / 7680);
        power *= eps;
        c[6] = power * (38081.0 / 61440);
    }

    /// <summary>A2 less 1 (equation 42).</summary>
    public static double A2Less1(double eps)
    {
        var e2 = eps * eps;
        return (1 - eps) * (1 + e2 * (1.0 / 4 + e2 * (9.0 / 64 + e2 * 25 / 256))) - 1;
    }

    /// <summary>C2 (equation 43): reduced length.</summary>
    public static void C2(double eps, out SeriesTerms c)
    {
        var e2 = eps * eps;
        var power = eps;
        Unsafe.SkipInit(out c);
        c[1] = power * (1.0 / 2 + e2 * (1.0 / 16 + e2 / 32));
        power *= eps;
        c[2] = power * (3.0 / 16 + e2 * (1.0 / 32 + e2 * 35 / 2048));
        power *= eps;
        c[3] = power * (5.0 / 48 + e2 * 5 / 256);
        power *= eps;
        c[4] = power * (35.0 / 512 + e2 * 7 / 512);
        power *= eps;
        c[5] = power * (63.0 / 1280);
        power *= eps;
        c[6] = power * (77.0 / 2048);
    }

    /// <summary>A3 (equation 24): longitude.</summary>
    /// <param name="n">Third flattening of the ellipsoid.</param>
    /// <param name="eps">The small parameter.</param>
    public static double A3(double n, double eps) =>
        1 - eps * ((1 - n) / 2 + eps * ((2 + n * (1 - 3 * n)) / 8 + eps * ((1 + n * (3 + n)) / 16 + eps * ((3 + 2 * n) / 64 + eps * 3 / 128))));

    /// <summary>C3 (equation 25): longitude.</summary>
    /// <param name="n">Third flattening of the ellipsoid.</param>
    /// <param name="eps">The small parameter.</param>
    /// <param name="c">The coefficients; the sixth is zero at this order.</param>
    public static void C3(double n, double eps, out SeriesTerms c)
    {
        var power = eps;
        Unsafe.SkipInit(out c);
        c[1] = power * ((1 - n) / 4 + eps * ((1 - n * n) / 8 + eps * ((3 + n * (3 - n)) / 64 + eps * ((5 + 2 * n) / 128 + eps * 3 / 128))));
        power *= eps;
        c[2] = power * ((2 + n * (n - 3)) / 32 + eps * ((3 - n * (2 + 3 * n)) / 64 + eps * ((3 + n) / 128 + eps * 5 / 256)));
        power *= eps;
        c[3] = power * ((5 + n * (5 * n - 9)) / 192 + eps * ((9 - 10 * n) / 384 + eps * 7 / 512));
        power *= eps;
        c[4] = power * ((7 - 14 * n) / 512 + eps * 7 / 512);
        power *= eps;
        c[5] = power * (21.0 / 2560);
        c[6] = 0;
    }
}
