namespace Batch.Flight.Route;

/// <summary>A point of a route while it is read: where it may be and how it is reached.</summary>
internal sealed record RouteStop
{
    /// <summary>The ident, or the coordinate as written.</summary>
    public required string Ident { get; init; }

    /// <summary>The places it may be, at least one.</summary>
    public required ImmutableArray<PlaceChoice> Choices { get; init; }

    /// <summary>Airway on which it is reached, or <c>DCT</c>.</summary>
    public string Via { get; init; } = RouteText.Direct;

    /// <summary>Least altitude of the airway to here [ft]; null where none is said.</summary>
    public Feet? AirwayMinimum { get; init; }

    /// <summary>Level asked for from here on [ft].</summary>
    public Feet? LevelFromHere { get; init; }
}
