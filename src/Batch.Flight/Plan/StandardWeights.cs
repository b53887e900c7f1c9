namespace Batch.Flight.Plan;

/// <summary>Weights taken where a person's or a bag's own weight is not stated; every use is printed as an assumption.</summary>
public sealed record StandardWeights
{
    /// <summary>Adult, sex not said.</summary>
    public required Pounds Adult { get; init; }

    /// <summary>Adult man.</summary>
    public required Pounds Man { get; init; }

    /// <summary>Adult woman.</summary>
    public required Pounds Woman { get; init; }

    /// <summary>Child of two years or more.</summary>
    public required Pounds Child { get; init; }

    /// <summary>Infant.</summary>
    public required Pounds Infant { get; init; }

    /// <summary>Pilot with flight bag.</summary>
    public required Pounds Pilot { get; init; }

    /// <summary>One checked bag.</summary>
    public required Pounds Bag { get; init; }

    /// <summary>Where the weights come from.</summary>
    public required string Source { get; init; }
}
