namespace Batch.Books.Units;

/// <summary>
/// The unit words of the books. Base units: kg, L, m, m/s, °C, K (difference), s, Pa, deg, %, kg/s, L/s, kg/L, kg·m.
/// Case never separates two of these words, so it is ignored; <c>nm</c> is the nautical mile, <c>gal</c> the US liquid gallon.
/// </summary>
internal static class UnitTable
{
    /// <summary>Kilograms in a pound, exact (NIST SP 811, appendix B.8; international yard and pound agreement 1959).</summary>
    private const double Pound = 0.45359237;

    /// <summary>Litres in a US liquid gallon, exact: 231 cubic inches (NIST SP 811, appendix B.8).</summary>
    private const double UsGallon = 3.785411784;

    /// <summary>Litres in an imperial gallon, exact (UK Units of Measurement Regulations 1995).</summary>
    private const double ImperialGallon = 4.54609;

    /// <summary>Metres in a foot, exact (NIST SP 811, appendix B.8).</summary>
    private const double Foot = 0.3048;

    /// <summary>Metres in an inch, exact (NIST SP 811, appendix B.8).</summary>
    private const double Inch = 0.0254;

    /// <summary>Metres in a nautical mile, exact (SI brochure, table 8; ISO 80000-3).</summary>
    private const double NauticalMile = 1852;

    /// <summary>Metres in a statute mile, exact: 5280 ft (NIST SP 811, appendix B.8).</summary>
    private const double StatuteMile = 1609.344;

    /// <summary>Pascals in an inch of mercury, conventional, rounded (NIST SP 811, appendix B.8).</summary>
    private const double InchOfMercury = 3386.389;

    private static readonly ImmutableArray<UnitWord> Words =
    [
        .. Say(Dimension.Mass, Pound, "lb", "lbs", "pound", "pounds", "lbm"),
        .. Say(Dimension.Mass, 1, "kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"),
        .. Say(Dimension.Volume, UsGallon, "USG", "gal", "US gal", "US gallon", "US gallons", "gallon", "gallons", "gals"),
        .. Say(Dimension.Volume, ImperialGallon, "imp gal", "IMG", "imperial gallon", "imperial gallons"),
        .. Say(Dimension.Volume, 1, "L", "ltr", "litre", "litres", "liter", "liters"),
        .. Say(Dimension.Length, Foot, "ft", "foot", "feet"),
        .. Say(Dimension.Length, 1, "m", "metre", "metres", "meter", "meters"),
        .. Say(Dimension.Length, NauticalMile, "NM", "nmi", "nautical mile", "nautical miles"),
        .. Say(Dimension.Length, 1000, "km", "kilometre", "kilometres", "kilometer", "kilometers"),
        .. Say(Dimension.Length, StatuteMile, "SM", "mi", "statute mile", "statute miles"),
        .. Say(Dimension.Length, Inch, "in", "inch", "inches"),
        .. Say(Dimension.Length, 0.01, "cm"),
        .. Say(Dimension.Length, 0.001, "mm"),
        .. Say(Dimension.FlightLevel, 100 * Foot, "FL"),
        .. Say(Dimension.Speed, NauticalMile / 3600, "kt", "kts", "knot", "knots"),
        .. Say(Dimension.Speed, 1000.0 / 3600, "km/h", "kmh", "kph"),
        .. Say(Dimension.Speed, StatuteMile / 3600, "mph"),
        .. Say(Dimension.Speed, 1, "m/s"),
        .. Say(Dimension.Temperature, 1, "°C", "C", "degC", "deg C", "Celsius"),
        new("°F", Dimension.Temperature, 5.0 / 9, -32), new("F", Dimension.Temperature, 5.0 / 9, -32), new("degF", Dimension.Temperature, 5.0 / 9, -32),
        new("deg F", Dimension.Temperature, 5.0 / 9, -32), new("K", Dimension.Temperature, 1, -273.15),
        .. Say(Dimension.TemperatureDifference, 1, "°C", "C", "degC", "deg C", "K"),
        .. Say(Dimension.TemperatureDifference, 5.0 / 9, "°F", "F", "degF", "deg F"),
        .. Say(Dimension.Time, 60, "min", "mins", "minute", "minutes"),
        .. Say(Dimension.Time, 3600, "h", "hr", "hrs", "hour", "hours", "h:mm"),
        .. Say(Dimension.Time, 1, "s", "sec", "seconds"),
        .. Say(Dimension.Pressure, 100, "hPa", "mb", "mbar"),
        .. Say(Dimension.Pressure, InchOfMercury, "inHg", "in Hg"),
        .. Say(Dimension.Angle, 1, "deg", "°", "degrees", "deg true", "°T", "true"),
        .. Say(Dimension.Percent, 1, "%", "percent", "per cent"),
        .. Say(Dimension.PercentPerSpeed, 1, "%/kt"),
        .. Say(Dimension.PercentPerPercent, 1, "%/%"),
        .. Say(Dimension.MassFlow, Pound / 3600, "lb/h", "lbs/h", "lb/hr", "lbs/hr", "pph"),
        .. Say(Dimension.MassFlow, 1.0 / 3600, "kg/h", "kg/hr"),
        .. Say(Dimension.VolumeFlow, UsGallon / 3600, "USG/h", "USG/hr", "gal/h", "gal/hr", "gph"),
        .. Say(Dimension.VolumeFlow, 1.0 / 3600, "L/h", "L/hr"),
        .. Say(Dimension.Density, Pound / UsGallon, "lb/USG", "lb/gal", "lb/US gal", "lbs/USG", "lbs/gal"),
        .. Say(Dimension.Density, 1, "kg/L", "kg/dm3", "g/cm3"),
        .. Say(Dimension.Density, 0.001, "kg/m3", "kg/m³"),
        .. Say(Dimension.Moment, Pound * Inch, "lb in", "lb·in", "lbs in", "lb-in", "in lb", "in-lb", "lb.in", "lb*in"),
        .. Say(Dimension.Moment, Pound * Foot, "lb ft", "lb·ft", "lb-ft", "ft lb", "ft-lb"),
        .. Say(Dimension.Moment, 1, "kg m", "kg·m", "kg-m"),
        .. Say(Dimension.Moment, 0.01, "kg cm", "kg·cm", "kg-cm"),
        .. Say(Dimension.Moment, 0.001, "kg mm", "kg·mm", "kg-mm"),
        .. Say(Dimension.Moment, 1000 * Pound * Inch, "1000 lb in", "lb in/1000", "1000 lb·in"),
        .. Say(Dimension.PricePerVolume, 1 / UsGallon, "/USG", "/gal", "/US gal"),
        .. Say(Dimension.PricePerVolume, 1, "/L"),
        .. Say(Dimension.UniversalTime, 1, "UTC", "Z", "Zulu"),
        .. Say(Dimension.LocalTime, 1, "local", "local time", "LT"),
    ];

    private static readonly ILookup<string, UnitWord> ByWord = Words.ToLookup(word => Plain(word.Word), StringComparer.OrdinalIgnoreCase);

    /// <summary>The unit of one of the dimensions that a word means; null where there is none.</summary>
    /// <param name="word">The word as written.</param>
    /// <param name="dimensions">What it may measure.</param>
    public static UnitWord? Find(string word, params ReadOnlySpan<Dimension> dimensions)
    {
        var plain = Plain(word);
        foreach (var unit in ByWord[plain])
        {
            if (dimensions.Contains(unit.Dimension)) return unit;
        }

        // A price may name its currency: EUR/L.
        var slash = plain.LastIndexOf('/');
        return slash > 0 && dimensions.Contains(Dimension.PricePerVolume) ? Find(plain[slash..], Dimension.PricePerVolume) : null;
    }

    /// <summary>The first word of each unit of a dimension, for messages.</summary>
    public static IEnumerable<string> Known(Dimension dimension) =>
        Words.Where(word => word.Dimension == dimension).DistinctBy(word => (word.Factor, word.Offset)).Select(word => word.Word);

    private static IEnumerable<UnitWord> Say(Dimension dimension, double factor, params string[] words) =>
        words.Select(word => new UnitWord(word, dimension, factor));

    private static string Plain(string word) => string.Join(' ', word.Replace('\u00A0', ' ').Split(' ', StringSplitOptions.RemoveEmptyEntries)).TrimEnd('.');
}
