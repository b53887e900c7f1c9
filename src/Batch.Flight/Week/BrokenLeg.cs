namespace Batch.Flight.Week;

/// <summary>A row of the Legs sheet that cannot be planned because a cell it needs could not be read; it is shown, never dropped.</summary>
public sealed record BrokenLeg
{
    /// <summary>Trip and leg number as far as they could be read; a row without them is named by its place, such as <c>row 17</c>.</summary>
    public required LegKey Key { get; init; }

    /// <summary>Aircraft as written; may be empty.</summary>
    public string Aircraft { get; init; } = "";

    /// <summary>Departure as written; may be empty.</summary>
    public string From { get; init; } = "";

    /// <summary>Destination as written; may be empty.</summary>
    public string To { get; init; } = "";

    /// <summary>Date where it could be read.</summary>
    public LocalDate? Date { get; init; }

    /// <summary>Captain as written; may be empty.</summary>
    public string Captain { get; init; } = "";

    /// <summary>Second pilot as written; may be empty.</summary>
    public string SecondPilot { get; init; } = "";

    /// <summary>What is wrong, at least one fail.</summary>
    public required ImmutableArray<Problem> Problems { get; init; }

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
