namespace Batch.Flight.Route;

/// <summary>A resolved route, or the element that could not be understood.</summary>
public abstract record RouteResult
{
    private RouteResult()
    {
    }

    /// <summary>The route was understood.</summary>
    /// <param name="Route">The route.</param>
    public sealed record Resolved(FlownRoute Route) : RouteResult;

    /// <summary>An element was not understood.</summary>
    /// <param name="Element">The element as written.</param>
    /// <param name="Position">Its place in the text, 1 for the first element.</param>
    /// <param name="Why">One sentence.</param>
    /// <param name="Near">Nearest valid spellings, best first; may be empty.</param>
    public sealed record Unresolved(string Element, int Position, string Why, ImmutableArray<string> Near) : RouteResult;
}
