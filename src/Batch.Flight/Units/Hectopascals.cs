using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>An air pressure or an altimeter setting.</summary>
/// <param name="Value">The pressure [hPa], above zero.</param>
public readonly record struct Hectopascals(double Value) : IComparable<Hectopascals>
{
    /// <summary>Nothing of it.</summary>
    public static readonly Hectopascals Zero;

    /// <summary>The ratio, a plain number.</summary>
    public static double operator /(Hectopascals a, Hectopascals b) => a.Value / b.Value;

    /// <summary>Hectopascals in an inch of mercury at 0 °C [hPa/inHg], conventional (NIST SP 811, B.8: 3.386389 kPa).</summary>
    public const double HectopascalsPerInchOfMercury = 33.86389;

    /// <summary>Less than.</summary>
    public static bool operator <(Hectopascals a, Hectopascals b) => a.Value < b.Value;

    /// <summary>More than.</summary>
    public static bool operator >(Hectopascals a, Hectopascals b) => a.Value > b.Value;

    /// <summary>At most.</summary>
    public static bool operator <=(Hectopascals a, Hectopascals b) => a.Value <= b.Value;

    /// <summary>At least.</summary>
    public static bool operator >=(Hectopascals a, Hectopascals b) => a.Value >= b.Value;

    /// <summary>The smaller of two.</summary>
    public static Hectopascals Min(Hectopascals a, Hectopascals b) => a.Value <= b.Value ? a : b;

    /// <summary>The greater of two.</summary>
    public static Hectopascals Max(Hectopascals a, Hectopascals b) => a.Value >= b.Value ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Hectopascals other) => Value.CompareTo(other.Value);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.###", CultureInfo.InvariantCulture) + " hPa";
}
