using System.Globalization;
using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Sheets.Templates;
using NodaTime.Text;

namespace Batch.Sheets.Views;

/// <summary>One day of the week board; the day is the local one of off blocks.</summary>
internal sealed record DayView
{
    private static readonly LocalDatePattern Day = LocalDatePattern.Create("dddd d MMMM uuuu", CultureInfo.InvariantCulture);

    [Value("The day in words, such as Monday 7 December 2026; Day not known for rows whose date could not be read")]
    public required string Name { get; init; }

    [Value("The date, such as 2026-12-07; nothing where not known")]
    public required string Date { get; init; }

    [Value("The aircraft that fly that day")]
    public required ImmutableArray<DayAircraftView> Aircraft { get; init; }

    public static ImmutableArray<DayView> Of(CheckedWeek week) =>
    [
        .. week.Legs.GroupBy(leg => DateOf(leg.Plan)).OrderBy(day => day.Key is null).ThenBy(day => day.Key).Select(day => new DayView
        {
            Name = day.Key is { } date ? Day.Format(date) : "Day not known",
            Date = day.Key is { } known ? LocalDatePattern.Iso.Format(known) : "",
            Aircraft = [.. day.GroupBy(leg => LegPeople.Aircraft(leg.Plan), StringComparer.OrdinalIgnoreCase)
                .OrderBy(group => group.Key, StringComparer.Ordinal).Select(group => DayAircraftView.Of(group.Key, group, week.Plan.Input))],
        }),
    ];

    private static LocalDate? DateOf(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned => planned.Leg.OffBlocksLocal.Date,
        LegPlan.Unplanned unplanned => unplanned.Leg?.OffBlocksLocal.Date ?? unplanned.Broken?.Date,
        _ => null,
    };
}
