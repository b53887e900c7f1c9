using System.Text.Json.Serialization;

namespace Batch.Post.Ledgers;

/// <summary>One line of the ledger. A line that begins a packet holds all of it; later lines name it by its Message-ID.</summary>
internal sealed record LedgerLine
{
    /// <summary>What happened: one of the constants of <see cref="LedgerLines"/>.</summary>
    public required string What { get; init; }

    public required Instant At { get; init; }

    public string? Person { get; init; }

    /// <summary>Revision of the packet, 1 or more; 0, which is not written, where the line names none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)]
    public int Revision { get; init; }

    public required string MessageId { get; init; }

    public string? To { get; init; }

    public string? Answer { get; init; }

    public string? Fingerprint { get; init; }

    public IReadOnlyList<IssuedLeg>? Legs { get; init; }

    public IReadOnlyList<IssuedLeg>? Dropped { get; init; }
}
