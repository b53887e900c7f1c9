using Batch.Flight.Air;
using Batch.Flight.Earth;
using BenchmarkDotNet.Attributes;

namespace Batch.Benchmarks;

/// <summary>Wind and temperature at a point, which the profile asks for in every slice; and the other air and sun of a leg.</summary>
[MemoryDiagnoser]
public class FieldBenchmarks
{
    private const int Count = 1000;
    private static readonly Instant Noon = Instant.FromUtc(2026, 5, 12, 12, 0);
    private readonly GeoPoint[] _places = new GeoPoint[Count];
    private AirField _field = new([]);

    /// <summary>Number of places that report, nine levels each, in two spans of time.</summary>
    [Params(10, 200)]
    public int Stations { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        var random = new Random(20260512);
        var reports = new List<AirReport>();
        for (var station = 0; station < Stations; station++)
        {
            var place = GeoPoint.Of(25 + 24 * random.NextDouble(), -124 + 57 * random.NextDouble());
            for (var level = 1; level <= 9; level++)
            {
                for (var span = 0; span < 2; span++)
                {
                    reports.Add(new AirReport
                    {
                        Place = place,
                        From = Noon + Duration.FromHours(12 * span - 6),
                        To = Noon + Duration.FromHours(12 * span + 6),
                        Altitude = new Feet(4000 * level),
                        WindFrom = TrueDegrees.Of(360 * random.NextDouble()),
                        WindSpeed = new Knots(100 * random.NextDouble()),
                        Temperature = level == 1 ? null : new Celsius(15 - 8 * level),
                    });
                }
            }
        }

        _field = new AirField(reports);
        for (var i = 0; i < Count; i++) _places[i] = GeoPoint.Of(25 + 24 * random.NextDouble(), -124 + 57 * random.NextDouble());
    }

    [Benchmark(Baseline = true, OperationsPerInvoke = Count)]
    public double At()
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++) sum += _field.At(_places[i], new Feet(1000 + 40 * i), Noon).WindSpeed.Value;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public double WindTriangleSolve()
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++)
            sum += WindTriangle.Solve(new TrueDegrees(i * 0.36), new Knots(250), new TrueDegrees(270), new Knots(60)).GroundSpeed.Value;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public double TrueFromCalibrated()
    {
        var sum = 0.0;
        for (var i = 0; i < Count; i++) sum += Airspeed.TrueFromCalibrated(new Knots(200), new Feet(1000 + 40 * i), new Celsius(-10)).Value;
        return sum;
    }

    [Benchmark(OperationsPerInvoke = Count)]
    public int SunDay()
    {
        var count = 0;
        for (var i = 0; i < Count; i++)
        {
            if (Sun.On(new LocalDate(2026, 5, 12), DateTimeZone.Utc, _places[i]).Sunrise is not null) count++;
        }

        return count;
    }
}
