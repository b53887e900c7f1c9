using System.Globalization;
using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Pictures;

/// <summary>
/// Altitude against distance: the path, minimum altitudes as steps, where the air freezes, tops of climb and descent, fixes below, winds above.
/// </summary>
internal static class ProfilePicture
{
    private const double Width = 736;
    private const double Left = 50;
    private const double Right = 720;
    private const double WindRow = 11;
    private const double BarbRow = 32;
    private const double Top = 54;
    private const double Bottom = 194;
    private const double RowHeight = 12;
    private const double Beside = 6;

    public static Picture Of(LegPlan.Planned plan) => new(style => Draw(plan, style));

    private static Markup Draw(LegPlan.Planned plan, PictureStyle style)
    {
        var length = Math.Max(plan.Profile.Distance.Value, 0.1);
        var highest = plan.Route.Segments.Select(segment => segment.MinimumAltitude?.Value ?? 0).Append(plan.Profile.Level.Value).Append(1000).Max();
        var distances = new Axis(0, length, Left, Right);
        var altitudes = new Axis(0, highest * 1.18, Bottom, Top);
        var drawing = new Drawing();
        Minimums(drawing, plan, distances, altitudes, style);
        Grid(drawing, altitudes, style);
        var rows = Fixes(drawing, plan, distances, altitudes, style);
        Path(drawing, plan, distances, altitudes, style);
        Winds(drawing, plan, distances);
        Footer(drawing, plan, Bottom + 15 + (rows * RowHeight), style);
        return drawing.Picture(Width, Bottom + 18 + (rows * RowHeight), Title(plan, style), "profile");
    }

    private static void Minimums(Drawing drawing, LegPlan.Planned plan, Axis distances, Axis altitudes, PictureStyle style)
    {
        foreach (var segment in plan.Route.Segments)
        {
            if (segment.MinimumAltitude is not { } minimum)
                continue;
            var from = distances.At(segment.Start.Value);
            var to = distances.At((segment.Start + segment.Length).Value);
            var y = altitudes.At(minimum.Value);
            drawing.Rectangle(from, y, to - from, Bottom - y, Ink.Ground);
            drawing.Line(from, y, to, y, Ink.Black, 1.2);
            var label = style.Number(Math.Ceiling(minimum.Value));
            if (to - from > Drawing.WidthOf(label) + 6 && Bottom - y > 13)
                drawing.Text((from + to) / 2, y + 11, label, TextAnchor.Middle);
        }
    }

    private static void Grid(Drawing drawing, Axis altitudes, PictureStyle style)
    {
        foreach (var altitude in altitudes.Marks(5))
        {
            var y = altitudes.At(altitude);
            drawing.Line(Left, y, Right, y, altitude == 0 ? Ink.Black : Ink.Hair, altitude == 0 ? 1 : 0.5, altitude == 0 ? "" : "1 3");
            drawing.Text(Left - 5, y + 3.5, style.Number(altitude), TextAnchor.End, fill: Ink.Grey);
        }
        drawing.Text(Left - 5, Top - 9, "ft", TextAnchor.End, fill: Ink.Grey);
    }

    private static int Fixes(Drawing drawing, LegPlan.Planned plan, Axis distances, Axis altitudes, PictureStyle style)
    {
        var points = plan.Log.Where(line => line.Kind is LogPointKind.Fix or LogPointKind.Airport).ToArray();
        var labels = points.Select(line =>
        {
            var text = line.AlongRoute.Value <= 0 ? line.Point : line.Point + " " + style.Number(line.AlongRoute.Value);
            var width = Drawing.WidthOf(text);
            return (Text: text, Width: width, Middle: LabelPlaces.Within(distances.At(line.AlongRoute.Value), width, Left - 30, Width - 2));
        }).ToArray();
        var rows = LabelPlaces.Rows([.. labels.Select(label => (label.Middle, label.Width))], 5);
        for (var k = 0; k < points.Length; k++)
        {
            var x = distances.At(points[k].AlongRoute.Value);
            drawing.Line(x, altitudes.At(points[k].Altitude.Value), x, Bottom + 4, Ink.Grey, 0.5, "2 2");
            drawing.Text(labels[k].Middle, Bottom + 15 + (rows[k] * RowHeight), labels[k].Text, TextAnchor.Middle, points[k].Kind == LogPointKind.Airport);
        }
        return rows.DefaultIfEmpty(0).Max() + 1;
    }

    private static void Path(Drawing drawing, LegPlan.Planned plan, Axis distances, Axis altitudes, PictureStyle style)
    {
        if (plan.Profile.Slices.IsEmpty)
            return;
        var first = plan.Profile.Slices[0];
        drawing.Polyline(
            plan.Profile.Slices.Select(slice => (distances.At(slice.EndNm), altitudes.At(slice.EndFt)))
                .Prepend((distances.At(first.StartNm), altitudes.At(first.StartFt))),
            Ink.Black, 2.4);
        foreach (var (nm, ft) in Freezing.Crossings(plan.Profile))
        {
            var (x, y) = (distances.At(nm), altitudes.At(ft));
            drawing.Line(x - 12, y, x + 12, y, Ink.Black, 1, "3 2");
            drawing.Polygon([(x, y - 3.6), (x + 3.6, y), (x, y + 3.6), (x - 3.6, y)], Ink.White, Ink.Black, 1.2);
        }
        Tops(drawing, plan.Profile, distances, altitudes, style);
    }

    private static void Tops(Drawing drawing, FlightProfile profile, Axis distances, Axis altitudes, PictureStyle style)
    {
        var climb = "TOC " + style.Number(profile.TopOfClimb.Distance.Value) + " NM";
        var descent = "TOD " + style.Number(profile.Distance.Value - profile.TopOfDescent.Distance.Value) + " NM";
        var (from, to) = (distances.At(profile.TopOfClimb.Distance.Value), distances.At(profile.TopOfDescent.Distance.Value));
        var y = altitudes.At(profile.Level.Value);
        drawing.Circle(from, y, 3.4, Ink.White, Ink.Black, 1.6);
        drawing.Circle(to, y, 3.4, Ink.White, Ink.Black, 1.6);

        // The labels stand outside the level stretch; where there is no room beside the axis, the label goes over it.
        var isClimbOutside = from - Beside - Drawing.WidthOf(climb) >= Left;
        var isDescentOutside = to + Beside + Drawing.WidthOf(descent) <= Width - 2;
        drawing.Text(isClimbOutside ? from - Beside : from + Beside, y - 5, climb, isClimbOutside ? TextAnchor.End : TextAnchor.Start);
        drawing.Text(isDescentOutside ? to + Beside : to - Beside, y - 5, descent, isDescentOutside ? TextAnchor.Start : TextAnchor.End);
        var level = style.Number(profile.Level.Value) + " ft";
        var start = isClimbOutside ? from : from + Beside + Drawing.WidthOf(climb);
        var end = isDescentOutside ? to : to - Beside - Drawing.WidthOf(descent);
        if (end - start > Drawing.WidthOf(level) + 12)
            drawing.Text((start + end) / 2, y - 5, level, TextAnchor.Middle, isBold: true);
    }

    private static void Winds(Drawing drawing, LegPlan.Planned plan, Axis distances)
    {
        var free = Left;
        foreach (var line in plan.Log)
        {
            if (line.WindFrom is not { } from || line.WindSpeed is not { } speed || line.Distance.Value <= 0)
                continue;
            var text = new Quantity(from.Value, QuantityKind.Angle).Text(1, 0).PadLeft(3, '0') + "/" + speed.Value.ToString("00", CultureInfo.InvariantCulture);
            var width = Math.Max(Drawing.WidthOf(text), 2 * WindBarb.Radius);
            var middle = distances.At(line.AlongRoute.Value - (line.Distance.Value / 2));
            if (middle - (width / 2) < free || middle + (width / 2) > Width)
                continue;
            drawing.Text(middle, WindRow, text, TextAnchor.Middle);
            WindBarb.Of(speed).Draw(drawing, middle, BarbRow, from, line.Position.LatitudeDeg < 0);
            free = middle + (width / 2) + 8;
        }
    }

    private static void Footer(Drawing drawing, LegPlan.Planned plan, double y, PictureStyle style) =>
        drawing.Text(Left - 5, y, $"{style.Word("NM from the departure")} · {Frost(plan.Profile, style)}", fill: Ink.Grey);

    /// <summary>Where the way crosses 0 °C, in words.</summary>
    private static string Frost(FlightProfile profile, PictureStyle style)
    {
        if (profile.Slices.IsEmpty)
            return style.Word("freezing level not known");
        var levels = Freezing.Crossings(profile).Select(crossing => style.Number(Math.Round(crossing.AltitudeFt / 100) * 100) + " ft").ToArray();
        return levels.Length > 0
            ? $"◇ 0 °C: {string.Join(", ", levels)}"
            : profile.Slices[0].Air.Temperature.Value > 0 ? style.Word("above 0 °C all the way") : style.Word("0 °C or colder all the way");
    }

    private static string Title(LegPlan.Planned plan, PictureStyle style) =>
        $"{style.Word("Vertical profile")} {plan.Leg.From} – {plan.Leg.To}: {style.Number(plan.Profile.Distance.Value)} NM, {style.Number(plan.Profile.Level.Value)} ft"
        + $", {style.Word("top of climb")} {style.Number(plan.Profile.TopOfClimb.Distance.Value)} NM, {style.Word("top of descent")} {style.Number(plan.Profile.Distance.Value - plan.Profile.TopOfDescent.Distance.Value)} NM, {Frost(plan.Profile, style)}.";
}
