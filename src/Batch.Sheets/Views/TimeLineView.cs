using Batch.Checks;
using Batch.Sheets.Board;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The week drawn along time: places and widths are per cent of the whole, so that a style sheet decides the size.</summary>
internal sealed record TimeLineView
{
    [Value("Start of the line: midnight at the home base")]
    public required ClockTime From { get; init; }

    [Value("End of the line: midnight at the home base")]
    public required ClockTime To { get; init; }

    [Value("Length of the line [h]")]
    public required double Hours { get; init; }

    [Value("Whose local time the line shows, such as XAND; UTC where the home base is not known")]
    public required string Base { get; init; }

    [Value("The days of the line")]
    public required ImmutableArray<LineDayView> Days { get; init; }

    [Value("The hours of the line")]
    public required ImmutableArray<LineHourView> Ticks { get; init; }

    [Value("One row an aircraft, in order")]
    public required ImmutableArray<LineRowView> Aircraft { get; init; }

    [Value("One row a pilot, by code")]
    public required ImmutableArray<LineRowView> Crew { get; init; }

    [Value("Legs that have no place on the line, for want of a time or far from the rest of the week")]
    public required ImmutableArray<BoardLegView> Unplaced { get; init; }

    /// <summary>The line of a week; null where no leg has a time.</summary>
    public static TimeLineView? Of(CheckedWeek week)
    {
        var input = week.Plan.Input;
        var home = input.Airports.GetValueOrDefault(input.Operator.HomeBase);
        var zone = home?.Zone ?? DateTimeZone.Utc;
        var shown = week.Legs.Select(leg => leg.Plan.Key).ToHashSet();
        var duties = week.Plan.Crew.SelectMany(person => person.Duties).Where(duty => duty.Legs.Any(shown.Contains))
            .Select(duty => (duty.Report, duty.Release));
        if (Stretch.Of([.. week.Legs.Select(LegTime.Of).OfType<(Instant From, Instant To)>(), .. duties], zone) is not { } stretch) return null;
        var rows = new LineRows(week, stretch, home);
        return new TimeLineView
        {
            From = new ClockTime(stretch.From, zone),
            To = new ClockTime(stretch.To, zone),
            Hours = stretch.Hours,
            Base = home?.Ident ?? "UTC",
            Days = LineDayView.Of(stretch),
            Ticks = LineHourView.Of(stretch),
            Aircraft = rows.Aircraft(),
            Crew = rows.Crew(),
            Unplaced = [.. week.Legs.Where(leg => LegTime.Of(leg) is not { } time || !stretch.Holds(time.From)).Select(leg => BoardLegView.Of(leg, input))],
        };
    }
}
