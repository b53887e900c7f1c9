namespace Batch.Flight.Plan;

/// <summary>What one person does in the week.</summary>
public sealed record CrewWeek
{
    /// <summary>Code.</summary>
    public required string Code { get; init; }

    /// <summary>Legs in time order.</summary>
    public required ImmutableArray<ChainStep> Steps { get; init; }

    /// <summary>Duties in time order.</summary>
    public required ImmutableArray<DutyDay> Duties { get; init; }

    /// <summary>Flight time of the week, block to block.</summary>
    public required Duration FlightTime { get; init; }
}
