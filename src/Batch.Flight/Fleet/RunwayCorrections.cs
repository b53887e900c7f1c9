namespace Batch.Flight.Fleet;

/// <summary>
/// The type's own corrections of takeoff and landing distance; null where the book gives none. Every one is a fraction of the table distance.
/// </summary>
public sealed record RunwayCorrections
{
    /// <summary>Takeoff distance less per knot of credited headwind [1/kt], such as 0.01.</summary>
    public double? TakeoffHeadwindPerKnot { get; init; }

    /// <summary>Takeoff distance more per knot of factored tailwind [1/kt].</summary>
    public double? TakeoffTailwindPerKnot { get; init; }

    /// <summary>Landing distance less per knot of credited headwind [1/kt].</summary>
    public double? LandingHeadwindPerKnot { get; init; }

    /// <summary>Landing distance more per knot of factored tailwind [1/kt].</summary>
    public double? LandingTailwindPerKnot { get; init; }

    /// <summary>Takeoff distance more per percent of upslope [1/%].</summary>
    public double? TakeoffUpslopePerPercent { get; init; }

    /// <summary>Landing distance more per percent of downslope [1/%].</summary>
    public double? LandingDownslopePerPercent { get; init; }

    /// <summary>Takeoff distance more on dry grass [fraction], such as 0.2.</summary>
    public double? TakeoffGrass { get; init; }

    /// <summary>Landing distance more on dry grass [fraction].</summary>
    public double? LandingGrass { get; init; }

    /// <summary>Takeoff distance more on a wet runway [fraction].</summary>
    public double? TakeoffWet { get; init; }

    /// <summary>Landing distance more on a wet runway [fraction].</summary>
    public double? LandingWet { get; init; }
}
