namespace Batch.Flight.Fleet;

/// <summary>One row of the Checks sheet: the operator's own setting of a check.</summary>
public sealed record CheckSetting
{
    /// <summary>Check id.</summary>
    public required string Check { get; init; }

    /// <summary>Whether the check is on; null where not said.</summary>
    public bool? On { get; init; }

    /// <summary>State the operator gives to a finding of this check; null where not said.</summary>
    public State? State { get; init; }

    /// <summary>Operator's value of the check's limit, in the check's own unit; empty where not said.</summary>
    public string Value { get; init; } = "";

    /// <summary>Why it is set so.</summary>
    public string Reason { get; init; } = "";

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
