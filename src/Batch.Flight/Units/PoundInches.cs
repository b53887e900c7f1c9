using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>A moment about the datum.</summary>
/// <param name="Value">The moment [lb·in].</param>
public readonly record struct PoundInches(double Value) : IComparable<PoundInches>
{
    /// <summary>Nothing of it.</summary>
    public static readonly PoundInches Zero;

    /// <summary>The sum.</summary>
    public static PoundInches operator +(PoundInches a, PoundInches b) => new(a.Value + b.Value);

    /// <summary>The difference.</summary>
    public static PoundInches operator -(PoundInches a, PoundInches b) => new(a.Value - b.Value);

    /// <summary>The opposite.</summary>
    public static PoundInches operator -(PoundInches a) => new(-a.Value);

    /// <summary>Scaled by a plain factor.</summary>
    public static PoundInches operator *(PoundInches a, double factor) => new(a.Value * factor);

    /// <summary>The arm at which a weight has this moment.</summary>
    public static Inches operator /(PoundInches moment, Pounds weight) => new(moment.Value / weight.Value);

    /// <summary>Less than.</summary>
    public static bool operator <(PoundInches a, PoundInches b) => a.Value < b.Value;

    /// <summary>More than.</summary>
    public static bool operator >(PoundInches a, PoundInches b) => a.Value > b.Value;

    /// <summary>At most.</summary>
    public static bool operator <=(PoundInches a, PoundInches b) => a.Value <= b.Value;

    /// <summary>At least.</summary>
    public static bool operator >=(PoundInches a, PoundInches b) => a.Value >= b.Value;

    /// <summary>The smaller of two.</summary>
    public static PoundInches Min(PoundInches a, PoundInches b) => a.Value <= b.Value ? a : b;

    /// <summary>The greater of two.</summary>
    public static PoundInches Max(PoundInches a, PoundInches b) => a.Value >= b.Value ? a : b;

    /// <inheritdoc/>
    public int CompareTo(PoundInches other) => Value.CompareTo(other.Value);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.###", CultureInfo.InvariantCulture) + " lb·in";
}
