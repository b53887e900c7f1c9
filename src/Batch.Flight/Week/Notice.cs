namespace Batch.Flight.Week;

/// <summary>One row of the Notices sheet.</summary>
public sealed record Notice
{
    /// <summary>What it is about: an airport, <c>XAND 09</c> for a runway, a fix, an airway or a registration.</summary>
    public required string Subject { get; init; }

    /// <summary>Start; null for open.</summary>
    public Instant? From { get; init; }

    /// <summary>End, exclusive; null for open.</summary>
    public Instant? To { get; init; }

    /// <summary>Effect.</summary>
    public NoticeEffect Effect { get; init; }

    /// <summary>Text as written.</summary>
    public string Text { get; init; } = "";

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;

    /// <summary>Whether the notice holds at an instant.</summary>
    /// <param name="at">The instant.</param>
    public bool HoldsAt(Instant at) => (From is null || at >= From) && (To is null || at < To);
}
