namespace Batch.Flight.Route;

/// <summary>A route resolved to points, from one airport to another.</summary>
public sealed record FlownRoute
{
    /// <summary>The text it was resolved from; empty for direct.</summary>
    public required string Text { get; init; }

    /// <summary>The route elements as typed into a navigator, airports left out: fixes, airways, <c>DCT</c>, coordinates.</summary>
    public required ImmutableArray<string> Elements { get; init; }

    /// <summary>Segments in order, at least one.</summary>
    public required ImmutableArray<RouteSegment> Segments { get; init; }

    /// <summary>What was decided in resolving (a same-ident choice), as sentences.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>What the magnetic courses rest on where they are not to be trusted, as sentences.</summary>
    public ImmutableArray<string> Assumptions { get; init; } = [];

    /// <summary>Length over the ground.</summary>
    public required NauticalMiles Length { get; init; }

    /// <summary>First point.</summary>
    public RoutePoint From => Segments[0].From;

    /// <summary>Last point.</summary>
    public RoutePoint To => Segments[^1].To;
}
