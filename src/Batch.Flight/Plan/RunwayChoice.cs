using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>The runways that come into question.</summary>
/// <param name="Runways">The runways in book order.</param>
/// <param name="Assumptions">What was passed over, as sentences.</param>
/// <param name="Why">Why there is none, one sentence; null where there are some.</param>
internal sealed record RunwayChoice(ImmutableArray<Runway> Runways, ImmutableArray<string> Assumptions, string? Why)
{
    /// <summary>The named runway; else every open one, lighted ones where lights are needed and there are any.</summary>
    /// <param name="request">The request.</param>
    public static RunwayChoice Of(RunwayRequest request)
    {
        var airport = request.Airport;
        if (airport.Runways.IsEmpty) return None($"the book gives no runways of {airport.Ident}");
        bool IsClosed(Runway runway) => request.ClosedRunways.Any(closed => IsSame(closed, runway.Ident));
        if (request.NamedRunway.Length > 0)
        {
            var named = airport.Runways.FirstOrDefault(runway => IsSame(runway.Ident, request.NamedRunway));
            if (named is null)
                return None($"{airport.Ident} has no runway {request.NamedRunway}; it has {string.Join(", ", airport.Runways.Select(runway => runway.Ident))}");
            return IsClosed(named) ? None($"runway {named.Ident} of {airport.Ident} is closed by notice") : new RunwayChoice([named], [], null);
        }

        ImmutableArray<Runway> open = [.. airport.Runways.Where(runway => !IsClosed(runway))];
        if (open.IsEmpty) return None($"every runway of {airport.Ident} is closed by notice");
        if (!request.NeedsLights) return new RunwayChoice(open, [], null);
        ImmutableArray<Runway> lighted = [.. open.Where(runway => runway.Lighted != false)];
        return lighted.IsEmpty ? new RunwayChoice(open, [$"no open runway of {airport.Ident} is lighted"], null) : new RunwayChoice(lighted, [], null);
    }

    private static RunwayChoice None(string why) => new([], [], why);

    // Designators are the same with and without a leading zero: 9L and 09L.
    private static bool IsSame(string a, string b) => string.Equals(a.Trim().TrimStart('0'), b.Trim().TrimStart('0'), StringComparison.OrdinalIgnoreCase);
}
