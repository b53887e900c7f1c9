namespace Batch.SampleMaker.Tables;

/// <summary>The standard atmosphere as far as the invented tables need it.</summary>
public static class Atmosphere
{
    /// <summary>Pressure ratio at a pressure altitude [ft], below 36,000 ft.</summary>
    public static double Delta(double altitudeFt) => Math.Pow(1 - (6.8755856e-6 * altitudeFt), 5.2558797);

    /// <summary>Temperature [K] at a pressure altitude [ft] and a deviation from the standard [K].</summary>
    public static double TemperatureK(double altitudeFt, double isaDeviationK) => 288.15 - (0.0019812 * altitudeFt) + isaDeviationK;

    /// <summary>Density ratio.</summary>
    public static double Sigma(double altitudeFt, double isaDeviationK) => Delta(altitudeFt) * 288.15 / TemperatureK(altitudeFt, isaDeviationK);
}
