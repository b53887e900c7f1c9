using System.Runtime.CompilerServices;

namespace Batch.Flight.Earth;

/// <summary>
/// A geodesic from a place in a direction: the direct problem (Karney 2013, section 3), with everything that does not depend on the distance prepared.
/// </summary>
[SkipLocalsInit]
internal readonly struct GeodesicRay
{
    private readonly double _axisRatio;
    private readonly double _lonDeg;
    private readonly double _sinAlpha0;
    private readonly double _cosAlpha0;
    private readonly double _sinSigma1;
    private readonly double _cosSigma1;
    private readonly double _sinOmega1;
    private readonly double _cosOmega1;
    private readonly double _sinTau1;
    private readonly double _cosTau1;
    private readonly double _series1AtStart;
    private readonly double _series3AtStart;
    private readonly double _distanceScaleM;
    private readonly double _longitudeScale;
    private readonly SeriesTerms _arcTerms;
    private readonly SeriesTerms _longitudeTerms;

    /// <summary>Prepares the geodesic.</summary>
    /// <param name="shape">The ellipsoid.</param>
    /// <param name="latDeg">Latitude of the start [deg].</param>
    /// <param name="lonDeg">Longitude of the start [deg].</param>
    /// <param name="azimuthDeg">True direction at the start [deg].</param>
    public GeodesicRay(Ellipsoid shape, double latDeg, double lonDeg, double azimuthDeg)
    {
        _axisRatio = shape.AxisRatio;
        _lonDeg = lonDeg;
        var (sinAlpha1, cosAlpha1) = Angle.SinCosDeg(azimuthDeg);
        var (sinBeta1, cosBeta1) = shape.ReducedLatitude(latDeg);
        _sinAlpha0 = sinAlpha1 * cosBeta1;
        _cosAlpha0 = GeodesicInverse.Length(cosAlpha1, sinAlpha1 * sinBeta1);
        _sinOmega1 = _sinAlpha0 * sinBeta1;
        _cosOmega1 = sinBeta1 != 0 || cosAlpha1 != 0 ? cosBeta1 * cosAlpha1 : 1;
        (_sinSigma1, _cosSigma1) = GeodesicInverse.Unit(sinBeta1, _cosOmega1);

        var eps = shape.Epsilon(_cosAlpha0);
        GeodesicSeries.C1(eps, out var distanceTerms);
        _series1AtStart = SeriesTerms.SineSum(distanceTerms, _sinSigma1, _cosSigma1);
        var (sin, cos) = Math.SinCos(_series1AtStart);
        _sinTau1 = _sinSigma1 * cos + _cosSigma1 * sin;
        _cosTau1 = _cosSigma1 * cos - _sinSigma1 * sin;
        GeodesicSeries.C1Reverted(eps, out _arcTerms);
        _distanceScaleM = shape.PolarRadiusM * (1 + GeodesicSeries.A1Less1(eps));

        GeodesicSeries.C3(shape.ThirdFlattening, eps, out _longitudeTerms);
        _longitudeScale = -shape.Flattening * _sinAlpha0 * GeodesicSeries.A3(shape.ThirdFlattening, eps);
        _series3AtStart = SeriesTerms.SineSum(_longitudeTerms, _sinSigma1, _cosSigma1);
    }

    /// <summary>The place at a distance and the direction there.</summary>
    /// <param name="distanceM">The distance [m]; negative goes backward.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public GeodesicEnd At(double distanceM)
    {
        var tau12 = distanceM / _distanceScaleM;
        var (sin, cos) = Math.SinCos(tau12);
        var reverted = SeriesTerms.SineSum(_arcTerms, _sinTau1 * cos + _cosTau1 * sin, _cosTau1 * cos - _sinTau1 * sin);
        var sigma12 = tau12 + reverted + _series1AtStart;
        var (sinSigma12, cosSigma12) = Math.SinCos(sigma12);
        var sinSigma2 = _sinSigma1 * cosSigma12 + _cosSigma1 * sinSigma12;
        var cosSigma2 = _cosSigma1 * cosSigma12 - _sinSigma1 * sinSigma12;

        var sinBeta2 = _cosAlpha0 * sinSigma2;
        var cosBeta2 = GeodesicInverse.Length(_sinAlpha0, _cosAlpha0 * cosSigma2);
        if (cosBeta2 == 0) cosBeta2 = cosSigma2 = GeodesicInverse.Tiny;
        var sinOmega2 = _sinAlpha0 * sinSigma2;
        var omega12 = Math.Atan2(sinOmega2 * _cosOmega1 - cosSigma2 * _sinOmega1, cosSigma2 * _cosOmega1 + sinOmega2 * _sinOmega1);
        var series3 = SeriesTerms.SineSum(_longitudeTerms, sinSigma2, cosSigma2) - _series3AtStart;
        var lambda12 = omega12 + _longitudeScale * (sigma12 + series3);

        var latDeg = Angle.Atan2Deg(sinBeta2, _axisRatio * cosBeta2);
        var lonDeg = Angle.NormalLongitudeDeg(_lonDeg + lambda12 * Angle.DegreesPerRadian);
        var azimuthDeg = Angle.NormalAzimuthDeg(Angle.Atan2Deg(_sinAlpha0, _cosAlpha0 * cosSigma2));
        return new GeodesicEnd(new GeoPoint(latDeg, lonDeg), azimuthDeg);
    }
}
