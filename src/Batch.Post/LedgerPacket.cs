namespace Batch.Post;

/// <summary>A packet in the ledger: what was meant for whom, and what became of it.</summary>
public sealed record LedgerPacket
{
    /// <summary>Code of the person.</summary>
    public required string Person { get; init; }

    /// <summary>Mail address it was meant for. Private.</summary>
    public required string To { get; init; }

    /// <summary>Revision of the person's packet, 1 for the first.</summary>
    public required int Revision { get; init; }

    /// <summary>Fingerprint of what it says.</summary>
    public required string Fingerprint { get; init; }

    /// <summary>Message-ID of the mail, without angle brackets.</summary>
    public required string MessageId { get; init; }

    /// <summary>When it was written down, and after that when its outcome was.</summary>
    public required Instant At { get; init; }

    /// <summary>Outcome.</summary>
    public required LedgerOutcome Outcome { get; init; }

    /// <summary>Answer of the server, or who sent it; empty where there is none.</summary>
    public string Answer { get; init; } = "";

    /// <summary>Legs it tells of, in order of time.</summary>
    public ImmutableArray<IssuedLeg> Legs { get; init; } = [];

    /// <summary>Legs it takes back.</summary>
    public ImmutableArray<IssuedLeg> Dropped { get; init; } = [];
}
