using Batch.Flight.Air;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>What a takeoff or a landing is computed from.</summary>
public sealed record RunwayRequest
{
    /// <summary>The airport.</summary>
    public required Airport Airport { get; init; }

    /// <summary>The type, for its tables and corrections.</summary>
    public required AircraftType Type { get; init; }

    /// <summary>The runway the dispatcher names; empty for the best into the wind.</summary>
    public string NamedRunway { get; init; } = "";

    /// <summary>Designators of the runways that are closed.</summary>
    public ImmutableHashSet<string> ClosedRunways { get; init; } = [];

    /// <summary>Weight at takeoff or landing.</summary>
    public required Pounds Weight { get; init; }

    /// <summary>Wind and temperature at the surface.</summary>
    public required AirSample Air { get; init; }

    /// <summary>Whether the wind is only that of some way above the field: a headwind is then not credited, a tailwind is charged.</summary>
    public bool IsWindFromAloft { get; init; }

    /// <summary>Altimeter setting (QNH); null where not known, then the elevation is taken as pressure altitude.</summary>
    public Hectopascals? AltimeterSetting { get; init; }

    /// <summary>Whether the runway is wet.</summary>
    public bool IsWet { get; init; }

    /// <summary>The factors of the rules.</summary>
    public required RunwayRules Rules { get; init; }

    /// <summary>Whether the values at the upper edge of a table may be taken beyond it.</summary>
    public bool MayUseTableEdge { get; init; }

    /// <summary>Whether lights are needed; an unlit runway is then chosen only where there is no other.</summary>
    public bool NeedsLights { get; init; }
}
