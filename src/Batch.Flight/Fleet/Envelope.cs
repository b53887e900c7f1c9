namespace Batch.Flight.Fleet;

/// <summary>The polygon of weight and centre of gravity allowed in one condition.</summary>
public sealed record Envelope
{
    /// <summary>The condition.</summary>
    public required EnvelopeCase Case { get; init; }

    /// <summary>Vertices in order around the polygon, at least three, not repeated at the end.</summary>
    public required ImmutableArray<EnvelopePoint> Vertices { get; init; }

    /// <summary>Where the first vertex was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
