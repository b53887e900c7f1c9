using Batch.Flight.Week;

namespace Batch.Cli.Pipeline;

/// <summary>Puts reasons given on the command line into the legs.</summary>
internal static class Overridden
{
    /// <summary>The week with reasons to fly legs although they fail.</summary>
    /// <param name="week">The week as read.</param>
    /// <param name="reasons">Reasons by leg.</param>
    /// <exception cref="InputException">There is no such leg.</exception>
    public static OperatorWeek With(OperatorWeek week, IReadOnlyDictionary<string, string> reasons)
    {
        if (reasons.Count == 0) return week;
        var keys = week.Legs.Select(leg => leg.Key.ToString()).ToImmutableHashSet(StringComparer.OrdinalIgnoreCase);
        if (reasons.Keys.Where(key => !keys.Contains(key)).Order(StringComparer.Ordinal).FirstOrDefault() is { } unknown)
            throw new InputException($"--override {unknown}: there is no such leg.{Meant.Question(unknown, keys)}");
        var byKey = reasons.ToImmutableDictionary(StringComparer.OrdinalIgnoreCase);
        return week with { Legs = [.. week.Legs.Select(leg => byKey.TryGetValue(leg.Key.ToString(), out var reason) ? leg with { Override = reason } : leg)] };
    }
}
