namespace Batch.Flight.Plan;

/// <summary>How far the centre of gravity may lie from the sheet's if passengers sit elsewhere than on it.</summary>
public sealed record LoadSpread
{
    /// <summary>The same persons as far forward as the seats allow.</summary>
    public required SeatingOutcome Forward { get; init; }

    /// <summary>The same persons as far aft as the seats allow.</summary>
    public required SeatingOutcome Aft { get; init; }

    /// <summary>What was taken for granted, one sentence; names no person.</summary>
    public required string Assumption { get; init; }

    /// <summary>
    /// Whether every seating stays within the envelopes. The centre of gravity of any other seating lies between these two, so that this holds where the
    /// envelope is one stretch of arm at each weight.
    /// </summary>
    public bool StaysInside => Forward.IsInside && Aft.IsInside;
}
