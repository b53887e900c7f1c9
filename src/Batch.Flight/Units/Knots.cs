using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>A speed: true airspeed, ground speed or wind, as the name that holds it says; 1 kt = 1 NM/h.</summary>
/// <param name="Value">The speed [kt].</param>
public readonly record struct Knots(double Value) : IComparable<Knots>
{
    /// <summary>Nothing of it.</summary>
    public static readonly Knots Zero;

    /// <summary>The sum.</summary>
    public static Knots operator +(Knots a, Knots b) => new(a.Value + b.Value);

    /// <summary>The difference.</summary>
    public static Knots operator -(Knots a, Knots b) => new(a.Value - b.Value);

    /// <summary>The opposite.</summary>
    public static Knots operator -(Knots a) => new(-a.Value);

    /// <summary>Scaled by a plain factor.</summary>
    public static Knots operator *(Knots a, double factor) => new(a.Value * factor);

    /// <summary>The ratio, a plain number.</summary>
    public static double operator /(Knots a, Knots b) => a.Value / b.Value;

    /// <summary>The distance covered at this speed in a time.</summary>
    public static NauticalMiles operator *(Knots speed, Duration time) => new(speed.Value * time.TotalHours);

    /// <summary>Less than.</summary>
    public static bool operator <(Knots a, Knots b) => a.Value < b.Value;

    /// <summary>More than.</summary>
    public static bool operator >(Knots a, Knots b) => a.Value > b.Value;

    /// <summary>At most.</summary>
    public static bool operator <=(Knots a, Knots b) => a.Value <= b.Value;

    /// <summary>At least.</summary>
    public static bool operator >=(Knots a, Knots b) => a.Value >= b.Value;

    /// <summary>The smaller of two.</summary>
    public static Knots Min(Knots a, Knots b) => a.Value <= b.Value ? a : b;

    /// <summary>The greater of two.</summary>
    public static Knots Max(Knots a, Knots b) => a.Value >= b.Value ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Knots other) => Value.CompareTo(other.Value);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.###", CultureInfo.InvariantCulture) + " kt";
}
