using Batch.Flight.Earth;

namespace Batch.Flight.Route;

/// <summary>One point of a resolved route.</summary>
public sealed record RoutePoint
{
    /// <summary>Ident, or the coordinate as written.</summary>
    public required string Ident { get; init; }

    /// <summary>Position.</summary>
    public required GeoPoint Position { get; init; }

    /// <summary>Kind: airport, VOR, NDB, waypoint, coordinate.</summary>
    public required string Kind { get; init; }

    /// <summary>Name and frequency where the book has them.</summary>
    public string Name { get; init; } = "";

    /// <summary>Frequency as written.</summary>
    public string Frequency { get; init; } = "";
}
