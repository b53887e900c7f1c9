namespace Batch.Checks;

/// <summary>Forecasts at airports, as the checks need them: filled from decoded bulletins, empty where none is known.</summary>
public sealed record Forecasts
{
    /// <summary>No forecast known.</summary>
    public static Forecasts None { get; } = new();

    /// <summary>Conditions in time order by airport ident, case ignored; periods may overlap (a temporary change over the prevailing condition).</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<ForecastPeriod>> ByAirport { get; init; } =
        ImmutableSortedDictionary<string, ImmutableArray<ForecastPeriod>>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);

    /// <summary>
    /// When and by whom the forecast of an airport was issued, by airport ident, case ignored; an airport without an entry has no forecast, or one of which
    /// nothing is known.
    /// </summary>
    public ImmutableSortedDictionary<string, ForecastIssue> Issues { get; init; } =
        ImmutableSortedDictionary<string, ForecastIssue>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);

    /// <summary>The worst that is forecast in a window.</summary>
    /// <param name="airport">Ident.</param>
    /// <param name="from">Start, inclusive.</param>
    /// <param name="to">End, inclusive.</param>
    /// <returns>Lowest ceiling and visibility of all periods that touch the window; null
    /// where the periods leave a part of the window open, or there are none.</returns>
    public ForecastPeriod? WorstBetween(string airport, Instant from, Instant to)
    {
        if (!ByAirport.TryGetValue(airport, out var all))
        {
            return null;
        }

        var touching = all.Where(period => period.From <= to && period.To >= from).OrderBy(period => period.From).ToImmutableArray();
        var covered = from;
        foreach (var period in touching)
        {
            if (period.From > covered)
            {
                return null;
            }

            covered = Instant.Max(covered, period.To);
        }

        if (touching.IsEmpty || covered < to)
        {
            return null;
        }

        return new ForecastPeriod
        {
            From = from,
            To = to,
            Ceiling = touching.Min(period => period.Ceiling?.Value) is { } lowest ? new Feet(lowest) : null,
            VisibilityMetres = touching.Min(period => period.VisibilityMetres),
        };
    }
}
