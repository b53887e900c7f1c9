namespace Batch.Flight.Week;

/// <summary>One row of the Cargo sheet.</summary>
public sealed record CargoLine
{
    /// <summary>Trip name.</summary>
    public required string Trip { get; init; }

    /// <summary>Legs it is for.</summary>
    public required LegSelection Legs { get; init; }

    /// <summary>What it is.</summary>
    public required string What { get; init; }

    /// <summary>Weight.</summary>
    public required Pounds Weight { get; init; }

    /// <summary>Station asked for; empty for the fill order.</summary>
    public string Station { get; init; } = "";

    /// <summary>Notes.</summary>
    public string Notes { get; init; } = "";

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
