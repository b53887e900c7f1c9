using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>A height, elevation, altitude or runway length; 1 ft = 0.3048 m exactly. What kind of altitude it is stands in the name that holds it.</summary>
/// <param name="Value">The length [ft].</param>
public readonly record struct Feet(double Value) : IComparable<Feet>
{
    /// <summary>Nothing of it.</summary>
    public static readonly Feet Zero;

    /// <summary>The sum.</summary>
    public static Feet operator +(Feet a, Feet b) => new(a.Value + b.Value);

    /// <summary>The difference.</summary>
    public static Feet operator -(Feet a, Feet b) => new(a.Value - b.Value);

    /// <summary>The opposite.</summary>
    public static Feet operator -(Feet a) => new(-a.Value);

    /// <summary>Scaled by a plain factor.</summary>
    public static Feet operator *(Feet a, double factor) => new(a.Value * factor);

    /// <summary>The ratio, a plain number.</summary>
    public static double operator /(Feet a, Feet b) => a.Value / b.Value;

    /// <summary>Metres in a foot [m/ft], exact (international yard and pound agreement 1959; NIST SP 811).</summary>
    public const double MetresPerFoot = 0.3048;

    /// <summary>The same length in metres [m].</summary>
    public double Metres => Value * MetresPerFoot;

    /// <summary>Less than.</summary>
    public static bool operator <(Feet a, Feet b) => a.Value < b.Value;

    /// <summary>More than.</summary>
    public static bool operator >(Feet a, Feet b) => a.Value > b.Value;

    /// <summary>At most.</summary>
    public static bool operator <=(Feet a, Feet b) => a.Value <= b.Value;

    /// <summary>At least.</summary>
    public static bool operator >=(Feet a, Feet b) => a.Value >= b.Value;

    /// <summary>The smaller of two.</summary>
    public static Feet Min(Feet a, Feet b) => a.Value <= b.Value ? a : b;

    /// <summary>The greater of two.</summary>
    public static Feet Max(Feet a, Feet b) => a.Value >= b.Value ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Feet other) => Value.CompareTo(other.Value);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.###", CultureInfo.InvariantCulture) + " ft";
}
