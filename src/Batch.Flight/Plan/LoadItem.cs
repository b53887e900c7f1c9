namespace Batch.Flight.Plan;

/// <summary>One item of the load: who or what, where, how heavy.</summary>
public sealed record LoadItem
{
    /// <summary>Who or what; a passenger's name is private.</summary>
    public required string What { get; init; }

    /// <summary>Kind.</summary>
    public required LoadItemKind Kind { get; init; }

    /// <summary>Category of a passenger such as <c>adult</c>; empty for the rest.</summary>
    public string Category { get; init; } = "";

    /// <summary>Station where it is; empty when there was no place for it.</summary>
    public required string Station { get; init; }

    /// <summary>Weight.</summary>
    public required Pounds Weight { get; init; }

    /// <summary>Arm [in]; that of the station.</summary>
    public required Inches Arm { get; init; }

    /// <summary>Whether the weight is a standard weight, not a stated one.</summary>
    public bool IsAssumed { get; init; }

    /// <summary>What a passenger's stated weight is, as <see cref="Week.ManifestLine.WeightBasis"/>; empty where not said and for the rest.</summary>
    public string Basis { get; init; } = "";

    /// <summary>Whether it occupies a seat.</summary>
    public bool TakesSeat { get; init; }

    /// <summary>Number of bags where said.</summary>
    public int? BagCount { get; init; }

    /// <summary>Cell the weight comes from, or the row where it is missing.</summary>
    public string Cell { get; init; } = "";

    /// <summary>Moment.</summary>
    public PoundInches Moment => Weight * Arm;
}
