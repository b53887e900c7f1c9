using System.Runtime.CompilerServices;
using Batch.Flight.Earth;

namespace Batch.Flight.Air;

/// <summary>All the columns valid during one span of time.</summary>
internal sealed class AirSlice
{
    private const int Nearest = 4;
    private const double SamePlaceChordSquared = 1e-14; // 0.6 m on the earth

    private readonly double[] _x;
    private readonly double[] _y;
    private readonly double[] _z;
    private readonly AirColumn[] _columns;
    private readonly AirColumn? _everywhere;
    private readonly bool _allHaveTemperature;

    /// <summary>Prepares a slice.</summary>
    /// <param name="stations">The places with a valid column, from south to north.</param>
    /// <param name="columns">Their columns.</param>
    /// <param name="everywhere">The column that is valid everywhere, if there is one.</param>
    public AirSlice(AirStation[] stations, AirColumn[] columns, AirColumn? everywhere)
    {
        _x = [.. stations.Select(s => s.X)];
        _y = [.. stations.Select(s => s.Y)];
        _z = [.. stations.Select(s => s.Z)];
        _columns = columns;
        _everywhere = everywhere;
        _allHaveTemperature = columns.All(c => c.HasTemperature);
    }

    /// <summary>Altitude of the lowest wind of the nearest place, or of the reports without place [ft]; infinite where there is none.</summary>
    public double LowestWindFt(GeoPoint place)
    {
        Span<int> nearest = stackalloc int[Nearest];
        Span<double> weights = stackalloc double[Nearest];
        return Find(place, mustHaveTemperature: false, nearest, weights) > 0
            ? _columns[nearest[0]].LowestWindFt
            : _everywhere?.LowestWindFt ?? double.PositiveInfinity;
    }

    /// <summary>Wind and temperature at a place and altitude.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public AirSample At(GeoPoint place, double altitudeFt)
    {
        Span<int> nearest = stackalloc int[Nearest];
        Span<double> weights = stackalloc double[Nearest];
        var count = Find(place, mustHaveTemperature: false, nearest, weights);
        double eastKt = 0, northKt = 0;
        if (count == 0 && _everywhere is not null) (eastKt, northKt) = _everywhere.WindFrom(altitudeFt);
        for (var i = 0; i < count; i++)
        {
            var (east, north) = _columns[nearest[i]].WindFrom(altitudeFt);
            eastKt += weights[i] * east;
            northKt += weights[i] * north;
        }

        var windAssumed = count == 0 && _everywhere is null;
        if (!_allHaveTemperature) count = Find(place, mustHaveTemperature: true, nearest, weights);
        double temperatureC = 0;
        for (var i = 0; i < count; i++) temperatureC += weights[i] * _columns[nearest[i]].TemperatureC(altitudeFt);
        var temperatureAssumed = count == 0 && _everywhere is not { HasTemperature: true };
        if (count == 0)
        {
            temperatureC = _everywhere is { HasTemperature: true }
                ? _everywhere.TemperatureC(altitudeFt)
                : StandardAtmosphere.TemperatureK(altitudeFt * Feet.MetresPerFoot) - Celsius.ZeroInKelvin;
        }

        var speedKt = Math.Sqrt(eastKt * eastKt + northKt * northKt);
        return speedKt < 1e-9
            ? new AirSample(default, Knots.Zero, new Celsius(temperatureC), windAssumed, temperatureAssumed)
            : new AirSample(TrueDegrees.Of(Angle.Atan2Deg(eastKt, northKt)), new Knots(speedKt), new Celsius(temperatureC), windAssumed, temperatureAssumed);
    }

    // The square of the arc [rad2] from that of the chord on the unit sphere: 4 asin(c/2)^2. Up to some 700 NM by its power series 2 sum c^2n / (n^2
    // binomial(2n, n)), from memory and held against the formula by a test; the next term is below the last bit. Farther by the formula itself.
    internal static double ArcSquared(double chordSquared)
    {
        var y = chordSquared;
        if (y < 0.04) return y * (1 + y * (1.0 / 12 + y * (1.0 / 90 + y * (1.0 / 560 + y * (1.0 / 3150 + y * (1.0 / 16632 + y * (1.0 / 84084)))))));
        var arc = 2 * Math.Asin(Math.Min(1, Math.Sqrt(y) / 2));
        return arc * arc;
    }

    // The nearest places, nearest first, and their shares, which add up to one. On a place: that place alone.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private int Find(GeoPoint place, bool mustHaveTemperature, Span<int> nearest, Span<double> weights)
    {
        var (x, y, z) = AirStation.OnUnitSphere(place);
        var count = 0;
        // The places stand from south to north: outward from the own latitude, until the latitude alone is farther than the fourth nearest.
        var north = Array.BinarySearch(_z, z);
        if (north < 0) north = ~north;
        var south = north - 1;
        while (south >= 0 || north < _z.Length)
        {
            var isSouth = north >= _z.Length || (south >= 0 && z - _z[south] <= _z[north] - z);
            var i = isSouth ? south-- : north++;
            var dz = _z[i] - z;
            if (count == Nearest && dz * dz >= weights[Nearest - 1]) break;
            var (dx, dy) = (_x[i] - x, _y[i] - y);
            var chordSquared = dx * dx + dy * dy + dz * dz;
            if (count == Nearest && chordSquared >= weights[Nearest - 1]) continue;
            if (mustHaveTemperature && !_columns[i].HasTemperature) continue;
            var at = count < Nearest ? count++ : Nearest - 1;
            for (; at > 0 && weights[at - 1] > chordSquared; at--) (weights[at], nearest[at]) = (weights[at - 1], nearest[at - 1]);
            (weights[at], nearest[at]) = (chordSquared, i);
        }

        if (count <= 1 || weights[0] < SamePlaceChordSquared)
        {
            weights[0] = 1;
            return Math.Min(count, 1);
        }

        var sum = 0.0;
        for (var i = 0; i < count; i++)
        {
            weights[i] = 1 / ArcSquared(weights[i]);
            sum += weights[i];
        }

        for (var i = 0; i < count; i++) weights[i] /= sum;
        return count;
    }
}
