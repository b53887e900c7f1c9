using System.Security.Cryptography;
using System.Text;
using Batch.Post.Ledgers;

namespace Batch.Post;

/// <summary>What one person is to be told now, held against what the person was told before.</summary>
public sealed record CrewIssue
{
    /// <summary>The person.</summary>
    public required PersonRecord Person { get; init; }

    /// <summary>The last packet that the person surely has; null where there is none.</summary>
    public LedgerPacket? Since { get; init; }

    /// <summary>Revision of this packet; that of <see cref="Since"/> where nothing changed.</summary>
    public required int Revision { get; init; }

    /// <summary>Revisions sent after <see cref="Since"/> whose arrival was never confirmed: the person may have them.</summary>
    public ImmutableArray<int> Unsure { get; init; } = [];

    /// <summary>Legs that the person is told of, in order of time; held ones with the facts told before.</summary>
    public required ImmutableArray<IssuedLeg> Legs { get; init; }

    /// <summary>Legs told before that the person no longer flies.</summary>
    public required ImmutableArray<IssuedLeg> Dropped { get; init; }

    /// <summary>What changed since <see cref="Since"/>, one sentence each; for a first issue only what is taken back.</summary>
    public required ImmutableArray<string> Changes { get; init; }

    /// <summary>The person's trips that are held back, with the reason, one sentence each.</summary>
    public required ImmutableArray<string> Held { get; init; }

    /// <summary>What could not be decided, one sentence each, for the dispatcher.</summary>
    public required ImmutableArray<string> Doubts { get; init; }

    /// <summary>Whether there is something to send: a first issue with legs, one that takes back what may have arrived, or a change.</summary>
    public bool IsDue => Since is null ? Legs.Any(leg => !leg.IsHeld) || !Dropped.IsEmpty : !Changes.IsEmpty;

    /// <summary>Fingerprint of what the packet says: the same facts for the same person in the same revision give the same.</summary>
    public string Fingerprint => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(
        string.Join('\n', Person.Code.ToUpperInvariant(), Revision.ToString(System.Globalization.CultureInfo.InvariantCulture), Since?.MessageId ?? "",
            LedgerLines.Text(Legs), LedgerLines.Text(Dropped)))))[..32];
}
