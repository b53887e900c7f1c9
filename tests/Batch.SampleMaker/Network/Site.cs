using Batch.SampleMaker.Land;

namespace Batch.SampleMaker.Network;

/// <summary>An invented airport.</summary>
public sealed record Site
{
    public required string Ident { get; init; }

    public required string Name { get; init; }

    public required Spot Spot { get; init; }

    public required int ElevationFt { get; init; }

    public string Zone { get; init; } = "Atlantic/Azores";

    public string Fuel { get; init; } = "none";

    public double? FuelPrice { get; init; }

    public LocalTime? Opens { get; init; }

    public LocalTime? Closes { get; init; }

    public string QuietHours { get; init; } = "";

    public string Lighting { get; init; } = "none";

    public string Clearance { get; init; } = "";

    public string Tower { get; init; } = "";

    public string Handler { get; init; } = "";

    public string Customs { get; init; } = "none";

    public string Approach { get; init; } = "none";

    public string Country { get; init; } = "Vellmere";

    public string TakeoffVisibility { get; init; } = "";

    /// <summary>Controlled to the ground with an ILS, from some height above it with another approach, not at all without.</summary>
    public string Airspace => Approach.StartsWith("ILS", StringComparison.Ordinal) ? "D" : Approach == "none" ? "G" : "E";

    public required ImmutableArray<Strip> Strips { get; init; }
}
