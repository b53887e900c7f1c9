using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;
using NodaTime.Text;

namespace Batch.Sheets.Views;

/// <summary>The duties of one person in the week, with the limits where they are tightest.</summary>
internal sealed record DutyView
{
    [Value("First logged day, such as 2026-01-04; nothing where nothing is logged")]
    public required string LoggedFrom { get; init; }

    [Value("Flight time of the planned legs, block to block")]
    public required Elapsed FlightTime { get; init; }

    [Value("Duties in time order")]
    public required ImmutableArray<DutyPeriodView> Periods { get; init; }

    [Value("Every limit where it is tightest in the week")]
    public required ImmutableArray<DutyLimitView> Limits { get; init; }

    public static DutyView? Of(DutyTable? table, PlannedWeek week) => table is null || table.Periods.IsEmpty ? null : new DutyView
    {
        LoggedFrom = table.LoggedFrom is { } first ? LocalDatePattern.Iso.Format(first) : "",
        FlightTime = new Elapsed(table.FlightTime),
        Periods = [.. table.Periods.Select(
            (period, index) => DutyPeriodView.Of(period, index + 1 < table.Periods.Length ? table.Periods[index + 1].RestBefore : null, week))],
        Limits = [.. table.Limits.Select(DutyLimitView.Of)],
    };
}
