namespace Batch.Sheets;

/// <summary>How a trip stands to what was issued of it to the crews.</summary>
public sealed record SheetRevision
{
    /// <summary>Revision of the trip as it stands now, 1 or more.</summary>
    public required int Number { get; init; }

    /// <summary>The last revision issued; equal to <see cref="Number"/> where nothing changed.</summary>
    public required int Issued { get; init; }

    /// <summary>When that was first issued.</summary>
    public required Instant IssuedAt { get; init; }

    /// <summary>What changed since, one sentence a leg.</summary>
    public ImmutableArray<string> Changes { get; init; } = [];
}
