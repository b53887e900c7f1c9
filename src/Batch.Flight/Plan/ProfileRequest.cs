using Batch.Flight.Air;
using Batch.Flight.Fleet;
using Batch.Flight.Route;

namespace Batch.Flight.Plan;

/// <summary>What a profile is computed from.</summary>
public sealed record ProfileRequest
{
    /// <summary>The route, departure to destination.</summary>
    public required FlownRoute Route { get; init; }

    /// <summary>Type, for its tables and approach allowance.</summary>
    public required AircraftType Type { get; init; }

    /// <summary>Cruise level as altitude [ft].</summary>
    public required Feet Level { get; init; }

    /// <summary>Cruise setting, a name of <see cref="PerformanceTables.Cruise"/>.</summary>
    public required string Setting { get; init; }

    /// <summary>Weight at takeoff.</summary>
    public required Pounds TakeoffWeight { get; init; }

    /// <summary>Instant of takeoff.</summary>
    public required Instant Takeoff { get; init; }

    /// <summary>Elevation where the climb starts [ft].</summary>
    public required Feet StartElevation { get; init; }

    /// <summary>Elevation where the descent ends [ft].</summary>
    public required Feet EndElevation { get; init; }

    /// <summary>Winds and temperatures.</summary>
    public required AirField Air { get; init; }

    /// <summary>Burn beyond the tables [fraction].</summary>
    public double BurnBias { get; init; }

    /// <summary>Whether values at a table's edge may be used for queries outside.</summary>
    public bool MayUseTableEdge { get; init; }
}
