namespace Batch.Flight.Week;

/// <summary>One row of the Manifest sheet.</summary>
public sealed record ManifestLine
{
    /// <summary>Trip name.</summary>
    public required string Trip { get; init; }

    /// <summary>Legs it is for.</summary>
    public required LegSelection Legs { get; init; }

    /// <summary>Name of the passenger. Private: never in messages meant for logs.</summary>
    public required string Name { get; init; }

    /// <summary>Category; null where the cell is empty.</summary>
    public PersonCategory? Category { get; init; }

    /// <summary>Weight; null where not said.</summary>
    public Pounds? Weight { get; init; }

    /// <summary>
    /// What the weight is: <c>stated</c> by the passenger alone, <c>with allowances</c> for clothing and hand baggage, <c>weighed</c> with them; empty where
    /// not said.
    /// </summary>
    public string WeightBasis { get; init; } = "";

    /// <summary>Weight of the checked bags; null where not said.</summary>
    public Pounds? Bags { get; init; }

    /// <summary>Number of bags; null where not said.</summary>
    public int? BagCount { get; init; }

    /// <summary>Seat or station asked for; empty for none.</summary>
    public string Seat { get; init; } = "";

    /// <summary>Notes.</summary>
    public string Notes { get; init; } = "";

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
