using System.Globalization;

namespace Batch.Flight.Week;

/// <summary>What names a leg: its trip and its number in the trip.</summary>
/// <param name="Trip">Trip name.</param>
/// <param name="Number">Leg number, 1 or more.</param>
public readonly record struct LegKey(string Trip, int Number) : IComparable<LegKey>
{
    /// <inheritdoc/>
    public int CompareTo(LegKey other)
    {
        var byTrip = string.CompareOrdinal(Trip, other.Trip);
        return byTrip != 0 ? byTrip : Number.CompareTo(other.Number);
    }

    /// <summary>Less than.</summary>
    public static bool operator <(LegKey a, LegKey b) => a.CompareTo(b) < 0;

    /// <summary>More than.</summary>
    public static bool operator >(LegKey a, LegKey b) => a.CompareTo(b) > 0;

    /// <summary>At most.</summary>
    public static bool operator <=(LegKey a, LegKey b) => a.CompareTo(b) <= 0;

    /// <summary>At least.</summary>
    public static bool operator >=(LegKey a, LegKey b) => a.CompareTo(b) >= 0;

    /// <summary>Such as <c>T101/2</c>.</summary>
    public override string ToString() => Trip + "/" + Number.ToString(CultureInfo.InvariantCulture);
}
