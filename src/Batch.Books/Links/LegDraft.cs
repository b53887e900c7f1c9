using Batch.Books.Headers;
using Batch.Flight.Week;

namespace Batch.Books.Links;

/// <summary>A row of the Legs sheet while other rows may still cast doubt on it.</summary>
internal sealed class LegDraft(Row row, LegKey key, Leg? leg, BrokenLeg shell)
{
    private readonly List<Problem> _doubts = [];

    /// <summary>The row.</summary>
    public Row Row => row;

    /// <summary>Trip and number, as far as they could be read.</summary>
    public LegKey Key => key;

    /// <summary>The leg; null where a cell that it needs could not be read.</summary>
    public Leg? Leg => leg;

    /// <summary>Whether the row is given up although its cells could be read: another row has the same key.</summary>
    public bool IsDouble { get; set; }

    /// <summary>Adds fails that make the leg's figures doubtful.</summary>
    public void Doubt(IEnumerable<Problem> fails)
    {
        foreach (var fail in fails)
        {
            if (!_doubts.Contains(fail)) _doubts.Add(fail);
        }
    }

    /// <summary>The leg with its doubts; null where it is broken.</summary>
    public Leg? Whole => leg is null || IsDouble ? null : leg with { Doubts = [.. row.Doubts, .. _doubts] };

    /// <summary>The broken leg with everything that is wrong with it.</summary>
    public BrokenLeg Broken => shell with { Problems = [.. row.Fails, .. _doubts] };
}
