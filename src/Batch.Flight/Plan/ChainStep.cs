using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>One leg in the chain of an aircraft or a person, with what comes before it.</summary>
public sealed record ChainStep
{
    /// <summary>The leg.</summary>
    public required LegKey Leg { get; init; }

    /// <summary>Where it starts.</summary>
    public required string From { get; init; }

    /// <summary>Where it ends.</summary>
    public required string To { get; init; }

    /// <summary>Off blocks.</summary>
    public required Instant OffBlocks { get; init; }

    /// <summary>On blocks; null for a leg that was not planned.</summary>
    public Instant? OnBlocks { get; init; }

    /// <summary>The leg before; null for the first.</summary>
    public LegKey? Before { get; init; }

    /// <summary>Where the aircraft or person is before: the end of the leg before, the home base for the first; empty where not known.</summary>
    public string StandsAt { get; init; } = "";

    /// <summary>Time on the ground since the leg before; negative for an overlap; null for the first or where not known.</summary>
    public Duration? Ground { get; init; }
}
