namespace Batch.Flight.Route;

/// <summary>A stretch of an airway between two of its fixes, in the direction flown.</summary>
internal static class AirwayPiece
{
    /// <summary>Whether an airway passes a fix.</summary>
    public static bool Passes(Airway airway, string ident) => airway.Points.Any(point => Same(point.Fix, ident));

    /// <summary>The fixes that two airways share, in the order of the first.</summary>
    public static ImmutableArray<string> Shared(Airway one, Airway other) =>
        [.. one.Points.Select(point => point.Fix).Where(fix => Passes(other, fix)).Distinct(StringComparer.OrdinalIgnoreCase)];

    /// <summary>
    /// The shortest run, counted in fixes, of places in the airway's sequence from one fix to another that its directions allow. An airway may pass a fix more
    /// than once.
    /// </summary>
    /// <returns>First and last place; null where no run is allowed or a fix is not on the airway, or both are the same fix.</returns>
    public static (int First, int Last)? Between(Airway airway, string from, string to)
    {
        (int First, int Last)? best = null;
        for (var first = 0; first < airway.Points.Length; first++)
        {
            if (!Same(airway.Points[first].Fix, from)) continue;
            for (var last = 0; last < airway.Points.Length; last++)
            {
                if (last == first || !Same(airway.Points[last].Fix, to) || !IsAllowed(airway, first, last)) continue;
                if (best is not { } known || Math.Abs(last - first) < Math.Abs(known.Last - known.First)) best = (first, last);
            }
        }

        return Same(from, to) ? null : best;
    }

    private static bool IsAllowed(Airway airway, int first, int last)
    {
        var against = first < last ? AirwayDirection.Backward : AirwayDirection.Forward;
        for (var place = Math.Min(first, last); place < Math.Max(first, last); place++)
            if (airway.Points[place].Direction == against)
                return false;
        return true;
    }

    private static bool Same(string a, string b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);
}
