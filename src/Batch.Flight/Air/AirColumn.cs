using System.Runtime.CompilerServices;
using Batch.Flight.Earth;

namespace Batch.Flight.Air;

/// <summary>The air above one place at one time: wind components and temperatures by altitude.</summary>
internal sealed class AirColumn
{
    private readonly double[] _windAltitudeFt;
    private readonly double[] _eastKt;
    private readonly double[] _northKt;
    private readonly double[] _temperatureAltitudeFt;
    private readonly double[] _temperatureC;

    /// <summary>Prepares a column.</summary>
    /// <param name="levels">At least one report, each at another altitude, lowest first.</param>
    public AirColumn(AirReport[] levels)
    {
        _windAltitudeFt = [.. levels.Select(r => r.Altitude.Value)];
        _eastKt = [.. levels.Select(r => r.WindSpeed.Value * Angle.SinCosDeg(r.WindFrom.Value).Sin)];
        _northKt = [.. levels.Select(r => r.WindSpeed.Value * Angle.SinCosDeg(r.WindFrom.Value).Cos)];
        _temperatureAltitudeFt = [.. levels.Where(r => r.Temperature is not null).Select(r => r.Altitude.Value)];
        _temperatureC = [.. levels.Select(r => r.Temperature).OfType<Celsius>().Select(t => t.Value)];
    }

    /// <summary>Altitude of its lowest wind [ft].</summary>
    public double LowestWindFt => _windAltitudeFt[0];

    /// <summary>Whether any report of it holds a temperature.</summary>
    public bool HasTemperature => _temperatureC.Length > 0;

    /// <summary>Where the wind comes from, as components [kt] to east and north; held beyond the reports.</summary>
    public (double EastKt, double NorthKt) WindFrom(double altitudeFt)
    {
        var (below, share) = Between(_windAltitudeFt, altitudeFt);
        if (share == 0) return (_eastKt[below], _northKt[below]);
        return (_eastKt[below] + share * (_eastKt[below + 1] - _eastKt[below]), _northKt[below] + share * (_northKt[below + 1] - _northKt[below]));
    }

    /// <summary>The temperature [°C]; beyond the reports along the standard lapse rate. Only where <see cref="HasTemperature"/>.</summary>
    public double TemperatureC(double altitudeFt)
    {
        var last = _temperatureC.Length - 1;
        if (altitudeFt < _temperatureAltitudeFt[0]) return Extended(0, altitudeFt);
        if (altitudeFt > _temperatureAltitudeFt[last]) return Extended(last, altitudeFt);
        var (below, share) = Between(_temperatureAltitudeFt, altitudeFt);
        return share == 0 ? _temperatureC[below] : _temperatureC[below] + share * (_temperatureC[below + 1] - _temperatureC[below]);
    }

    private double Extended(int from, double altitudeFt) =>
        _temperatureC[from] + StandardK(altitudeFt) - StandardK(_temperatureAltitudeFt[from]);

    private static double StandardK(double altitudeFt) => StandardAtmosphere.TemperatureK(altitudeFt * Feet.MetresPerFoot);

    // The level at or below an altitude and the share of the way to the next; held at both ends. A column has few levels: counted, not halved.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static (int Below, double Share) Between(double[] levelsFt, double altitudeFt)
    {
        var above = 0;
        while (above < levelsFt.Length && levelsFt[above] <= altitudeFt) above++;
        if (above == 0) return (0, 0);
        if (above == levelsFt.Length) return (above - 1, 0);
        return (above - 1, (altitudeFt - levelsFt[above - 1]) / (levelsFt[above] - levelsFt[above - 1]));
    }
}
