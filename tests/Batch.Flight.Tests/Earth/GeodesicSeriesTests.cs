using Batch.Flight.Earth;

namespace Batch.Flight.Tests.Earth;

/// <summary>The expansions against the integrals they stand for (Karney 2013, equations 7, 8 and 40), integrated numerically.</summary>
public sealed class GeodesicSeriesTests
{
    [Theory]
    [InlineData(0.0005)]
    [InlineData(0.00168)]
    public void The_series_of_order_six_are_the_integrals(double eps)
    {
        var k2 = 4 * eps / ((1 - eps) * (1 - eps));
        for (var sigma = 0.1; sigma < 6; sigma += 0.37)
        {
            GeodesicSeries.C1(eps, out var c1);
            GeodesicSeries.C2(eps, out var c2);
            var (sin, cos) = Math.SinCos(sigma);
            var first = (1 + GeodesicSeries.A1Less1(eps)) * (sigma + SeriesTerms.SineSum(c1, sin, cos));
            var second = (1 + GeodesicSeries.A2Less1(eps)) * (sigma + SeriesTerms.SineSum(c2, sin, cos));
            Assert.Equal(Integral(s => Math.Sqrt(1 + k2 * s * s), sigma), first, 1e-13);
            Assert.Equal(Integral(s => 1 / Math.Sqrt(1 + k2 * s * s), sigma), second, 1e-13);
        }
    }

    [Theory]
    [InlineData(0.0005)]
    [InlineData(0.00168)]
    public void The_longitude_series_is_its_integral(double eps)
    {
        const double F = 1 / 298.257223563;
        var n = F / (2 - F);
        var k2 = 4 * eps / ((1 - eps) * (1 - eps));
        for (var sigma = 0.1; sigma < 6; sigma += 0.37)
        {
            GeodesicSeries.C3(n, eps, out var c3);
            var (sin, cos) = Math.SinCos(sigma);
            var third = GeodesicSeries.A3(n, eps) * (sigma + SeriesTerms.SineSum(c3, sin, cos));
            Assert.Equal(Integral(s => (2 - F) / (1 + (1 - F) * Math.Sqrt(1 + k2 * s * s)), sigma), third, 1e-13);
        }
    }

    [Theory]
    [InlineData(0.0005)]
    [InlineData(0.00168)]
    public void The_reverted_series_undoes_the_first(double eps)
    {
        GeodesicSeries.C1(eps, out var c1);
        GeodesicSeries.C1Reverted(eps, out var reverted);
        for (var sigma = -3.0; sigma < 3; sigma += 0.21)
        {
            var tau = sigma + SeriesTerms.SineSum(c1, Math.Sin(sigma), Math.Cos(sigma));
            Assert.Equal(sigma, tau + SeriesTerms.SineSum(reverted, Math.Sin(tau), Math.Cos(tau)), 1e-14);
        }
    }

    // Gauss-Legendre with five points on 400 pieces.
    private static double Integral(Func<double, double> ofSine, double to)
    {
        double[] at = [0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640];
        double[] weight = [0.5688888888888889, 0.4786286704993665, 0.4786286704993665, 0.2369268850561891, 0.2369268850561891];
        const int Pieces = 400;
        var half = to / Pieces / 2;
        var sum = 0.0;
        for (var i = 0; i < Pieces; i++)
        {
            for (var j = 0; j < 5; j++) sum += weight[j] * ofSine(Math.Sin(half * (2 * i + 1 + at[j])));
        }

        return sum * half;
    }
}
