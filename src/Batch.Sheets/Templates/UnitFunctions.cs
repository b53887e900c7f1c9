using System.Globalization;
using System.Text;
using Batch.Sheets.Figures;
using Scriban;
using Scriban.Parsing;

namespace Batch.Sheets.Templates;

/// <summary>The functions by which a template chooses units. Nothing is written as a dash; a value of another kind is an error.</summary>
internal static partial class UnitFunctions
{
    /// <summary>Kilograms a litre, per pound a US gallon.</summary>
    public const double KilogramsPerLitre = Pounds.KilogramsPerPound / LitresPerUsGallon;

    private const string NotKnown = "–";
    private const double KilometresPerNauticalMile = 1.852; // exact: 1 NM = 1852 m
    private const double StatuteMilesPerNauticalMile = 1852 / 1609.344; // exact: 1 statute mile = 1609.344 m
    private const double LitresPerUsGallon = 3.785411784; // exact (NIST SP 811)
    private const double LitresPerImperialGallon = 4.54609; // exact (UK Units of Measurement Regulations 1995)
    private const double MillimetresPerInch = 25.4; // exact

    [FunctionText("Weight or fuel in pounds")]
    public static string Lb(TemplateContext context, object? value = null, int decimals = 0) =>
        In(context, value, "lb", 1, decimals, QuantityKind.Weight, QuantityKind.Fuel);

    [FunctionText("Weight or fuel in kilograms")]
    public static string Kg(TemplateContext context, object? value = null, int decimals = 0) =>
        In(context, value, "kg", Pounds.KilogramsPerPound, decimals, QuantityKind.Weight, QuantityKind.Fuel);

    [FunctionText("Fuel in US gallons, through the density of the type's fuel")]
    public static string Usg(TemplateContext context, object? value = null, int decimals = 0) => Volume(context, value, "usg", 1, decimals);

    [FunctionText("Fuel in litres, through the density of the type's fuel")]
    public static string Litres(TemplateContext context, object? value = null, int decimals = 0) =>
        Volume(context, value, "litres", LitresPerUsGallon, decimals);

    [FunctionText("Fuel in imperial gallons, through the density of the type's fuel")]
    public static string ImperialGallons(TemplateContext context, object? value = null, int decimals = 0) =>
        Volume(context, value, "imperial_gallons", LitresPerUsGallon / LitresPerImperialGallon, decimals);

    [FunctionText("Fuel flow in pounds an hour")]
    public static string LbPerHour(TemplateContext context, object? value = null, int decimals = 0) =>
        In(context, value, "lb_per_hour", 1, decimals, QuantityKind.Flow);

    [FunctionText("Fuel flow in kilograms an hour")]
    public static string KgPerHour(TemplateContext context, object? value = null, int decimals = 0) =>
        In(context, value, "kg_per_hour", Pounds.KilogramsPerPound, decimals, QuantityKind.Flow);

    [FunctionText("Distance in nautical miles")]
    public static string Nm(TemplateContext context, object? value = null, int decimals = 0) => In(context, value, "nm", 1, decimals, QuantityKind.Distance);

    [FunctionText("Distance in kilometres")]
    public static string Km(TemplateContext context, object? value = null, int decimals = 0) =>
        In(context, value, "km", KilometresPerNauticalMile, decimals, QuantityKind.Distance);

    [FunctionText("Distance in statute miles")]
    public static string Sm(TemplateContext context, object? value = null, int decimals = 0) =>
        In(context, value, "sm", StatuteMilesPerNauticalMile, decimals, QuantityKind.Distance);

    [FunctionText("Height or runway length in feet")]
    public static string Ft(TemplateContext context, object? value = null, int decimals = 0) => In(context, value, "ft", 1, decimals, QuantityKind.Height);

    [FunctionText("Height or runway length in metres")]
    public static string Metres(TemplateContext context, object? value = null, int decimals = 0) =>
        In(context, value, "metres", Feet.MetresPerFoot, decimals, QuantityKind.Height);

    [FunctionText("Altitude as a flight level, such as FL160")]
    public static string Fl(TemplateContext context, object? value = null) =>
        Checked(context.CurrentSpan, value, "fl", QuantityKind.Height) is { } height
            ? "FL" + Math.Round(height.Value / 100, MidpointRounding.AwayFromZero).ToString("000", CultureInfo.InvariantCulture)
            : NotKnown;

    [FunctionText("Arm in inches; two decimals unless said")]
    public static string Inches(TemplateContext context, object? value = null, int decimals = 2) => In(context, value, "inches", 1, decimals, QuantityKind.Arm);

    [FunctionText("Arm in millimetres")]
    public static string Mm(TemplateContext context, object? value = null, int decimals = 0) =>
        In(context, value, "mm", MillimetresPerInch, decimals, QuantityKind.Arm);

    [FunctionText("Speed in knots")]
    public static string Kt(TemplateContext context, object? value = null, int decimals = 0) => In(context, value, "kt", 1, decimals, QuantityKind.Speed);

    [FunctionText("Speed in kilometres an hour")]
    public static string Kmh(TemplateContext context, object? value = null, int decimals = 0) =>
        In(context, value, "kmh", KilometresPerNauticalMile, decimals, QuantityKind.Speed);

    [FunctionText("Temperature in degrees Celsius")]
    public static string Celsius(TemplateContext context, object? value = null, int decimals = 0) =>
        In(context, value, "celsius", 1, decimals, QuantityKind.Temperature);

    [FunctionText("Temperature in degrees Fahrenheit")]
    public static string Fahrenheit(TemplateContext context, object? value = null, int decimals = 0) =>
        Checked(context.CurrentSpan, value, "fahrenheit", QuantityKind.Temperature) is { } warm
            ? (warm with { Value = (warm.Value * 1.8) + 32 }).Text(1, decimals, context.CurrentCulture)
            : NotKnown;

    [FunctionText("Course, heading or bearing in three digits, 001 to 360")]
    public static string Deg(TemplateContext context, object? value = null)
    {
        if (Checked(context.CurrentSpan, value, "deg", QuantityKind.Angle) is not { } angle)
            return NotKnown;
        var degrees = (int)Math.Round(angle.Value, MidpointRounding.AwayFromZero) % 360;
        return (degrees <= 0 ? degrees + 360 : degrees).ToString("000", CultureInfo.InvariantCulture);
    }

    [FunctionText("Magnetic variation with E or W, such as 12°W")]
    public static string EastWest(TemplateContext context, object? value = null)
    {
        if (Checked(context.CurrentSpan, value, "east_west", QuantityKind.Angle) is not { } angle)
            return NotKnown;
        var degrees = Math.Round(angle.Value, MidpointRounding.AwayFromZero);
        return Math.Abs(degrees).ToString("0", CultureInfo.InvariantCulture) + "°" + (degrees == 0 ? "" : degrees > 0 ? "E" : "W");
    }

    [FunctionText("A plain number with so many decimals, such as a factor or what a finding requires")]
    public static string Number(TemplateContext context, object? value = null, int decimals = 0) => value switch
    {
        null => NotKnown,
        Quantity quantity => quantity.Text(1, decimals, context.CurrentCulture),
        Elapsed time => time.Minutes(decimals, context.CurrentCulture),
        double or int or long or float or decimal => Quantity.Text(Math.Round(Convert.ToDouble(value, CultureInfo.InvariantCulture), decimals,
            MidpointRounding.AwayFromZero), decimals, isSigned: false, context.CurrentCulture),
        _ => throw Wrong(context.CurrentSpan, value, "number", "a number"),
    };

    [FunctionText("A length of time, or a plain number of hours, as hours and minutes, such as 1:07")]
    public static string Hm(TemplateContext context, object? value = null) => value switch
    {
        null => NotKnown,
        Elapsed time => time.HoursMinutes(),
        Quantity { Kind: QuantityKind.Plain, PlainUnit: "h" } hours => hours.HoursMinutes(),
        _ => throw Wrong(context.CurrentSpan, value, "hm", "a length of time"),
    };

    [FunctionText("A length of time in minutes")]
    public static string Minutes(TemplateContext context, object? value = null, int decimals = 0) => value switch
    {
        null => NotKnown,
        Elapsed time => time.Minutes(decimals, context.CurrentCulture),
        _ => throw Wrong(context.CurrentSpan, value, "minutes", "a length of time"),
    };

    [FunctionText("A time of day in UTC, such as 14:35")]
    public static string Utc(TemplateContext context, object? value = null) => value switch
    {
        null => NotKnown,
        ClockTime clock => clock.UtcClock(),
        _ => throw Wrong(context.CurrentSpan, value, "utc", "a time of day"),
    };

    [FunctionText("A time of day at its own place, such as 09:35")]
    public static string Local(TemplateContext context, object? value = null) => value switch
    {
        null => NotKnown,
        ClockTime clock => clock.LocalClock(),
        _ => throw Wrong(context.CurrentSpan, value, "local", "a time of day"),
    };

    [FunctionText("Density of fuel in kilograms a litre; three decimals unless said")]
    public static string KgPerLitre(TemplateContext context, object? value = null, int decimals = 3) => value switch
    {
        null => NotKnown,
        double density =>
            Quantity.Text(Math.Round(density * KilogramsPerLitre, decimals, MidpointRounding.AwayFromZero), decimals, isSigned: false, context.CurrentCulture),
        _ => throw Wrong(context.CurrentSpan, value, "kg_per_litre", "a density"),
    };

    [FunctionText("A text that is HTML already and is to be written as it stands; only for texts of your own")]
    public static object? Raw(object? value = null) => value is null ? null : new Markup(value.ToString() ?? "");

    [FunctionText("A text inside quotes in a style sheet, such as the content of a page margin")]
    public static object CssText(object? value = null)
    {
        var runes = (value?.ToString() ?? "").EnumerateRunes().ToArray();
        return new Markup(string.Concat(runes.Select((letter, index) => CssLetter(letter, index > 0 && IsEscaped(runes[index - 1])))));
    }

    [FunctionText("The fingerprint of a script by which a page's Content-Security-Policy allows it and no other, such as 'sha256-...'")]
    public static object ScriptHash(object? value = null) => new Markup("'sha256-"
        + Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(Encoding.UTF8.GetBytes(LineMarks.OutOf(value?.ToString() ?? "").Html))) + "'");

    /// <summary>A space after an escape would be taken for its end (CSS Syntax 3, 4.3.7), so it is escaped too.</summary>
    private static string CssLetter(Rune letter, bool isAfterEscape) => IsEscaped(letter) || (isAfterEscape && letter.Value == ' ')
        ? "\\" + letter.Value.ToString("x6", CultureInfo.InvariantCulture)
        : letter.Value < ' ' ? " " : letter.ToString();

    private static bool IsEscaped(Rune letter) => letter.IsAscii && !char.IsAsciiLetterOrDigit((char)letter.Value) && letter.Value != ' ';

    private static string In(TemplateContext context, object? value, string function, double factor, int decimals, params ReadOnlySpan<QuantityKind> kinds) =>
        Checked(context.CurrentSpan, value, function, kinds) is { } quantity
            ? quantity.Text(factor, Math.Clamp(decimals, 0, 6), context.CurrentCulture)
            : NotKnown;

    private static string Volume(TemplateContext context, object? value, string function, double gallonsTo, int decimals) =>
        Checked(context.CurrentSpan, value, function, QuantityKind.Fuel) is { Density: > 0 } fuel
            ? fuel.Text(gallonsTo / (fuel.Density ?? 1), Math.Clamp(decimals, 0, 6), context.CurrentCulture)
            : NotKnown;

    private static Quantity? Checked(SourceSpan span, object? value, string function, params ReadOnlySpan<QuantityKind> kinds) => value switch
    {
        null => null,
        Quantity quantity when kinds.Contains(quantity.Kind) => quantity,
        _ => throw Wrong(span, value, function, Named(kinds)),
    };

    private static string Named(ReadOnlySpan<QuantityKind> kinds) => string.Join(" or ", kinds.ToArray().Select(KindName));

    private static ValueError Wrong(SourceSpan span, object value, string function, string wanted) =>
        new(span, $"`{function}` wants {wanted}, not {ValueName(value)}.");

    private static string ValueName(object value) => value switch
    {
        Quantity quantity => KindName(quantity.Kind),
        Elapsed => "a length of time",
        ClockTime => "a time of day",
        string => "a text",
        bool => "a yes or no",
        int or double => "a bare number",
        _ => "a group of values",
    };

    private static string KindName(QuantityKind kind) => kind switch
    {
        QuantityKind.Weight => "a weight",
        QuantityKind.Fuel => "an amount of fuel",
        QuantityKind.Flow => "a fuel flow",
        QuantityKind.Distance => "a distance",
        QuantityKind.Height => "a height or length",
        QuantityKind.Arm => "an arm",
        QuantityKind.Speed => "a speed",
        QuantityKind.Temperature => "a temperature",
        QuantityKind.Angle => "an angle",
        QuantityKind.Plain => "a plain number",
    };
}
