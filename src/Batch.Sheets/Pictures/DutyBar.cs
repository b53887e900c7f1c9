using System.Globalization;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Pictures;

/// <summary>
/// A duty against the day: local hours above, UTC below, the duty as a box, its flights as solid bars with their names, rest as dotted lines, the limit as a
/// dashed line, what lies over it hatched.
/// </summary>
internal static class DutyBar
{
    private const double Width = 648;
    private const double Left = 48;
    private const double Right = 638;
    private const double MarksRow = 25;
    private const double RowHeight = 13;
    private const double BarHeight = 17;
    private const double Overlap = 3; // how far a label stands over its mark
    private const int HoursShown = 24;
    private static readonly Duration Margin = Duration.FromHours(1);

    /// <summary>
    /// The picture. Its scale is the local day of the report; a duty or limit that passes midnight has a scale from an hour before the report, of 24 hours or
    /// as many as it needs.
    /// </summary>
    /// <param name="duty">The times.</param>
    /// <exception cref="ArgumentException">The release is before the report.</exception>
    public static Picture Of(DutyTimes duty) =>
        duty.Release >= duty.Report ? new Picture(style => Draw(duty, style)) : throw new ArgumentException("The release is before the report.", nameof(duty));

    private static Markup Draw(DutyTimes duty, PictureStyle style)
    {
        var (from, to) = Span(duty);
        double At(Instant instant) => new Axis(0, (to - from).TotalHours, Left, Right).At(Math.Clamp((instant - from).TotalHours, 0, (to - from).TotalHours));
        var drawing = new Drawing();
        var top = Moments(drawing, duty, style, At);
        Hours(drawing, style.Word("local"), 9, 1, duty.Zone, from, to, At);
        Rests(drawing, duty, style, from, to, top, At);
        drawing.Rectangle(At(duty.Report), top, Math.Max(At(duty.Release) - At(duty.Report), 0.5), BarHeight, Ink.Ground, Ink.Black, 1);
        if (duty.Limit is { } limit && limit < duty.Release)
            drawing.Hatch(At(limit), top, At(duty.Release) - At(limit), BarHeight, 5, Ink.Fail);
        var bottom = Flights(drawing, duty, top, At);
        foreach (var moment in new[] { duty.Report, duty.Release })
            drawing.Line(At(moment), top - 4, At(moment), top + BarHeight, Ink.Black, 1);
        if (duty.Limit is { } end)
            drawing.Line(At(end), top - 4, At(end), top + BarHeight + 4, end < duty.Release ? Ink.Fail : Ink.Black, 2, "4 2");
        Hours(drawing, style.Word("UTC"), bottom + 11, -1, DateTimeZone.Utc, from, to, At);
        return drawing.Picture(Width, bottom + 14, Title(duty, style), "dutybar");
    }

    private static (Instant From, Instant To) Span(DutyTimes duty)
    {
        var end = duty.Limit is { } limit && limit > duty.Release ? limit : duty.Release;
        var day = duty.Report.InZone(duty.Zone).Date;
        var (midnight, next) = (duty.Zone.AtStartOfDay(day).ToInstant(), duty.Zone.AtStartOfDay(day.PlusDays(1)).ToInstant());
        if (end <= next)
            return (midnight, next);
        var from = WholeHour(duty.Report, duty.Zone) - Margin;
        return (from, from + Duration.FromHours(Math.Max(HoursShown, Math.Ceiling((end - from).TotalHours + Margin.TotalHours))));
    }

    private static Instant WholeHour(Instant instant, DateTimeZone zone)
    {
        var local = instant.InZone(zone).TimeOfDay;
        return instant - Duration.FromTicks(local.TickOfDay % NodaConstants.TicksPerHour);
    }

    /// <summary>
    /// Hours of a clock that the scale passes: every second one, figures on the outer side of the line; a day with another offset keeps its true places.
    /// </summary>
    private static void Hours(Drawing drawing, string name, double baseline, int side, DateTimeZone zone, Instant from, Instant to, Func<Instant, double> at)
    {
        drawing.Text(Left - 13, baseline, name, TextAnchor.End, fill: Ink.Grey);
        var rule = side > 0 ? baseline + 6 : baseline - 11;
        drawing.Line(Left, rule, Right, rule, Ink.Grey, 0.8);
        for (var hour = WholeHour(from, zone); hour <= to; hour += Margin)
        {
            if (hour < from)
                continue;
            var local = hour.InZone(zone);
            var isNamed = local.Hour % 2 == 0 && local.Minute == 0;
            drawing.Line(at(hour), rule, at(hour), rule - (side * (isNamed ? 3 : 2)), Ink.Grey, 0.8);
            if (isNamed)
                drawing.Text(Math.Min(at(hour), Right), baseline - (side > 0 ? 1 : 0),
                    hour == to && local.Hour == 0 ? "24" : local.Hour.ToString("00", CultureInfo.InvariantCulture), TextAnchor.Middle, fill: Ink.Grey);
        }
    }

    /// <summary>
    /// Writes report, release and limit above the bar, report to the left of its mark and the others to the right, so that they seldom need a second row; gives
    /// the top of the bar.
    /// </summary>
    private static double Moments(Drawing drawing, DutyTimes duty, PictureStyle style, Func<Instant, double> at)
    {
        string Local(Instant instant) => new ClockTime(instant, duty.Zone).LocalClock();
        List<(string Text, Instant At, bool IsFail)> moments =
        [
            (style.Word("report") + " " + Local(duty.Report), duty.Report, false),
            (style.Word("release") + " " + Local(duty.Release), duty.Release, false),
        ];
        if (duty.Limit is { } limit)
            moments.Add((style.Word("limit") + " " + Local(limit) + (limit < duty.Release
                ? ", " + style.Word("over the limit") + " " + new Elapsed(duty.Release - limit).HoursMinutes()
                : ""), limit, limit < duty.Release));
        var labels = moments.Select(
            (moment, k) => (moment.Text, moment.IsFail, Width: Drawing.WidthOf(moment.Text), Place: at(moment.At), Side: k == 0 ? -1 : 1))
            .Select(label => (label.Text, label.IsFail, label.Width,
                Middle: LabelPlaces.Within(label.Place + (label.Side * ((label.Width / 2) - Overlap)), label.Width, Left, Right)))
                .OrderBy(label => label.Middle).ToArray();
        var rows = LabelPlaces.Rows([.. labels.Select(label => (label.Middle, label.Width))], 8);
        for (var k = 0; k < labels.Length; k++)
            drawing.Text(labels[k].Middle, MarksRow + (rows[k] * RowHeight), labels[k].Text, TextAnchor.Middle, isBold: true,
                fill: labels[k].IsFail ? Ink.Fail : Ink.Black);
        return MarksRow + (rows.Max() * RowHeight) + 5;
    }

    private static void Rests(Drawing drawing, DutyTimes duty, PictureStyle style, Instant from, Instant to, double top, Func<Instant, double> at)
    {
        if (duty.RestBefore is { } before)
            Rest(drawing, style, before, at(Instant.Max(from, duty.Report - before)), at(duty.Report), null, top);
        if (duty.RestAfter is { } after)
            Rest(drawing, style, after, at(duty.Release), at(Instant.Min(to, duty.Release + after)), duty.Limit is { } limit ? at(limit) : null, top);
    }

    /// <summary>Draws a rest; its text stands on one side of the limit's line.</summary>
    private static void Rest(Drawing drawing, PictureStyle style, Duration rest, double start, double end, double? limit, double top)
    {
        if (end <= start)
            return;
        var line = top + BarHeight - 4;
        drawing.Line(start, line, end, line, Ink.Grey, 2, "2 4");
        var text = style.Word("rest") + " " + new Elapsed(rest).HoursMinutes();
        var width = Drawing.WidthOf(text) + 8;
        var (left, right) = limit is not { } wall || wall <= start || wall >= end ? (start, end) : wall - start >= width ? (start, wall) : (wall, end);
        if (width <= right - left)
            drawing.Text((left + right) / 2, line - 4, text, TextAnchor.Middle, fill: Ink.Grey);
    }

    /// <summary>Draws the flights and their names below the bar; gives the lower edge of the names.</summary>
    private static double Flights(Drawing drawing, DutyTimes duty, double top, Func<Instant, double> at)
    {
        var flights = duty.Flights.Sort((a, b) => a.OffBlocks.CompareTo(b.OffBlocks))
            .Select(flight => (flight.Name, From: at(flight.OffBlocks), To: Math.Max(at(flight.OnBlocks), at(flight.OffBlocks) + 1))).ToArray();
        var labels = flights.Select(flight => Drawing.WidthOf(flight.Name) is var width
            ? (Middle: LabelPlaces.Within((flight.From + flight.To) / 2, width, Left, Right), Width: width)
            : default).ToArray();
        var rows = LabelPlaces.Rows(labels, 5);
        for (var k = 0; k < flights.Length; k++)
        {
            drawing.Rectangle(flights[k].From, top + 4, flights[k].To - flights[k].From, BarHeight - 8, Ink.Black);
            drawing.Text(labels[k].Middle, top + BarHeight + 11 + (rows[k] * RowHeight), flights[k].Name, TextAnchor.Middle);
        }
        return top + BarHeight + 13 + (rows.DefaultIfEmpty(0).Max() * RowHeight);
    }

    private static string Title(DutyTimes duty, PictureStyle style)
    {
        string Local(Instant instant) => new ClockTime(instant, duty.Zone).LocalClock();
        var flights = duty.Flights.Select(flight => $"{flight.Name} {Local(flight.OffBlocks)}–{Local(flight.OnBlocks)}");
        return $"{style.Word("Duty")}: {style.Word("report")} {Local(duty.Report)}, {style.Word("release")} {Local(duty.Release)}"
            + (duty.Limit is { } limit ? $", {style.Word("limit")} {Local(limit)}"
                + (limit < duty.Release ? $", {style.Word("over the limit")} {new Elapsed(duty.Release - limit).HoursMinutes()}" : "") : "")
            + (duty.RestBefore is { } rest ? $", {style.Word("rest")} {new Elapsed(rest).HoursMinutes()}" : "")
            + string.Concat(flights.Select(flight => "; " + flight)) + ".";
    }
}
