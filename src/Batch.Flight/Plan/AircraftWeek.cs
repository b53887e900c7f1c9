namespace Batch.Flight.Plan;

/// <summary>What one aircraft does in the week.</summary>
public sealed record AircraftWeek
{
    /// <summary>Registration.</summary>
    public required string Registration { get; init; }

    /// <summary>Its legs in time order.</summary>
    public required ImmutableArray<ChainStep> Steps { get; init; }

    /// <summary>Block time of the planned legs.</summary>
    public required Duration Block { get; init; }

    /// <summary>Air time of the planned legs.</summary>
    public required Duration Air { get; init; }

    /// <summary>Landings of the planned legs.</summary>
    public required int Landings { get; init; }

    /// <summary>Uplift of the planned legs [lb].</summary>
    public required Pounds Uplift { get; init; }

    /// <summary>Fuel burned by the planned legs, taxi included [lb].</summary>
    public required Pounds Burned { get; init; }
}
