using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>A temperature on the Celsius scale.</summary>
/// <param name="Value">The temperature [°C].</param>
public readonly record struct Celsius(double Value) : IComparable<Celsius>
{
    /// <summary>Nothing of it.</summary>
    public static readonly Celsius Zero;

    /// <summary>The difference of two temperatures [K], a plain number.</summary>
    public static double operator -(Celsius a, Celsius b) => a.Value - b.Value;

    /// <summary>This temperature warmer by a difference [K].</summary>
    public static Celsius operator +(Celsius a, double kelvin) => new(a.Value + kelvin);

    /// <summary>Zero degrees Celsius on the kelvin scale [K], exact (ITS-90, SI brochure).</summary>
    public const double ZeroInKelvin = 273.15;

    /// <summary>The same temperature in kelvin [K].</summary>
    public double Kelvin => Value + ZeroInKelvin;

    /// <summary>Less than.</summary>
    public static bool operator <(Celsius a, Celsius b) => a.Value < b.Value;

    /// <summary>More than.</summary>
    public static bool operator >(Celsius a, Celsius b) => a.Value > b.Value;

    /// <summary>At most.</summary>
    public static bool operator <=(Celsius a, Celsius b) => a.Value <= b.Value;

    /// <summary>At least.</summary>
    public static bool operator >=(Celsius a, Celsius b) => a.Value >= b.Value;

    /// <summary>The smaller of two.</summary>
    public static Celsius Min(Celsius a, Celsius b) => a.Value <= b.Value ? a : b;

    /// <summary>The greater of two.</summary>
    public static Celsius Max(Celsius a, Celsius b) => a.Value >= b.Value ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Celsius other) => Value.CompareTo(other.Value);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.###", CultureInfo.InvariantCulture) + " °C";
}
