namespace Batch.Post;

/// <summary>How a trip stands to what was issued of it.</summary>
public sealed record TripRevision
{
    /// <summary>Trip.</summary>
    public required string Trip { get; init; }

    /// <summary>Revision of the trip as it stands now: 1 where it was never issued, one more than issued where it changed.</summary>
    public required int Number { get; init; }

    /// <summary>The last revision issued; null where none was.</summary>
    public int? Issued { get; init; }

    /// <summary>When that was first issued; null where none was.</summary>
    public Instant? IssuedAt { get; init; }

    /// <summary>What changed since, one sentence a leg.</summary>
    public ImmutableArray<string> Changes { get; init; } = [];
}
