namespace Batch.Flight.Air;

/// <summary>
/// The ICAO International Standard Atmosphere (ICAO Doc 7488, third edition 1993; the same constants as the US Standard Atmosphere 1976), dry air,
/// two layers: the troposphere to 11 km and the isothermal layer above it. Altitudes are geopotential, that is pressure altitudes.
/// </summary>
public static class StandardAtmosphere
{
    /// <summary>Temperature at sea level [K] (Doc 7488, table A).</summary>
    public const double SeaLevelTemperatureK = 288.15;

    /// <summary>Pressure at sea level [hPa] (Doc 7488, table A).</summary>
    public const double SeaLevelPressureHpa = 1013.25;

    /// <summary>Fall of temperature with height below the tropopause [K/m] (Doc 7488, table C).</summary>
    public const double LapseKPerM = 0.0065;

    /// <summary>Height of the tropopause [m] (Doc 7488, table C).</summary>
    public const double TropopauseM = 11000;

    /// <summary>Temperature from the tropopause up [K] (Doc 7488, table C).</summary>
    public const double TropopauseTemperatureK = SeaLevelTemperatureK - LapseKPerM * TropopauseM;

    /// <summary>Standard acceleration of gravity [m/s2] (Doc 7488, table A).</summary>
    public const double GravityMPerS2 = 9.80665;

    /// <summary>Specific gas constant of dry air [J/(kg K)] (Doc 7488, table A).</summary>
    public const double GasConstantJPerKgK = 287.05287;

    /// <summary>Ratio of the specific heats of air (Doc 7488, table A).</summary>
    public const double HeatRatio = 1.4;

    /// <summary>Lowest altitude of the standard here [ft].</summary>
    public const double LowestFt = -16404;

    /// <summary>Highest altitude of the two layers, 20 km [ft].</summary>
    public const double HighestFt = 65617;

    private const double Exponent = GravityMPerS2 / (GasConstantJPerKgK * LapseKPerM);
    private const double SeaLevelDensity = SeaLevelPressureHpa * 100 / (GasConstantJPerKgK * SeaLevelTemperatureK);
    private static readonly double TropopausePressureHpa =
        SeaLevelPressureHpa * Math.Pow(TropopauseTemperatureK / SeaLevelTemperatureK, Exponent);
    private const double UpperScaleM = GasConstantJPerKgK * TropopauseTemperatureK / GravityMPerS2;
    private static readonly double TropopauseDensity = TropopausePressureHpa * 100 / (GasConstantJPerKgK * TropopauseTemperatureK);

    /// <summary>The standard temperature at a pressure altitude.</summary>
    /// <param name="pressureAltitude">Pressure altitude [ft], -16,404 to 65,617.</param>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is outside the two layers or not a number.</exception>
    public static Celsius TemperatureAt(Feet pressureAltitude) => new(TemperatureK(HeightM(pressureAltitude)) - Celsius.ZeroInKelvin);

    /// <summary>The standard pressure at a pressure altitude.</summary>
    /// <param name="pressureAltitude">Pressure altitude [ft], -16,404 to 65,617.</param>
    /// <exception cref="ArgumentOutOfRangeException">The altitude is outside the two layers or not a number.</exception>
    public static Hectopascals PressureAt(Feet pressureAltitude) => new(PressureHpa(HeightM(pressureAltitude)));

    /// <summary>The pressure altitude at which a pressure is standard.</summary>
    /// <param name="pressure">Air pressure [hPa], 54.7 to 1780.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure is outside the two layers or not a number.</exception>
    public static Feet AltitudeAt(Hectopascals pressure)
    {
        if (!(pressure.Value > 0)) throw new ArgumentOutOfRangeException(nameof(pressure), pressure, "An air pressure is above zero.");
        var heightM = pressure.Value >= TropopausePressureHpa
            ? (1 - Math.Pow(pressure.Value / SeaLevelPressureHpa, 1 / Exponent)) * SeaLevelTemperatureK / LapseKPerM
            : TropopauseM + UpperScaleM * Math.Log(TropopausePressureHpa / pressure.Value);
        return InRange(new Feet(heightM / Feet.MetresPerFoot));
    }

    /// <summary>The density of the air over the standard density at sea level (sigma).</summary>
    /// <param name="pressureAltitude">Pressure altitude [ft], -16,404 to 65,617.</param>
    /// <param name="oat">Outside air temperature [°C].</param>
    public static double DensityRatioAt(Feet pressureAltitude, Celsius oat) => DensityAt(pressureAltitude, oat) / SeaLevelDensity;

    /// <summary>The standard density at a pressure altitude over that at sea level (sigma).</summary>
    /// <param name="pressureAltitude">Pressure altitude [ft], -16,404 to 65,617.</param>
    public static double DensityRatioAt(Feet pressureAltitude) => DensityRatioAt(pressureAltitude, TemperatureAt(pressureAltitude));

    /// <summary>The density of the air [kg/m3].</summary>
    /// <param name="pressureAltitude">Pressure altitude [ft], -16,404 to 65,617.</param>
    /// <param name="oat">Outside air temperature [°C], above absolute zero.</param>
    public static double DensityAt(Feet pressureAltitude, Celsius oat) =>
        PressureAt(pressureAltitude).Value * 100 / (GasConstantJPerKgK * Kelvin(oat));

    /// <summary>The standard density [kg/m3].</summary>
    /// <param name="pressureAltitude">Pressure altitude [ft], -16,404 to 65,617.</param>
    public static double DensityAt(Feet pressureAltitude) => DensityAt(pressureAltitude, TemperatureAt(pressureAltitude));

    /// <summary>The speed of sound.</summary>
    /// <param name="oat">Outside air temperature [°C], above absolute zero.</param>
    public static Knots SoundSpeedAt(Celsius oat) =>
        new(Math.Sqrt(HeatRatio * GasConstantJPerKgK * Kelvin(oat)) * 3600 / NauticalMiles.MetresPerNauticalMile);

    /// <summary>How much warmer the air is than standard [K]; negative when colder.</summary>
    /// <param name="oat">Outside air temperature [°C].</param>
    /// <param name="pressureAltitude">Pressure altitude [ft], -16,404 to 65,617.</param>
    public static double DeviationK(Celsius oat, Feet pressureAltitude) => oat - TemperatureAt(pressureAltitude);

    /// <summary>
    /// The pressure altitude of a place: the standard altitude of the pressure there, found from the altimeter setting by the altimeter's own scale
    /// (the setting reduces station pressure to sea level by the standard atmosphere).
    /// </summary>
    /// <param name="elevation">Elevation of the place, or indicated altitude [ft].</param>
    /// <param name="altimeterSetting">Altimeter setting (QNH) [hPa].</param>
    public static Feet PressureAltitude(Feet elevation, Hectopascals altimeterSetting) => InRange(elevation + AltitudeAt(altimeterSetting));

    /// <summary>The standard altitude at which the air has the density it has here; dry air.</summary>
    /// <param name="pressureAltitude">Pressure altitude [ft], -16,404 to 65,617.</param>
    /// <param name="oat">Outside air temperature [°C], above absolute zero.</param>
    public static Feet DensityAltitude(Feet pressureAltitude, Celsius oat)
    {
        var density = DensityAt(pressureAltitude, oat);
        var heightM = density >= TropopauseDensity
            ? (1 - Math.Pow(density / SeaLevelDensity, 1 / (Exponent - 1))) * SeaLevelTemperatureK / LapseKPerM
            : TropopauseM + UpperScaleM * Math.Log(TropopauseDensity / density);
        return new Feet(heightM / Feet.MetresPerFoot);
    }

    /// <summary>The standard temperature [K] at a geopotential height [m].</summary>
    internal static double TemperatureK(double heightM) =>
        heightM < TropopauseM ? SeaLevelTemperatureK - LapseKPerM * heightM : TropopauseTemperatureK;

    private static double PressureHpa(double heightM) => heightM <= TropopauseM
        ? SeaLevelPressureHpa * Math.Pow(1 - LapseKPerM * heightM / SeaLevelTemperatureK, Exponent)
        : TropopausePressureHpa * Math.Exp((TropopauseM - heightM) / UpperScaleM);

    private static double HeightM(Feet altitude) => InRange(altitude).Metres;

    private static double Kelvin(Celsius oat) => oat.Kelvin > 0
        ? oat.Kelvin
        : throw new ArgumentOutOfRangeException(nameof(oat), oat, "A temperature is above absolute zero.");

    private static Feet InRange(Feet altitude) => altitude.Value is >= LowestFt and <= HighestFt
        ? altitude
        : throw new ArgumentOutOfRangeException(nameof(altitude), altitude, "The standard atmosphere here reaches from -16,404 to 65,617 ft.");
}
