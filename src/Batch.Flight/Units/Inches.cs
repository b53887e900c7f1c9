using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>An arm or a centre of gravity along the aircraft from its datum; 1 in = 25.4 mm exactly.</summary>
/// <param name="Value">The arm [in], positive aft of the datum.</param>
public readonly record struct Inches(double Value) : IComparable<Inches>
{
    /// <summary>Nothing of it.</summary>
    public static readonly Inches Zero;

    /// <summary>The sum.</summary>
    public static Inches operator +(Inches a, Inches b) => new(a.Value + b.Value);

    /// <summary>The difference.</summary>
    public static Inches operator -(Inches a, Inches b) => new(a.Value - b.Value);

    /// <summary>The opposite.</summary>
    public static Inches operator -(Inches a) => new(-a.Value);

    /// <summary>Scaled by a plain factor.</summary>
    public static Inches operator *(Inches a, double factor) => new(a.Value * factor);

    /// <summary>The ratio, a plain number.</summary>
    public static double operator /(Inches a, Inches b) => a.Value / b.Value;

    /// <summary>Less than.</summary>
    public static bool operator <(Inches a, Inches b) => a.Value < b.Value;

    /// <summary>More than.</summary>
    public static bool operator >(Inches a, Inches b) => a.Value > b.Value;

    /// <summary>At most.</summary>
    public static bool operator <=(Inches a, Inches b) => a.Value <= b.Value;

    /// <summary>At least.</summary>
    public static bool operator >=(Inches a, Inches b) => a.Value >= b.Value;

    /// <summary>The smaller of two.</summary>
    public static Inches Min(Inches a, Inches b) => a.Value <= b.Value ? a : b;

    /// <summary>The greater of two.</summary>
    public static Inches Max(Inches a, Inches b) => a.Value >= b.Value ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Inches other) => Value.CompareTo(other.Value);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.####", CultureInfo.InvariantCulture) + " in";
}
