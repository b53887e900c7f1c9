namespace Batch.Books;

/// <summary>What was computed for one leg, to stand beside it in a checked workbook.</summary>
public sealed record LegResult
{
    /// <summary>The row of the leg, such as <c>week.xlsx/Legs/7</c>.</summary>
    public required string Row { get; init; }

    /// <summary>State in words: pass, caution, fail or unplanned.</summary>
    public required string State { get; init; }

    /// <summary>The colour of the state; null for none.</summary>
    public State? Mark { get; init; }

    /// <summary>Time off blocks to on blocks; null where not planned.</summary>
    public Duration? BlockTime { get; init; }

    /// <summary>Fuel required, in the unit of the content; null where not planned.</summary>
    public double? FuelRequired { get; init; }

    /// <summary>Fuel aboard off blocks, in the unit of the content; null where not planned.</summary>
    public double? FuelAboard { get; init; }

    /// <summary>Weight at takeoff, in the unit of the content; null where not planned.</summary>
    public double? TakeoffWeight { get; init; }
}
