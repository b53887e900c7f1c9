using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Pictures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>One duty, from report to release.</summary>
internal sealed record DutyPeriodView
{
    /// <summary>Name of the limit on the length of a duty.</summary>
    private const string DutyLimitKey = "duty";

    [Value("Report")]
    public required ClockTime Report { get; init; }

    [Value("Release")]
    public required ClockTime Release { get; init; }

    [Value("Airport of the report")]
    public required string From { get; init; }

    [Value("Airport of the release")]
    public required string To { get; init; }

    [Value("Report to release")]
    public required Elapsed Length { get; init; }

    [Value("Flight time, block to block")]
    public required Elapsed FlightTime { get; init; }

    [Value("Night landings")]
    public required int NightLandings { get; init; }

    [Value("Time free of duty since the release before; nothing where that is not known")]
    public required Elapsed? RestBefore { get; init; }

    [Value("The legs, such as T101/1")]
    public required ImmutableArray<string> Legs { get; init; }

    [Value("The limits where they are tightest in this duty")]
    public required ImmutableArray<DutyLimitView> Limits { get; init; }

    [Value("Picture of the duty against the day: flights, rest, the limit")]
    public required Picture Picture { get; init; }

    public static DutyPeriodView Of(DutyPeriod period, Duration? restAfter, PlannedWeek week) => new()
    {
        Report = new ClockTime(period.Report, period.ReportZone),
        Release = new ClockTime(period.Release, period.ReleaseZone),
        From = period.From,
        To = period.To,
        Length = new Elapsed(period.Length),
        FlightTime = new Elapsed(period.FlightTime),
        NightLandings = period.NightLandings,
        RestBefore = Elapsed.Of(period.RestBefore),
        Legs = [.. period.Legs.Select(leg => leg.ToString())],
        Limits = [.. period.Limits.Select(DutyLimitView.Of)],
        Picture = DutyBar.Of(new DutyTimes
        {
            Report = period.Report,
            Release = period.Release,
            Zone = period.ReportZone,
            Flights = [.. week.Legs.OfType<LegPlan.Planned>().Where(leg => period.Legs.Contains(leg.Key))
                .Select(leg => (leg.Key.ToString(), leg.Times.OffBlocks, leg.Times.OnBlocks))],
            Limit = period.Limits.FirstOrDefault(limit => limit.Key == DutyLimitKey)?.Limit is { } hours ? period.Report + Duration.FromHours(hours) : null,
            RestBefore = period.RestBefore,
            RestAfter = restAfter,
        }),
    };
}
