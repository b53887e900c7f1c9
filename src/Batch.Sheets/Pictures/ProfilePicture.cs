using System.Globalization;
using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Pictures;

/// <summary>Altitude against distance: the path, minimum altitudes as steps, tops of climb and descent, fixes below, winds above.</summary>
internal static class ProfilePicture
{
    private const double Width = 760;
    private const double Left = 50;
    private const double Right = 744;
    private const double Top = 26;
    private const double Bottom = 168;
    private const double RowHeight = 12;
    private const double Beside = 6;

    public static Markup Of(LegPlan.Planned plan)
    {
        var length = Math.Max(plan.Profile.Distance.Value, 0.1);
        var highest = plan.Route.Segments.Select(segment => segment.MinimumAltitude?.Value ?? 0).Append(plan.Profile.Level.Value).Append(1000).Max();
        var distances = new Axis(0, length, Left, Right);
        var altitudes = new Axis(0, highest * 1.18, Bottom, Top);
        var drawing = new Drawing();
        Minimums(drawing, plan, distances, altitudes);
        Grid(drawing, altitudes);
        var rows = Fixes(drawing, plan, distances, altitudes);
        Path(drawing, plan, distances, altitudes);
        Winds(drawing, plan, distances);
        var height = Bottom + 14 + ((rows + 1) * RowHeight);
        return drawing.Picture(Width, height, Title(plan), "profile");
    }

    private static void Minimums(Drawing drawing, LegPlan.Planned plan, Axis distances, Axis altitudes)
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
            var label = Quantity.Text(Math.Ceiling(minimum.Value), 0, isSigned: false);
            if (to - from > Drawing.WidthOf(label) + 6 && Bottom - y > 13)
                drawing.Text((from + to) / 2, y + 11, label, TextAnchor.Middle);
        }
    }

    private static void Grid(Drawing drawing, Axis altitudes)
    {
        foreach (var altitude in altitudes.Marks(5))
        {
            var y = altitudes.At(altitude);
            drawing.Line(Left, y, Right, y, altitude == 0 ? Ink.Black : Ink.Hair, altitude == 0 ? 1 : 0.5, altitude == 0 ? "" : "1 3");
            drawing.Text(Left - 5, y + 3.5, Quantity.Text(altitude, 0, isSigned: false), TextAnchor.End, fill: Ink.Grey);
        }
        drawing.Text(Left - 5, Top - 8, "ft", TextAnchor.End, fill: Ink.Grey);
    }

    private static int Fixes(Drawing drawing, LegPlan.Planned plan, Axis distances, Axis altitudes)
    {
        var points = plan.Log.Where(line => line.Kind is LogPointKind.Fix or LogPointKind.Airport).ToArray();
        var labels = points.Select(line =>
        {
            var text = line.AlongRoute.Value <= 0 ? line.Point : line.Point + " " + Quantity.Text(Math.Round(line.AlongRoute.Value, MidpointRounding.AwayFromZero), 0, isSigned: false);
            var width = Drawing.WidthOf(text);
            return (Text: text, Width: width, Middle: Math.Clamp(distances.At(line.AlongRoute.Value), Left - 30 + (width / 2), Width - 2 - (width / 2)));
        }).ToArray();
        var rows = LabelPlaces.Rows([.. labels.Select(label => (label.Middle, label.Width))], 5);
        for (var k = 0; k < points.Length; k++)
        {
            var x = distances.At(points[k].AlongRoute.Value);
            drawing.Line(x, altitudes.At(points[k].Altitude.Value), x, Bottom + 4, Ink.Grey, 0.5, "2 2");
            drawing.Text(labels[k].Middle, Bottom + 15 + (rows[k] * RowHeight), labels[k].Text, TextAnchor.Middle, points[k].Kind == LogPointKind.Airport);
        }
        var last = rows.DefaultIfEmpty(0).Max();
        drawing.Text(Left - 5, Bottom + 15 + ((last + 1) * RowHeight), "NM from the departure", fill: Ink.Grey);
        return last + 1;
    }

    private static void Path(Drawing drawing, LegPlan.Planned plan, Axis distances, Axis altitudes)
    {
        if (plan.Profile.Slices.IsEmpty)
            return;
        var first = plan.Profile.Slices[0];
        drawing.Polyline(
            plan.Profile.Slices.Select(slice => (distances.At(slice.EndNm), altitudes.At(slice.EndFt))).Prepend((distances.At(first.StartNm), altitudes.At(first.StartFt))),
            Ink.Black, 2.4);
        Tops(drawing, plan.Profile, distances, altitudes);
    }

    private static void Tops(Drawing drawing, FlightProfile profile, Axis distances, Axis altitudes)
    {
        var climb = "TOC " + Quantity.Text(Math.Round(profile.TopOfClimb.Distance.Value), 0, isSigned: false) + " NM";
        var descent = "TOD " + Quantity.Text(Math.Round(profile.Distance.Value - profile.TopOfDescent.Distance.Value), 0, isSigned: false) + " NM";
        var (from, to) = (distances.At(profile.TopOfClimb.Distance.Value), distances.At(profile.TopOfDescent.Distance.Value));
        var y = altitudes.At(profile.Level.Value);
        drawing.Circle(from, y, 3.4, Ink.White, Ink.Black, 1.6);
        drawing.Circle(to, y, 3.4, Ink.White, Ink.Black, 1.6);

        // The labels stand outside the level stretch; where there is no room beside the axis, the label goes over it.
        var isClimbOutside = from - Beside - Drawing.WidthOf(climb) >= Left;
        var isDescentOutside = to + Beside + Drawing.WidthOf(descent) <= Width - 2;
        drawing.Text(isClimbOutside ? from - Beside : from + Beside, y - 5, climb, isClimbOutside ? TextAnchor.End : TextAnchor.Start);
        drawing.Text(isDescentOutside ? to + Beside : to - Beside, y - 5, descent, isDescentOutside ? TextAnchor.Start : TextAnchor.End);
        var level = Quantity.Text(profile.Level.Value, 0, isSigned: false) + " ft";
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
            var width = Drawing.WidthOf(text);
            var middle = distances.At(line.AlongRoute.Value - (line.Distance.Value / 2));
            if (middle - (width / 2) < free)
                continue;
            drawing.Text(middle, Top - 12, text, TextAnchor.Middle);
            free = middle + (width / 2) + 8;
        }
    }

    private static string Title(LegPlan.Planned plan) => string.Create(CultureInfo.InvariantCulture,
        $"Vertical profile from {plan.Leg.From} to {plan.Leg.To}: {plan.Profile.Distance.Value:0} NM, cruise at {plan.Profile.Level.Value:0} ft, top of climb after {plan.Profile.TopOfClimb.Distance.Value:0} NM, top of descent {plan.Profile.Distance.Value - plan.Profile.TopOfDescent.Distance.Value:0} NM before the destination.");
}
