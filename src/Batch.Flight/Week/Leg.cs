namespace Batch.Flight.Week;

/// <summary>One row of the Legs sheet, read and typed. References are names, upper case where the trade writes them so; they may fail to resolve.</summary>
public sealed record Leg
{
    /// <summary>Trip and leg number.</summary>
    public required LegKey Key { get; init; }

    /// <summary>Off blocks as written, local to the departure airport (or UTC where marked).</summary>
    public required LocalDateTime OffBlocksLocal { get; init; }

    /// <summary>Off blocks.</summary>
    public required Instant OffBlocks { get; init; }

    /// <summary>Registration of the aircraft.</summary>
    public required string Aircraft { get; init; }

    /// <summary>Ident of the departure airport.</summary>
    public required string From { get; init; }

    /// <summary>Ident of the destination.</summary>
    public required string To { get; init; }

    /// <summary>Ident of the alternate; empty where none is filed.</summary>
    public string Alternate { get; init; } = "";

    /// <summary>Ident of the second alternate; empty where none is filed.</summary>
    public string SecondAlternate { get; init; } = "";

    /// <summary>Route text between the airports; empty for direct.</summary>
    public string Route { get; init; } = "";

    /// <summary>Another route to have ready; empty where none is given.</summary>
    public string BackupRoute { get; init; } = "";

    /// <summary>Cruise level as altitude [ft]; null for <c>auto</c> and where none is said.</summary>
    public Feet? Level { get; init; }

    /// <summary>Whether the level is to be chosen by the planner, <c>auto</c>, even where the route text begins with one.</summary>
    public bool IsLevelAuto { get; init; }

    /// <summary>Cruise setting; empty for <c>auto</c>.</summary>
    public string Setting { get; init; } = "";

    /// <summary>Flight rules; null where the cell is empty.</summary>
    public FlightRules? Rules { get; init; }

    /// <summary>Purpose; null where the cell is empty.</summary>
    public LegPurpose? Purpose { get; init; }

    /// <summary>Code of the captain.</summary>
    public required string Captain { get; init; }

    /// <summary>Code of the second pilot; empty where there is none.</summary>
    public string SecondPilot { get; init; } = "";

    /// <summary>Fuel plan; null where the cell is empty.</summary>
    public FuelPlan? FuelPlan { get; init; }

    /// <summary>Fuel aboard before fuelling; null where not said.</summary>
    public Pounds? FuelAboard { get; init; }

    /// <summary>Time from off blocks to takeoff; null where not said.</summary>
    public Duration? Taxi { get; init; }

    /// <summary>Departure runway; empty for the best into the wind.</summary>
    public string DepartureRunway { get; init; } = "";

    /// <summary>Arrival runway; empty for the best into the wind.</summary>
    public string ArrivalRunway { get; init; } = "";

    /// <summary>Ident of the alternate for a return after takeoff; empty where none is named.</summary>
    public string TakeoffAlternate { get; init; } = "";

    /// <summary>
    /// How the flight is followed: <c>filed</c> (a flight plan is or will be filed), <c>company</c> (the operator locates it) or <c>none</c>; empty where not
    /// said.
    /// </summary>
    public string FlightPlan { get; init; } = "";

    /// <summary>When the passenger manifest was or will be sent to the border authority; null where not said.</summary>
    public Instant? ManifestSent { get; init; }

    /// <summary>When the crew manifest is sent to the border authority; null where not said.</summary>
    public Instant? CrewManifestSent { get; init; }

    /// <summary>Remarks.</summary>
    public string Remarks { get; init; } = "";

    /// <summary>Why the leg is to be flown and mailed although a check fails, as the person who decided it wrote it; empty where nobody did.</summary>
    public string Override { get; init; } = "";

    /// <summary>Unknown columns by header as written.</summary>
    public ImmutableSortedDictionary<string, string> Extra { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>What could not be read of this leg or of a row that it depends on; while any is a fail the leg's figures are in doubt.</summary>
    public ImmutableArray<Problem> Doubts { get; init; } = [];

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
