using Batch.Flight.Air.Bulletins;
using Batch.Flight.Week;

namespace Batch.Checks;

/// <summary>Forecasts as the checks need them, from decoded terminal forecasts.</summary>
public static class ForecastReading
{
    /// <summary>Metres that CAVOK and the greatest reported visibility stand for.</summary>
    private const double TenKilometres = 10_000;

    /// <summary>
    /// The forecasts by airport: of several for one airport the one issued last. Every stretch of time gives the prevailing conditions, and besides them those that each
    /// temporary or probable group would bring; a stretch without a visibility, or a ceiling without a height, gives none, so that nothing is taken for good that was not said.
    /// </summary>
    /// <param name="reports">Decoded forecasts.</param>
    /// <param name="bulletinOf">Gives the bulletin that a forecast was read from; null where that is not known.</param>
    public static Forecasts Of(IEnumerable<TafReport> reports, Func<TafReport, RawBulletin?>? bulletinOf = null)
    {
        var last = reports.Where(report => report.Station.Length > 0 && !report.IsCancelled)
            .GroupBy(report => report.Station, StringComparer.OrdinalIgnoreCase)
            .ToImmutableSortedDictionary(group => group.Key, group => group.MaxBy(report => report.Issued) ?? group.Last(), StringComparer.OrdinalIgnoreCase);
        return new Forecasts
        {
            ByAirport = last.ToImmutableSortedDictionary(pair => pair.Key, pair => Periods(pair.Value), StringComparer.OrdinalIgnoreCase),
            Issues = last.ToImmutableSortedDictionary(pair => pair.Key, pair => Issue(pair.Value, bulletinOf?.Invoke(pair.Value)), StringComparer.OrdinalIgnoreCase),
        };
    }

    private static ForecastIssue Issue(TafReport report, RawBulletin? bulletin) =>
        new(report.Issued, bulletin?.Source.Trim() ?? "", bulletin?.Origin.Cell(nameof(RawBulletin.Source)) ?? "");

    private static ImmutableArray<ForecastPeriod> Periods(TafReport report)
    {
        if (report.ValidFrom is not { } from || report.ValidTo is not { } to) return [];
        Instant[] times =
        [
            .. report.Groups.SelectMany(group => new[] { group.From, group.To }).OfType<Instant>().Where(at => at > from && at < to).Append(from).Append(to).Distinct().Order(),
        ];
        var periods = ImmutableArray.CreateBuilder<ForecastPeriod>();
        for (var i = 0; i + 1 < times.Length; i++)
        {
            if (report.At(times[i]) is not { } conditions) continue;
            var all = conditions.Temporary.Select(group => conditions.Prevailing.ChangedBy(group.Conditions)).Prepend(conditions.Prevailing);
            periods.AddRange(all.Select(one => Period(times[i], times[i + 1], one)).OfType<ForecastPeriod>());
        }

        return periods.DrainToImmutable();
    }

    private static ForecastPeriod? Period(Instant from, Instant to, WeatherConditions conditions)
    {
        if (conditions.HasCeilingOfUnknownHeight) return null;
        if (!conditions.IsCavok && conditions.Visibility is null) return null;
        return new ForecastPeriod
        {
            From = from,
            To = to,
            Ceiling = conditions.Ceiling,
            VisibilityMetres = conditions.IsCavok ? TenKilometres : conditions.Visibility?.Metres ?? 0,
        };
    }
}
