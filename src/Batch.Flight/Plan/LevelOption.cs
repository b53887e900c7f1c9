namespace Batch.Flight.Plan;

/// <summary>The same leg with the same fuel aboard at another level or on the backup route.</summary>
public sealed record LevelOption
{
    /// <summary>Level [ft].</summary>
    public required Feet Level { get; init; }

    /// <summary>Route text; empty for direct.</summary>
    public required string Route { get; init; }

    /// <summary>Whether this is the plan itself.</summary>
    public required bool IsPlan { get; init; }

    /// <summary>Whether it is on the backup route.</summary>
    public required bool IsBackupRoute { get; init; }

    /// <summary>Time from takeoff to landing.</summary>
    public required Duration Time { get; init; }

    /// <summary>Trip fuel.</summary>
    public required Pounds Trip { get; init; }

    /// <summary>Fuel on landing.</summary>
    public required Pounds Landing { get; init; }

    /// <summary>Landing fuel beyond what must be left by the rules; negative when short.</summary>
    public required Pounds Margin { get; init; }

    /// <summary>Pass; caution below the level's minimum altitude never occurs; fail when short of fuel or below a minimum altitude.</summary>
    public required State State { get; init; }

    /// <summary>Why it is not a pass; empty for a pass (<see cref="State.Note"/>).</summary>
    public string Why { get; init; } = "";

    /// <summary>Head wind component in cruise, mean over time, negative for a tailwind.</summary>
    public Knots CruiseHeadwind { get; init; }
}
