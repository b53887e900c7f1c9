namespace Batch.Post;

/// <summary>A leg as one person is told of it.</summary>
public sealed record IssuedLeg
{
    /// <summary>The facts.</summary>
    public required LegFacts Facts { get; init; }

    /// <summary>Name of its calendar event.</summary>
    public required string Uid { get; init; }

    /// <summary>Sequence of its calendar event, 0 for the first issue.</summary>
    public required int Sequence { get; init; }

    /// <summary>Revision of the trip that the facts belong to, 1 or more.</summary>
    public required int TripRevision { get; init; }

    /// <summary>Name of the departure airport; empty where not known.</summary>
    public string Place { get; init; } = "";

    /// <summary>When the person reports, where the leg is the first of a duty; null for other legs and where not known.</summary>
    public Instant? Report { get; init; }

    /// <summary>Whether the leg was told before and is held back now; its facts are those told before.</summary>
    public bool IsHeld { get; init; }
}
