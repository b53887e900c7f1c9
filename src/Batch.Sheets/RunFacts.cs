namespace Batch.Sheets;

/// <summary>What the outputs say about the run itself; the only values that do not follow from the books.</summary>
public sealed record RunFacts
{
    /// <summary>When the run was made: the clock, or what <c>--made-at</c> says. The only time of day in the outputs.</summary>
    public required Instant MadeAt { get; init; }

    /// <summary>Version of the program.</summary>
    public required string ToolVersion { get; init; }

    /// <summary>How the trips stand to what was issued to the crews, by trip; a trip that is missing was never issued.</summary>
    public ImmutableSortedDictionary<string, SheetRevision> Revisions { get; init; } =
        ImmutableSortedDictionary<string, SheetRevision>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);
}
