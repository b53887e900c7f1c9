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
        var byTrip = Compare(Trip, other.Trip);
        if (byTrip != 0) return byTrip;
        var byNumber = Number.CompareTo(other.Number);
        return byNumber != 0 ? byNumber : Row.CompareTo(other.Row);
    }

    /// <summary>Names in the order in which people count: T9 before T10. Where only zeros before a number differ, by the letters.</summary>
    private static int Compare(string one, string other)
    {
        var (i, j) = (0, 0);
        while (i < one.Length && j < other.Length)
        {
            if (char.IsAsciiDigit(one[i]) && char.IsAsciiDigit(other[j]))
            {
                var a = Digits(one, ref i);
                var b = Digits(other, ref j);
                var byNumber = a.Length != b.Length ? a.Length.CompareTo(b.Length) : a.SequenceCompareTo(b);
                if (byNumber != 0) return byNumber;
            }
            else if (one[i++].CompareTo(other[j++]) is var byLetter && byLetter != 0)
            {
                return byLetter;
            }
        }

        var byRest = (one.Length - i).CompareTo(other.Length - j);
        return byRest != 0 ? byRest : string.CompareOrdinal(one, other);
    }

    private static ReadOnlySpan<char> Digits(string text, ref int at)
    {
        while (at < text.Length && text[at] == '0') at++;
        var start = at;
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return text.AsSpan(start, at - start);
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
