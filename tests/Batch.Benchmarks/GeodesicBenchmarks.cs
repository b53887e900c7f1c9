using Batch.Flight.Earth;
using BenchmarkDotNet.Attributes;

namespace Batch.Benchmarks;

/// <summary>Shortest lines, positions on them, and the magnetic variation there: what every route segment asks for.</summary>
[MemoryDiagnoser]
public class GeodesicBenchmarks
{
    private const int Count = 1000;
    private readonly GeoPoint[] _from = new GeoPoint[Count];
    private readonly GeoPoint[] _to = new GeoPoint[Count];
    private readonly GeodesicPath _path = new(GeoPoint.Of(39.86, -104.67), GeoPoint.Of(41.98, -87.9));

    [GlobalSetup]
    public void Prepare()
    {
        var random = new Random(20260512);
        for (var i = 0; i < Count; i++)
        {
            _from[i] = GeoPoint.Of(20 + 40 * random.NextDouble(), -130 + 70 * random.NextDouble());
            _to[i] = Geodesic.Direct(_from[i], 360 * random.NextDouble(), 1852 * (20 + 780 * random.NextDouble()));
        }
    }

    /// <summary>The plain sphere, to compare with.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Count)]
    public double Haversine()
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++)
        {
            var (lat1, lat2) = (_from[i].LatitudeDeg * Math.PI / 180, _to[i].LatitudeDeg * Math.PI / 180);
            var halfLon = (_to[i].LongitudeDeg - _from[i].LongitudeDeg) * Math.PI / 360;
            var h = Math.Pow(Math.Sin((lat2 - lat1) / 2), 2) + Math.Cos(lat1) * Math.Cos(lat2) * Math.Pow(Math.Sin(halfLon), 2);
            sum += 2 * 6371008.8 * Math.Asin(Math.Sqrt(h));
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public double Inverse()
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++) sum += Geodesic.Inverse(_from[i], _to[i]).DistanceM;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public double Direct()
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++) sum += Geodesic.Direct(_from[i], 47, 500_000).LatitudeDeg;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public double PathPosition()
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++) sum += _path.At(i * 0.7).Point.LatitudeDeg;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public double Variation()
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++) sum += MagneticModel.FieldAt(_from[i], 5, 2026.4).DeclinationDeg;
        return sum;
    }
}
