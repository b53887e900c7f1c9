using Batch.Flight.Air;

namespace Batch.Flight.Plan;

/// <summary>The slices between two lines of the navigation log, added up.</summary>
internal struct LogStretch
{
    private bool _isBegun;
    private double _eastHours;
    private double _northHours;
    private double _temperatureHours;

    /// <summary>Distance along the route at its start [NM].</summary>
    public double StartNm { get; private set; }

    /// <summary>Altitude at its start [ft].</summary>
    public double StartFt { get; private set; }

    /// <summary>Time of it that is flown along the route, without the approach allowance [h].</summary>
    public double MovingHours { get; private set; }

    /// <summary>Distance over the ground [NM].</summary>
    public double GroundNm { get; private set; }

    /// <summary>Distance through the air [NM].</summary>
    public double AirNm { get; private set; }

    /// <summary>Fuel [lb].</summary>
    public double BurnLb { get; private set; }

    /// <summary>Mean wind by time.</summary>
    public readonly Wind Wind
    {
        get
        {
            var (east, north) = (_eastHours / MovingHours, _northHours / MovingHours);
            var speedKt = Math.Sqrt(east * east + north * north);
            return new Wind(speedKt > 1e-9 ? TrueDegrees.Of(Math.Atan2(east, north) * 180 / Math.PI) : default, new Knots(speedKt));
        }
    }

    /// <summary>Mean temperature by time [°C].</summary>
    public readonly double TemperatureC => _temperatureHours / MovingHours;

    /// <summary>Adds the next slice.</summary>
    /// <param name="slice">The slice.</param>
    public void Add(in ProfileSlice slice)
    {
        if (!_isBegun) (_isBegun, StartNm, StartFt) = (true, slice.StartNm, slice.StartFt);
        BurnLb += slice.BurnLb;
        GroundNm += slice.GroundNm;
        AirNm += slice.AirNm;
        if (slice.Phase == FlightPhase.Approach) return;
        MovingHours += slice.Hours;
        var (sin, cos) = Math.SinCos(slice.Air.WindFrom.Value * Math.PI / 180);
        _eastHours += slice.Air.WindSpeed.Value * sin * slice.Hours;
        _northHours += slice.Air.WindSpeed.Value * cos * slice.Hours;
        _temperatureHours += slice.Air.Temperature.Value * slice.Hours;
    }
}
