using Batch.Flight.Air.Bulletins;
using Batch.Flight.Week;

namespace Batch.Checks;

/// <summary>Forecasts as the checks need them, from decoded terminal forecasts.</summary>
public static class ForecastReading
{
    /// <summary>Metres that CAVOK and the greatest reported visibility stand for.</summary>
    private const double TenKilometres = 10_000;

    /// <summary>
    /// The forecasts by airport: of several that cover a moment the one issued last, nothing where that one cancels it. Every stretch of time gives the
    /// prevailing conditions, and besides them those that each temporary or probable group would bring; a stretch without a visibility gives none, and a
    /// ceiling without a height (VV///) counts as 0 ft, so that nothing is taken for good that was not said.
    /// </summary>
    /// <param name="reports">Decoded forecasts.</param>
    /// <param name="bulletinOf">Gives the bulletin that a forecast was read from; null where that is not known.</param>
    public static Forecasts Of(IEnumerable<TafReport> reports, Func<TafReport, RawBulletin?>? bulletinOf = null)
    {
        var byStation = reports.Where(report => report.Station.Length > 0).GroupBy(report => report.Station, StringComparer.OrdinalIgnoreCase)
            .ToImmutableSortedDictionary(group => group.Key, InOrder, StringComparer.OrdinalIgnoreCase);
        return new Forecasts
        {
            ByAirport = byStation.ToImmutableSortedDictionary(pair => pair.Key, pair => Periods(pair.Value), StringComparer.OrdinalIgnoreCase),
            Issues = byStation.Where(pair => pair.Value.Any(report => !report.IsCancelled))
                .ToImmutableSortedDictionary(pair => pair.Key, pair => LastIssue(pair.Value), StringComparer.OrdinalIgnoreCase),
        };

        ForecastIssue LastIssue(ImmutableArray<TafReport> forecasts)
        {
            var last = forecasts.Last(report => !report.IsCancelled);
            return Issue(last, bulletinOf?.Invoke(last));
        }
    }

    // Those without a time of issue stand where their validity begins; of two of one time the later in the book counts as the last.
    private static ImmutableArray<TafReport> InOrder(IEnumerable<TafReport> reports) => [.. reports.OrderBy(report => report.Issued ?? report.ValidFrom)];

    private static ForecastIssue Issue(TafReport report, RawBulletin? bulletin) =>
        new(report.Issued, bulletin?.Source.Trim() ?? "", bulletin?.Origin.Cell(nameof(RawBulletin.Source)) ?? "");

    private static ImmutableArray<ForecastPeriod> Periods(ImmutableArray<TafReport> reports)
    {
        Instant[] times =
        [
            .. reports.SelectMany(report => report.Groups.SelectMany(group => new[] { group.From, group.To }).Append(report.ValidFrom).Append(report.ValidTo))
                .OfType<Instant>().Distinct().Order(),
        ];
        var periods = ImmutableArray.CreateBuilder<ForecastPeriod>();
        for (var i = 0; i + 1 < times.Length; i++)
        {
            if (reports.LastOrDefault(report => report.Covers(times[i]))?.At(times[i]) is not { } conditions) continue;
            var all = conditions.Temporary.Select(group => conditions.Prevailing.ChangedBy(group.Conditions)).Prepend(conditions.Prevailing);
            periods.AddRange(all.Select(one => Period(times[i], times[i + 1], one)).OfType<ForecastPeriod>());
        }

        return periods.DrainToImmutable();
    }

    private static ForecastPeriod? Period(Instant from, Instant to, WeatherConditions conditions)
    {
        if (!conditions.IsCavok && conditions.Visibility is null) return null;
        return new ForecastPeriod
        {
            From = from,
            To = to,
            Ceiling = conditions.HasCeilingOfUnknownHeight ? Feet.Zero : conditions.Ceiling,
            VisibilityMetres = conditions.IsCavok ? TenKilometres : conditions.Visibility?.Metres ?? 0,
        };
    }
}
