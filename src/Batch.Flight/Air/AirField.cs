using Batch.Flight.Earth;

namespace Batch.Flight.Air;

/// <summary>
/// Winds and temperatures in space and time, made of reports. Vertically linear in the two wind components and in temperature between the reports of one place;
/// below its lowest and above its highest report the wind is held and the temperature carried on along the standard lapse rate. Horizontally by inverse
/// distance squared over the nearest four places, exact at a place; reports without place count only where no report with a place is valid. In time only
/// reports valid at the moment count; of several for one place and altitude the one that starts latest, then the one that ends first, then the later listed.
/// Where nothing is known: still air and the standard temperature, marked as assumed. The order of the reports does not change the result otherwise.
/// </summary>
public sealed class AirField
{
    private readonly Instant[] _boundaries;
    private readonly AirSlice?[] _slices;
    private readonly AirStation[] _stations;
    private readonly AirStation? _everywhere;
    private readonly double _warmerC;
    private readonly Knots _headwind;

    /// <summary>Makes a field from reports.</summary>
    /// <param name="reports">The reports; none is allowed.</param>
    /// <exception cref="ArgumentException">A report holds a number that is not finite, or a negative wind speed.</exception>
    public AirField(IEnumerable<AirReport> reports)
    {
        var all = reports.ToArray();
        foreach (var report in all)
        {
            if (!double.IsFinite(report.Altitude.Value + report.WindFrom.Value + (report.Temperature?.Value ?? 0))
                || !(report.WindSpeed.Value is >= 0 and < 1000))
                throw new ArgumentException($"A report of the air is not usable: {report}", nameof(reports));
        }

        Count = all.Length;
        _boundaries = [.. all.SelectMany(r => new[] { r.From, r.To }).OfType<Instant>().Distinct().Order()];
        _slices = new AirSlice?[_boundaries.Length + 1];
        _stations =
        [
            .. all.Where(r => r.Place is not null).GroupBy(r => r.Place ?? default)
                .OrderBy(g => g.Key.LatitudeDeg).ThenBy(g => g.Key.LongitudeDeg)
                .Select(g => new AirStation(g.Key, [.. g])),
        ];
        AirReport[] anywhere = [.. all.Where(r => r.Place is null)];
        _everywhere = anywhere.Length > 0 ? new AirStation(default, anywhere) : null;
    }

    private AirField(AirField like, double warmerC, Knots headwind)
    {
        (_boundaries, _slices, _stations, _everywhere, Count) = (like._boundaries, like._slices, like._stations, like._everywhere, like.Count);
        (_warmerC, _headwind) = (warmerC, headwind);
    }

    /// <summary>The same air, warmer and with more wind against whoever flies through it.</summary>
    /// <param name="warmerC">Added to every temperature [°C].</param>
    /// <param name="headwind">Added along every course flown; seen only by <see cref="Met"/>.</param>
    public AirField Worse(double warmerC, Knots headwind) => warmerC == 0 && headwind == Knots.Zero ? this : new AirField(this, warmerC, headwind);

    /// <summary>Number of reports.</summary>
    public int Count { get; }

    /// <summary>
    /// Whether any report begins or ends to hold after one moment up to and with another; where none does, every place has the same air at both.
    /// </summary>
    /// <param name="earlier">The earlier moment.</param>
    /// <param name="later">The later moment.</param>
    public bool ChangesBetween(Instant earlier, Instant later) => SliceAt(earlier) != SliceAt(later);

    /// <summary>
    /// Since when the air of a moment holds everywhere: no report begins or ends to hold after it up to the moment; <see cref="Instant.MinValue"/> where none
    /// does before.
    /// </summary>
    /// <param name="time">The moment.</param>
    public Instant HoldsSince(Instant time) => SliceAt(time) is > 0 and var slice ? _boundaries[slice - 1] : Instant.MinValue;

    /// <summary>Wind and temperature at a point and time. Cheap: no memory is taken once a time slice has been used.</summary>
    /// <param name="place">The place.</param>
    /// <param name="altitude">Altitude [ft], -2,000 to 65,000.</param>
    /// <param name="time">The moment.</param>
    public AirSample At(GeoPoint place, Feet altitude, Instant time)
    {
        var sample = Slice(time).At(place, altitude.Value);
        return _warmerC == 0 ? sample : sample with { Temperature = new Celsius(sample.Temperature.Value + _warmerC) };
    }

    /// <summary>Altitude of the lowest wind reported at the nearest place [ft], below which the wind is held; infinite where none is known.</summary>
    /// <param name="place">The place.</param>
    /// <param name="time">The moment.</param>
    public double LowestWindFt(GeoPoint place, Instant time) => Slice(time).LowestWindFt(place);

    /// <summary>Wind and temperature as met on a course: those at the place, with the headwind that this air adds.</summary>
    /// <param name="at">Place and course.</param>
    /// <param name="altitude">Altitude [ft].</param>
    /// <param name="time">The moment.</param>
    public AirSample Met(GeodesicEnd at, Feet altitude, Instant time)
    {
        var sample = At(at.Point, altitude, time);
        if (_headwind == Knots.Zero) return sample;
        var (wind, course) = (double.DegreesToRadians(sample.WindFrom.Value), double.DegreesToRadians(at.AzimuthDeg));
        var north = sample.WindSpeed.Value * Math.Cos(wind) + _headwind.Value * Math.Cos(course);
        var east = sample.WindSpeed.Value * Math.Sin(wind) + _headwind.Value * Math.Sin(course);
        return sample with
        {
            WindFrom = TrueDegrees.Of(double.RadiansToDegrees(Math.Atan2(east, north))),
            WindSpeed = new Knots(Math.Sqrt(north * north + east * east))
        };
    }

    private AirSlice Slice(Instant time)
    {
        var index = SliceAt(time);
        return Volatile.Read(ref _slices[index]) ?? Prepare(index);
    }

    private int SliceAt(Instant time)
    {
        var at = Array.BinarySearch(_boundaries, time);
        return at >= 0 ? at + 1 : ~at;
    }

    // Slice i reaches from boundary i-1 up to boundary i. Two threads may prepare the same slice; both make the same.
    private AirSlice Prepare(int index)
    {
        Instant? start = index > 0 ? _boundaries[index - 1] : null;
        var valid = _stations.Select(s => (Station: s, Column: s.ColumnFrom(start))).Where(c => c.Column is not null).ToArray();
        var slice = new AirSlice([.. valid.Select(c => c.Station)], [.. valid.Select(c => c.Column).OfType<AirColumn>()], _everywhere?.ColumnFrom(start));
        return Interlocked.CompareExchange(ref _slices[index], slice, null) ?? slice;
    }
}
