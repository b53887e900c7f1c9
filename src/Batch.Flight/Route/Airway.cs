namespace Batch.Flight.Route;

/// <summary>A named airway.</summary>
public sealed record Airway
{
    /// <summary>Name, upper case.</summary>
    public required string Name { get; init; }

    /// <summary>Its fixes in rising sequence.</summary>
    public required ImmutableArray<AirwayPoint> Points { get; init; }
}
