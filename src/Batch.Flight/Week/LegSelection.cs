namespace Batch.Flight.Week;

/// <summary>Which legs of a trip a manifest or cargo line is for: all of them, or a list of numbers.</summary>
public sealed class LegSelection
{
    private readonly ImmutableArray<(int First, int Last)> _ranges;

    private LegSelection(ImmutableArray<(int First, int Last)> ranges) => _ranges = ranges;

    /// <summary>Every leg of the trip.</summary>
    public static LegSelection All { get; } = new([(1, int.MaxValue)]);

    /// <summary>The legs in closed ranges of numbers.</summary>
    /// <param name="ranges">First and last number of each range, first at most last.</param>
    public static LegSelection Of(IEnumerable<(int First, int Last)> ranges) => new([.. ranges]);

    /// <summary>Whether a leg number is meant.</summary>
    /// <param name="number">Leg number.</param>
    public bool Contains(int number) => _ranges.Any(range => number >= range.First && number <= range.Last);

    /// <summary>The greatest number named; null where all legs are meant.</summary>
    public int? Greatest => _ranges.Any(range => range.Last == int.MaxValue) ? null : _ranges.Max(range => range.Last);
}
