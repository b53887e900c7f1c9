namespace Batch.Flight.Fleet;

/// <summary>One direction of a runway with its declared distances.</summary>
public sealed record Runway
{
    /// <summary>Designator, such as <c>09</c> or <c>27L</c>.</summary>
    public required string Ident { get; init; }

    /// <summary>True bearing of the direction of use.</summary>
    public required TrueDegrees TrueBearing { get; init; }

    /// <summary>Takeoff run available.</summary>
    public required Feet TakeoffRun { get; init; }

    /// <summary>Takeoff distance available; null: no clearway said, the takeoff run available holds.</summary>
    public Feet? TakeoffDistance { get; init; }

    /// <summary>Accelerate-stop distance available; null: no stopway said, the takeoff run available holds.</summary>
    public Feet? AccelerateStop { get; init; }

    /// <summary>Landing distance available.</summary>
    public required Feet LandingDistance { get; init; }

    /// <summary>Threshold elevation; null: the airport's elevation holds.</summary>
    public Feet? ThresholdElevation { get; init; }

    /// <summary>Slope in the direction of use [%], positive uphill.</summary>
    public double SlopePercent { get; init; }

    /// <summary>Surface; null where the book does not say.</summary>
    public RunwaySurface? Surface { get; init; }

    /// <summary>Whether it is lighted; null where the book does not say.</summary>
    public bool? Lighted { get; init; }

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
