namespace Batch.Flight.Week;

/// <summary>A raw weather bulletin as pasted into the Bulletins sheet.</summary>
/// <param name="Text">The bulletin.</param>
/// <param name="Received">When it was received; null where not said.</param>
/// <param name="Origin">Where it was read.</param>
public sealed record RawBulletin(string Text, Instant? Received, Origin Origin)
{
    /// <summary>Who issued or passed it on; empty where not said.</summary>
    public string Source { get; init; } = "";
}
