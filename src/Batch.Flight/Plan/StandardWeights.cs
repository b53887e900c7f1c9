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

    /// <summary>The same with every person heavier or lighter.</summary>
    /// <param name="factor">What a person's weight is multiplied by.</param>
    public StandardWeights ForPersons(double factor) => factor == 1 ? this : this with
    {
        Adult = Adult * factor,
        Man = Man * factor,
        Woman = Woman * factor,
        Child = Child * factor,
        Infant = Infant * factor,
        Pilot = Pilot * factor,
    };
}
