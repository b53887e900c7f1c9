using System.Runtime.CompilerServices;

namespace Batch.Flight.Earth;

/// <summary>
/// The inverse problem: Karney 2013, sections 4 and 5, on an oblate ellipsoid. The order of the cases (meridian, equator, short line,
/// astroid start for nearly antipodal points, Newton's method held in a bracket) and its thresholds are those the author gives with his
/// library GeographicLib (MIT licence, Copyright (c) Charles Karney 2009-2022).
/// Locals of the geodesic types are not zeroed on entry: that is done with wide registers, and while their upper halves are in use every call of the
/// mathematics library waits on some processors, so that a solution took five times as long. The compiler still demands that each is assigned. Notation: beta
/// reduced latitude, alpha azimuth, sigma arc on the auxiliary sphere, omega its longitude, lambda longitude; 1 and 2 the ends.
/// </summary>
[SkipLocalsInit]
internal static class GeodesicInverse
{
    /// <summary>The square root of the smallest normal number: stands for zero where a direction must survive.</summary>
    public const double Tiny = 1.4916681462400413e-154;

    private const double Tolerance0 = 2.220446049250313e-16;
    private const double Tolerance2 = 1.4901161193847656e-8;
    private const int NewtonRounds = 20;
    private const int AllRounds = NewtonRounds + 63;

    /// <summary>The shortest line between two points.</summary>
    /// <param name="shape">The ellipsoid.</param>
    /// <param name="lat1Deg">Latitude of the first point [deg], -90 to 90.</param>
    /// <param name="lon1Deg">Longitude of the first point [deg], any.</param>
    /// <param name="lat2Deg">Latitude of the second point [deg], -90 to 90.</param>
    /// <param name="lon2Deg">Longitude of the second point [deg], any.</param>
    public static GeodesicLine Solve(Ellipsoid shape, double lat1Deg, double lon1Deg, double lat2Deg, double lon2Deg)
    {
        var (differenceDeg, errorDeg) = Angle.DifferenceDeg(lon1Deg, lon2Deg);
        var eastSign = differenceDeg < 0 ? -1 : 1;
        differenceDeg *= eastSign;
        errorDeg *= eastSign;
        var swapSign = Math.Abs(lat1Deg) < Math.Abs(lat2Deg) ? -1 : 1;
        if (swapSign < 0)
        {
            eastSign = -eastSign;
            (lat1Deg, lat2Deg) = (lat2Deg, lat1Deg);
        }

        var northSign = lat1Deg < 0 ? 1 : -1;
        var pair = new CanonicalPair(shape, Round(lat1Deg * northSign), Round(lat2Deg * northSign), differenceDeg, errorDeg);
        var solved = Solve(shape, pair);
        if (solved.DistanceM == 0) return new GeodesicLine(0, 0, 0);

        var (sin1, cos1, sin2, cos2) = (solved.SinAlpha1, solved.CosAlpha1, solved.SinAlpha2, solved.CosAlpha2);
        if (swapSign < 0) (sin1, cos1, sin2, cos2) = (sin2, cos2, sin1, cos1);
        var eastward = swapSign * eastSign;
        var northward = swapSign * northSign;
        return new GeodesicLine(
            solved.DistanceM,
            Angle.NormalAzimuthDeg(Angle.Atan2Deg(eastward * sin1, northward * cos1)),
            Angle.NormalAzimuthDeg(Angle.Atan2Deg(eastward * sin2, northward * cos2)));
    }

    /// <summary>A pair of numbers scaled to length one.</summary>
    public static (double Sin, double Cos) Unit(double y, double x)
    {
        var length = Length(y, x);
        return (y / length, x / length);
    }

    /// <summary>The length of a vector whose parts are about one or zero, the tiny ones included.</summary>
    public static double Length(double y, double x) => Math.Sqrt(y * y + x * x);

    // Latitudes below 1e-14 degree are brought to a coarser grid, so that no product of them underflows.
    private static double Round(double deg)
    {
        const double Grid = 1.0 / 16;
        var size = Math.Abs(deg);
        if (size < Grid) size = Grid - (Grid - size);
        return deg < 0 ? 0 - size : size;
    }

    private static Solution Solve(Ellipsoid shape, in CanonicalPair pair)
    {
        if (pair.IsMeridional)
        {
            var sigma12 = ArcBetween(pair.SinBeta1, pair.CosLambda12 * pair.CosBeta1, pair.SinBeta2, pair.CosBeta2);
            var (unit1, unit2) = (Unit(pair.SinBeta1, pair.CosLambda12 * pair.CosBeta1), Unit(pair.SinBeta2, pair.CosBeta2));
            var (length, reduced) = Lengths(shape.ThirdFlattening, sigma12, unit1, pair.Dn1, unit2, pair.Dn2);
            if (sigma12 < 1 || reduced >= 0)
            {
                var isPoint = sigma12 < 3 * Tiny || (sigma12 < Tolerance0 && (length < 0 || reduced < 0));
                return new Solution(isPoint ? 0 : length * shape.PolarRadiusM, pair.SinLambda12, pair.CosLambda12, 0, 1);
            }
        }

        if (pair.SinBeta1 == 0 && pair.SupplementDeg >= shape.Flattening * 180)
            return new Solution(shape.EquatorialRadiusM * pair.Lambda12, 1, 0, 1, 0);

        var start = GeodesicStart.Guess(shape, pair);
        return start.ShortArc >= 0
            ? new Solution(start.ShortArc * shape.PolarRadiusM * start.ShortScale, start.SinAlpha1, start.CosAlpha1, start.SinAlpha2, start.CosAlpha2)
            : Iterate(shape, pair, start.SinAlpha1, start.CosAlpha1);
    }

    private static Solution Iterate(Ellipsoid shape, in CanonicalPair pair, double sinAlpha1, double cosAlpha1)
    {
        var (lowSin, lowCos, highSin, highCos) = (Tiny, 1.0, Tiny, -1.0);
        var (nearlyThere, bracketClosed) = (false, false);
        for (var round = 0; ; round++)
        {
            var trial = GeodesicTrial.At(shape, pair, sinAlpha1, cosAlpha1);
            var miss = trial.LongitudeMiss;
            if (bracketClosed || !(Math.Abs(miss) >= (nearlyThere ? 8 : 1) * Tolerance0) || round == AllRounds)
            {
                var (length, _) = Lengths(trial.Epsilon, trial.Sigma12, trial.Sigma1, pair.Dn1, trial.Sigma2, pair.Dn2);
                return new Solution(length * shape.PolarRadiusM, sinAlpha1, cosAlpha1, trial.SinAlpha2, trial.CosAlpha2);
            }

            if (miss > 0 && (round > NewtonRounds || cosAlpha1 / sinAlpha1 > highCos / highSin)) (highSin, highCos) = (sinAlpha1, cosAlpha1);
            else if (miss < 0 && (round > NewtonRounds || cosAlpha1 / sinAlpha1 < lowCos / lowSin)) (lowSin, lowCos) = (sinAlpha1, cosAlpha1);

            if (round < NewtonRounds)
            {
                var slope = trial.Slope(shape, pair);
                var step = -miss / slope;
                if (slope > 0 && Math.Abs(step) < Math.PI)
                {
                    var (sinStep, cosStep) = Math.SinCos(step);
                    var newSin = sinAlpha1 * cosStep + cosAlpha1 * sinStep;
                    if (newSin > 0)
                    {
                        (sinAlpha1, cosAlpha1) = Unit(newSin, cosAlpha1 * cosStep - sinAlpha1 * sinStep);
                        nearlyThere = Math.Abs(miss) <= 16 * Tolerance0;
                        continue;
                    }
                }
            }

            (sinAlpha1, cosAlpha1) = Unit((lowSin + highSin) / 2, (lowCos + highCos) / 2);
            nearlyThere = false;
            bracketClosed = Math.Abs(lowSin - sinAlpha1) + (lowCos - cosAlpha1) < Tolerance0 * Tolerance2
                || Math.Abs(sinAlpha1 - highSin) + (cosAlpha1 - highCos) < Tolerance0 * Tolerance2;
        }
    }

    /// <summary>The arc [rad], never negative, between two directions given by (not necessarily unit) sine and cosine.</summary>
    public static double ArcBetween(double sin1, double cos1, double sin2, double cos2) =>
        Math.Atan2(Math.Max(0, cos1 * sin2 - sin1 * cos2), cos1 * cos2 + sin1 * sin2);

    /// <summary>Length and reduced length of a geodesic, both over the polar radius (Karney 2013, equations 7, 38 and 40).</summary>
    public static (double Length, double Reduced) Lengths(
        double eps, double sigma12, (double Sin, double Cos) sigma1, double dn1, (double Sin, double Cos) sigma2, double dn2)
    {
        GeodesicSeries.C1(eps, out var c1);
        GeodesicSeries.C2(eps, out var c2);
        var a1 = 1 + GeodesicSeries.A1Less1(eps);
        var a2 = 1 + GeodesicSeries.A2Less1(eps);
        var b1 = SeriesTerms.SineSum(c1, sigma2.Sin, sigma2.Cos) - SeriesTerms.SineSum(c1, sigma1.Sin, sigma1.Cos);
        var b2 = SeriesTerms.SineSum(c2, sigma2.Sin, sigma2.Cos) - SeriesTerms.SineSum(c2, sigma1.Sin, sigma1.Cos);
        var j12 = (a1 - a2) * sigma12 + (a1 * b1 - a2 * b2);
        var reduced = dn2 * (sigma1.Cos * sigma2.Sin) - dn1 * (sigma1.Sin * sigma2.Cos) - sigma1.Cos * sigma2.Cos * j12;
        return (a1 * (sigma12 + b1), reduced);
    }

    private readonly record struct Solution(double DistanceM, double SinAlpha1, double CosAlpha1, double SinAlpha2, double CosAlpha2);
}
