using Batch.Flight.Earth;

namespace Batch.Flight.Plan;

/// <summary>The sun at both ends of a leg and the night on the way.</summary>
public sealed record Daylight
{
    /// <summary>Sun events at the departure on the local day of takeoff.</summary>
    public required SunDay Departure { get; init; }

    /// <summary>Sun events at the destination on the local day of landing.</summary>
    public required SunDay Destination { get; init; }

    /// <summary>Time in the air at night (sun more than 6° below the horizon), along the route.</summary>
    public required Duration Night { get; init; }

    /// <summary>Whether takeoff is at night.</summary>
    public required bool IsNightTakeoff { get; init; }

    /// <summary>Whether landing is at night.</summary>
    public required bool IsNightLanding { get; init; }
}
