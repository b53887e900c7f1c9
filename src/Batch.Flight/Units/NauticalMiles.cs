using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>A distance over the ground or through the air; 1 NM = 1852 m exactly.</summary>
/// <param name="Value">The distance [NM], zero or more for a length.</param>
public readonly record struct NauticalMiles(double Value) : IComparable<NauticalMiles>
{
    /// <summary>Nothing of it.</summary>
    public static readonly NauticalMiles Zero;

    /// <summary>The sum.</summary>
    public static NauticalMiles operator +(NauticalMiles a, NauticalMiles b) => new(a.Value + b.Value);

    /// <summary>The difference.</summary>
    public static NauticalMiles operator -(NauticalMiles a, NauticalMiles b) => new(a.Value - b.Value);

    /// <summary>The opposite.</summary>
    public static NauticalMiles operator -(NauticalMiles a) => new(-a.Value);

    /// <summary>Scaled by a plain factor.</summary>
    public static NauticalMiles operator *(NauticalMiles a, double factor) => new(a.Value * factor);

    /// <summary>The ratio, a plain number.</summary>
    public static double operator /(NauticalMiles a, NauticalMiles b) => a.Value / b.Value;

    /// <summary>Metres in a nautical mile [m/NM], exact by definition (ICAO Annex 5).</summary>
    public const double MetresPerNauticalMile = 1852;

    /// <summary>The distance of a length in metres.</summary>
    /// <param name="metres">The length [m].</param>
    public static NauticalMiles FromMetres(double metres) => new(metres / MetresPerNauticalMile);

    /// <summary>The same distance in metres [m].</summary>
    public double Metres => Value * MetresPerNauticalMile;

    /// <summary>The time this distance takes at a speed.</summary>
    /// <exception cref="DivideByZeroException">The speed is zero or negative.</exception>
    public static Duration operator /(NauticalMiles distance, Knots speed) => speed.Value > 0
        ? Duration.FromSeconds(distance.Value / speed.Value * 3600)
        : throw new DivideByZeroException("No time can be given for a distance at a speed of " + speed);

    /// <summary>Less than.</summary>
    public static bool operator <(NauticalMiles a, NauticalMiles b) => a.Value < b.Value;

    /// <summary>More than.</summary>
    public static bool operator >(NauticalMiles a, NauticalMiles b) => a.Value > b.Value;

    /// <summary>At most.</summary>
    public static bool operator <=(NauticalMiles a, NauticalMiles b) => a.Value <= b.Value;

    /// <summary>At least.</summary>
    public static bool operator >=(NauticalMiles a, NauticalMiles b) => a.Value >= b.Value;

    /// <summary>The smaller of two.</summary>
    public static NauticalMiles Min(NauticalMiles a, NauticalMiles b) => a.Value <= b.Value ? a : b;

    /// <summary>The greater of two.</summary>
    public static NauticalMiles Max(NauticalMiles a, NauticalMiles b) => a.Value >= b.Value ? a : b;

    /// <inheritdoc/>
    public int CompareTo(NauticalMiles other) => Value.CompareTo(other.Value);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.###", CultureInfo.InvariantCulture) + " NM";
}
