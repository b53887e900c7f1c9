using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>A weight (mass), or fuel by weight, in pounds avoirdupois; 1 lb = 0.45359237 kg exactly (NIST SP 811).</summary>
/// <param name="Value">The weight [lb]; negative for a shortage.</param>
public readonly record struct Pounds(double Value) : IComparable<Pounds>
{
    /// <summary>Nothing of it.</summary>
    public static readonly Pounds Zero;

    /// <summary>The sum.</summary>
    public static Pounds operator +(Pounds a, Pounds b) => new(a.Value + b.Value);

    /// <summary>The difference.</summary>
    public static Pounds operator -(Pounds a, Pounds b) => new(a.Value - b.Value);

    /// <summary>The opposite.</summary>
    public static Pounds operator -(Pounds a) => new(-a.Value);

    /// <summary>Scaled by a plain factor.</summary>
    public static Pounds operator *(Pounds a, double factor) => new(a.Value * factor);

    /// <summary>The ratio, a plain number.</summary>
    public static double operator /(Pounds a, Pounds b) => a.Value / b.Value;

    /// <summary>The moment of this weight at an arm.</summary>
    public static PoundInches operator *(Pounds weight, Inches arm) => new(weight.Value * arm.Value);

    /// <summary>The weight of a mass in kilograms.</summary>
    /// <param name="kilograms">The mass [kg].</param>
    public static Pounds FromKilograms(double kilograms) => new(kilograms / KilogramsPerPound);

    /// <summary>Kilograms in a pound [kg/lb], exact (international yard and pound agreement 1959; NIST SP 811).</summary>
    public const double KilogramsPerPound = 0.45359237;

    /// <summary>The same weight in kilograms [kg].</summary>
    public double Kilograms => Value * KilogramsPerPound;

    /// <summary>Less than.</summary>
    public static bool operator <(Pounds a, Pounds b) => a.Value < b.Value;

    /// <summary>More than.</summary>
    public static bool operator >(Pounds a, Pounds b) => a.Value > b.Value;

    /// <summary>At most.</summary>
    public static bool operator <=(Pounds a, Pounds b) => a.Value <= b.Value;

    /// <summary>At least.</summary>
    public static bool operator >=(Pounds a, Pounds b) => a.Value >= b.Value;

    /// <summary>The smaller of two.</summary>
    public static Pounds Min(Pounds a, Pounds b) => a.Value <= b.Value ? a : b;

    /// <summary>The greater of two.</summary>
    public static Pounds Max(Pounds a, Pounds b) => a.Value >= b.Value ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Pounds other) => Value.CompareTo(other.Value);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.###", CultureInfo.InvariantCulture) + " lb";
}
