namespace Batch.Flight.Air;

/// <summary>
/// Calibrated and true airspeed and Mach number, compressible flow (W. Gracey, Measurement of Aircraft Speed and Altitude, NASA RP-1046, 1980, chapters 2 and
/// 3). Below the speed of sound the isentropic relation, above it Rayleigh's pitot formula.
/// </summary>
public static class Airspeed
{
    // Exponents of the isentropic relation for a heat ratio of 1.4.
    private const double Compression = 3.5;
    private const double SonicRatio = 0.8929291587; // 1.2^3.5 - 1: impact over static pressure at Mach 1

    /// <summary>True airspeed of a calibrated airspeed.</summary>
    /// <param name="calibrated">Calibrated airspeed [kt], zero or more.</param>
    /// <param name="pressureAltitude">Pressure altitude [ft].</param>
    /// <param name="oat">Outside (static) air temperature [°C].</param>
    /// <exception cref="ArgumentOutOfRangeException">A speed is negative or not a number, or the air is outside the standard atmosphere.</exception>
    public static Knots TrueFromCalibrated(Knots calibrated, Feet pressureAltitude, Celsius oat)
    {
        var ratio = ImpactPressure(calibrated).Value / StandardAtmosphere.PressureAt(pressureAltitude).Value;
        return TrueFromMach(MachOfRatio(ratio), oat);
    }

    /// <summary>Calibrated airspeed of a true airspeed.</summary>
    /// <param name="trueAirspeed">True airspeed [kt], zero or more.</param>
    /// <param name="pressureAltitude">Pressure altitude [ft].</param>
    /// <param name="oat">Outside (static) air temperature [°C].</param>
    /// <exception cref="ArgumentOutOfRangeException">A speed is negative or not a number, or the air is outside the standard atmosphere.</exception>
    public static Knots CalibratedFromTrue(Knots trueAirspeed, Feet pressureAltitude, Celsius oat)
    {
        var impact = PressureRatio(MachFromTrue(trueAirspeed, oat)) * StandardAtmosphere.PressureAt(pressureAltitude).Value;
        return StandardSoundSpeed * MachOfRatio(impact / StandardAtmosphere.SeaLevelPressureHpa);
    }

    /// <summary>Mach number of a true airspeed.</summary>
    /// <param name="trueAirspeed">True airspeed [kt], zero or more.</param>
    /// <param name="oat">Outside (static) air temperature [°C].</param>
    public static double MachFromTrue(Knots trueAirspeed, Celsius oat) => NotNegative(trueAirspeed.Value) / StandardAtmosphere.SoundSpeedAt(oat).Value;

    /// <summary>True airspeed of a Mach number.</summary>
    /// <param name="mach">Mach number, zero or more.</param>
    /// <param name="oat">Outside (static) air temperature [°C].</param>
    public static Knots TrueFromMach(double mach, Celsius oat) => StandardAtmosphere.SoundSpeedAt(oat) * NotNegative(mach);

    /// <summary>The impact pressure an airspeed indicator without error feels at a calibrated airspeed.</summary>
    /// <param name="calibrated">Calibrated airspeed [kt], zero or more.</param>
    public static Hectopascals ImpactPressure(Knots calibrated) =>
        new(PressureRatio(NotNegative(calibrated.Value) / StandardSoundSpeed.Value) * StandardAtmosphere.SeaLevelPressureHpa);

    /// <summary>Impact pressure over static pressure at a Mach number.</summary>
    /// <param name="mach">Mach number, zero or more.</param>
    public static double PressureRatio(double mach)
    {
        var squared = NotNegative(mach) * mach;
        return mach <= 1
            ? Math.Pow(1 + 0.2 * squared, Compression) - 1
            : 166.92158009316827 * squared * squared * squared * mach / Math.Pow(7 * squared - 1, 2.5) - 1; // 1.2^3.5 x 6^2.5 = 166.92158...
    }

    /// <summary>Mach number of a ratio of impact to static pressure.</summary>
    /// <param name="ratio">Impact pressure over static pressure, zero or more.</param>
    public static double MachOfRatio(double ratio)
    {
        if (NotNegative(ratio) <= SonicRatio) return Math.Sqrt(5 * (Math.Pow(ratio + 1, 1 / Compression) - 1));

        // Above Mach 1 the relation is solved by Newton's method in the logarithm; it is monotone and smooth there.
        var mach = Math.Sqrt((ratio + 1) / 1.2);
        for (var round = 0; round < 50; round++)
        {
            var slope = (7 / mach - 35 * mach / (7 * mach * mach - 1)) * (PressureRatio(mach) + 1);
            var step = (PressureRatio(mach) - ratio) / slope;
            mach = Math.Max(1, mach - step);
            if (Math.Abs(step) <= 1e-13 * mach) break;
        }

        return mach;
    }

    private static readonly Knots StandardSoundSpeed = StandardAtmosphere.SoundSpeedAt(StandardAtmosphere.TemperatureAt(Feet.Zero));

    private static double NotNegative(double value) => value >= 0 && double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), value, "A speed, Mach number or pressure ratio is zero or more.");
}
