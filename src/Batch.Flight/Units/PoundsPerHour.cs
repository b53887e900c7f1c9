using System.Globalization;

namespace Batch.Flight.Units;

/// <summary>A fuel flow by weight.</summary>
/// <param name="Value">The flow [lb/h], zero or more.</param>
public readonly record struct PoundsPerHour(double Value) : IComparable<PoundsPerHour>
{
    /// <summary>Nothing of it.</summary>
    public static readonly PoundsPerHour Zero;

    /// <summary>The sum.</summary>
    public static PoundsPerHour operator +(PoundsPerHour a, PoundsPerHour b) => new(a.Value + b.Value);

    /// <summary>The difference.</summary>
    public static PoundsPerHour operator -(PoundsPerHour a, PoundsPerHour b) => new(a.Value - b.Value);

    /// <summary>The opposite.</summary>
    public static PoundsPerHour operator -(PoundsPerHour a) => new(-a.Value);

    /// <summary>Scaled by a plain factor.</summary>
    public static PoundsPerHour operator *(PoundsPerHour a, double factor) => new(a.Value * factor);

    /// <summary>The ratio, a plain number.</summary>
    public static double operator /(PoundsPerHour a, PoundsPerHour b) => a.Value / b.Value;

    /// <summary>The fuel used at this flow in a time.</summary>
    public static Pounds operator *(PoundsPerHour flow, Duration time) => new(flow.Value * time.TotalHours);

    /// <summary>Less than.</summary>
    public static bool operator <(PoundsPerHour a, PoundsPerHour b) => a.Value < b.Value;

    /// <summary>More than.</summary>
    public static bool operator >(PoundsPerHour a, PoundsPerHour b) => a.Value > b.Value;

    /// <summary>At most.</summary>
    public static bool operator <=(PoundsPerHour a, PoundsPerHour b) => a.Value <= b.Value;

    /// <summary>At least.</summary>
    public static bool operator >=(PoundsPerHour a, PoundsPerHour b) => a.Value >= b.Value;

    /// <summary>The smaller of two.</summary>
    public static PoundsPerHour Min(PoundsPerHour a, PoundsPerHour b) => a.Value <= b.Value ? a : b;

    /// <summary>The greater of two.</summary>
    public static PoundsPerHour Max(PoundsPerHour a, PoundsPerHour b) => a.Value >= b.Value ? a : b;

    /// <inheritdoc/>
    public int CompareTo(PoundsPerHour other) => Value.CompareTo(other.Value);

    /// <summary>Invariant text with the unit, for working and failures; sheets format for people.</summary>
    public override string ToString() => Value.ToString("0.###", CultureInfo.InvariantCulture) + " lb/h";
}
