using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>A week after planning.</summary>
public sealed record PlannedWeek
{
    /// <summary>What was read.</summary>
    public required OperatorWeek Input { get; init; }

    /// <summary>Legs in order of trip and number, planned or not.</summary>
    public required ImmutableArray<LegPlan> Legs { get; init; }

    /// <summary>Aircraft by registration.</summary>
    public required ImmutableArray<AircraftWeek> Aircraft { get; init; }

    /// <summary>Persons by code.</summary>
    public required ImmutableArray<CrewWeek> Crew { get; init; }
}
