using System.Globalization;

namespace Batch.Flight.Week;

/// <summary>What names a leg: its trip and its number in the trip.</summary>
/// <param name="Trip">Trip name.</param>
/// <param name="Number">Leg number, 1 or more; 0 where it could not be read.</param>
public readonly record struct LegKey(string Trip, int Number) : IComparable<LegKey>
{
    /// <summary>Row of the Legs sheet, where only that tells a leg whose number could not be read from others of its trip; 0 elsewhere.</summary>
    public int Row { get; init; }

    /// <inheritdoc/>
    public int CompareTo(LegKey other)
    {
        var byTrip = string.CompareOrdinal(Trip, other.Trip);
        if (byTrip != 0) return byTrip;
        var byNumber = Number.CompareTo(other.Number);
        return byNumber != 0 ? byNumber : Row.CompareTo(other.Row);
    }

    /// <summary>Less than.</summary>
    public static bool operator <(LegKey a, LegKey b) => a.CompareTo(b) < 0;

    /// <summary>More than.</summary>
    public static bool operator >(LegKey a, LegKey b) => a.CompareTo(b) > 0;

    /// <summary>At most.</summary>
    public static bool operator <=(LegKey a, LegKey b) => a.CompareTo(b) <= 0;

    /// <summary>At least.</summary>
    public static bool operator >=(LegKey a, LegKey b) => a.CompareTo(b) >= 0;

    /// <summary>Such as <c>T101/2</c>, or <c>T101, row 5</c> where the number could not be read.</summary>
    public override string ToString() =>
        Number > 0 ? Trip + "/" + Number.ToString(CultureInfo.InvariantCulture)
        : Row > 0 ? Trip + ", row " + Row.ToString(CultureInfo.InvariantCulture)
        : Trip;
}
