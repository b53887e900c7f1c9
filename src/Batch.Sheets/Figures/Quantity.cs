using System.Globalization;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Figures;

/// <summary>
/// A figure for people: a number in its own unit, which way it is rounded, and for fuel its density. Templates choose the unit it is written in.
/// </summary>
/// <param name="Value">The number in the unit of the house for its kind.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Rounding">Which way it is rounded.</param>
internal sealed record Quantity(double Value, QuantityKind Kind, RoundingWay Rounding = RoundingWay.Nearest) : IPrintable
{
    /// <summary>A digit that a rounding up or down must exceed to count, so that 100.0000001 is not 101.</summary>
    private const double Grain = 1e-6;

    /// <summary>Density of the fuel [lb/US gal]; null where it is not known or this is not fuel.</summary>
    public double? Density { get; init; }

    /// <summary>Whether a plus sign is written before a positive number: for margins and components.</summary>
    public bool IsSigned { get; init; }

    /// <summary>The limit and the figure with which it is printed, so that the three agree; null for a number by itself.</summary>
    public HeldFigure? Held { get; init; }

    /// <summary>
    /// What there was before this was taken off, in the unit of the house; printed is the difference of the printed rests, so that a column adds up. Null for a
    /// number by itself.
    /// </summary>
    public double? TakenFrom { get; init; }

    /// <summary>Unit of a plain number.</summary>
    public string PlainUnit { get; init; } = "";

    [Value("The bare number in the unit of the house: lb, lb/h, NM, ft, in, kt, °C, deg")]
    public double Number => Value;

    [Value("Whether it is below zero")]
    public bool IsNegative => Held is null ? Value < 0 : Value < -Grain;

    public static Quantity Of(Pounds weight, RoundingWay rounding = RoundingWay.Nearest) => new(weight.Value, QuantityKind.Weight, rounding);

    public static Quantity? Of(Pounds? weight, RoundingWay rounding = RoundingWay.Nearest) => weight is { } known ? Of(known, rounding) : null;

    public static Quantity OfFuel(Pounds fuel, double? density, RoundingWay rounding = RoundingWay.Nearest) =>
        new(fuel.Value, QuantityKind.Fuel, rounding) { Density = density };

    public static Quantity Of(NauticalMiles distance) => new(distance.Value, QuantityKind.Distance);

    public static Quantity Of(Feet height, RoundingWay rounding = RoundingWay.Nearest) => new(height.Value, QuantityKind.Height, rounding);

    public static Quantity? Of(Feet? height, RoundingWay rounding = RoundingWay.Nearest) => height is { } known ? Of(known, rounding) : null;

    public static Quantity Of(Inches arm) => new(arm.Value, QuantityKind.Arm);

    public static Quantity? Of(Inches? arm) => arm is { } known ? Of(known) : null;

    public static Quantity Of(Knots speed) => new(speed.Value, QuantityKind.Speed);

    public static Quantity? Of(Knots? speed) => speed is { } known ? Of(known) : null;

    public static Quantity? Of(Celsius? temperature, RoundingWay rounding = RoundingWay.Nearest) =>
        temperature is { } known ? new Quantity(known.Value, QuantityKind.Temperature, rounding) : null;

    public static Quantity? OfDegrees(double? degrees) => degrees is { } known ? new Quantity(known, QuantityKind.Angle) : null;

    public static Quantity? OfPlain(double? number, string unit) => number is { } known ? new Quantity(known, QuantityKind.Plain) { PlainUnit = unit } : null;

    /// <summary>A limit, what is held against it and the margin between them, printed so that they agree in whatever unit.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="actual">What is held against it, of the same kind.</param>
    /// <param name="isLeast">Whether the limit is a least value; else a greatest.</param>
    public static (Quantity Limit, Quantity Actual, Quantity Margin) Trio(Quantity limit, Quantity actual, bool isLeast)
    {
        HeldFigure Part(HeldPart part) => new(limit.Value, actual.Value, isLeast, part);
        return (
            limit with { Rounding = isLeast ? RoundingWay.Up : RoundingWay.Down, Held = Part(HeldPart.Limit) },
            actual with { Rounding = isLeast ? RoundingWay.Down : RoundingWay.Up, Held = Part(HeldPart.Actual) },
            limit with
            {
                Value = isLeast
                ? actual.Value - limit.Value
                : limit.Value - actual.Value,
                Rounding = RoundingWay.Down,
                IsSigned = true,
                Held = Part(HeldPart.Margin)
            });
    }

    public Quantity Signed() => this with { IsSigned = true };

    /// <summary>The number in another unit, rounded this quantity's way, with thousands marks and a true minus sign.</summary>
    /// <param name="factor">Units per unit of the house.</param>
    /// <param name="decimals">Decimals, 0 to 6.</param>
    /// <param name="culture">How numbers are written; the invariant manner where none is given.</param>
    public string Text(double factor, int decimals, CultureInfo? culture = null) =>
        Text(Printed(factor, decimals), decimals, IsSigned, culture);

    /// <summary>A rounded number with thousands marks and a true minus sign.</summary>
    public static string Text(double rounded, int decimals, bool isSigned, CultureInfo? culture = null)
    {
        var digits = Math.Abs(rounded).ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), culture ?? CultureInfo.InvariantCulture);
        return rounded < 0 ? "\u2212" + digits : isSigned && rounded > 0 ? "+" + digits : digits;
    }

    /// <summary>A number rounded this quantity's way.</summary>
    public double Rounded(double number, int decimals)
    {
        var scale = Math.Pow(10, decimals);
        return Rounding switch
        {
            RoundingWay.Nearest => Math.Round(number * scale, MidpointRounding.AwayFromZero) / scale,
            RoundingWay.Up => Math.Ceiling((number * scale) - Grain) / scale,
            RoundingWay.Down => Math.Floor((number * scale) + Grain) / scale,
        };
    }

    /// <summary>Hours as hours and minutes, rounded this quantity's way, such as <c>12:25</c>.</summary>
    public string HoursMinutes() => Elapsed.HoursMinutes((long)Printed(60, 0));

    private double Printed(double factor, int decimals) => Held is { } held
        ? held.Printed(factor, decimals)
        : TakenFrom is { } before ? Rounded(before * factor, decimals) - Rounded((before - Value) * factor, decimals) : Rounded(Value * factor, decimals);

    private int PlainDecimals => PlainUnit switch { "in" or "SM" or "" => 2, "lb/USG" or "kg/L" => 3, "h" or "%" => 1, _ => 0 };

    /// <summary>The number with its unit, as it is written when a template names no unit.</summary>
    public override string ToString() => ToString(CultureInfo.InvariantCulture);

    /// <summary>The number with its unit in the manner of a language.</summary>
    /// <param name="culture">How numbers are written.</param>
    public string ToString(CultureInfo culture) => Kind switch
    {
        QuantityKind.Weight or QuantityKind.Fuel => Text(1, 0, culture) + " lb",
        QuantityKind.Flow => Text(1, 0, culture) + " lb/h",
        QuantityKind.Distance => Text(1, 0, culture) + " NM",
        QuantityKind.Height => Text(1, 0, culture) + " ft",
        QuantityKind.Arm => Text(1, 2, culture) + " in",
        QuantityKind.Speed => Text(1, 0, culture) + " kt",
        QuantityKind.Temperature => Text(1, 0, culture) + " °C",
        QuantityKind.Angle => Text(1, 0, culture) + "°",
        QuantityKind.Plain => (Text(1, PlainDecimals, culture) + " " + PlainUnit).TrimEnd(),
    };
}
