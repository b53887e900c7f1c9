using Batch.SampleMaker.Land;
using Batch.SampleMaker.Tables;

namespace Batch.SampleMaker.Week;

/// <summary>The weather of the week: a westerly flow that strengthens with height and turns a little from half-day to half-day.</summary>
public static class Weather
{
    /// <summary>Wind from [deg true, whole tens], speed [kt] and temperature [°C] at a place, an altitude [ft] and a half-day from Monday 00 UTC.</summary>
    public static (int FromDeg, int SpeedKt, int TemperatureC) At(Spot place, int altitudeFt, int halfDay)
    {
        var from = 262 + (14 * Math.Sin(halfDay * 0.55)) + (3 * (place.LatDeg - 41)) + (altitudeFt / 4000.0);
        var strength = 1 + (0.16 * Math.Sin((halfDay * 0.8) + 1)) + (0.02 * (place.LatDeg - 41));
        var speed = (11 + (altitudeFt / 1000.0 * 1.45)) * strength;
        var deviation = (3 * Math.Sin((halfDay * 0.45) + 0.5)) - (0.4 * (place.LatDeg - 41));
        var temperature = Atmosphere.TemperatureK(altitudeFt, deviation) - 273.15;
        return ((int)Math.Round(from / 10) * 10, (int)Math.Round(speed), (int)Math.Round(temperature));
    }
}
