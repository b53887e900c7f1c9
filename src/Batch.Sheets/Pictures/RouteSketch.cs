using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Sheets.Figures;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Pictures;

/// <summary>The route from above, north up: the way as a solid line with its fixes, the ways to the alternates dashed, a scale and a north arrow.</summary>
internal static class RouteSketch
{
    private const double Width = 290;
    private const double Edge = 20;
    private const double LowestHeight = 70;
    private const double GreatestHeight = 138;
    private const double StripHeight = 20;
    private const double RowHeight = 13;
    private const double LeastExtentNm = 4;

    /// <summary>The picture.</summary>
    /// <param name="plan">The leg.</param>
    /// <param name="airports">Airports by ident, for the alternates.</param>
    public static Picture Of(LegPlan.Planned plan, IReadOnlyDictionary<string, Airport> airports) => new(style => Draw(plan, airports, style));

    private static Markup Draw(LegPlan.Planned plan, IReadOnlyDictionary<string, Airport> airports, PictureStyle style)
    {
        GeodesicPath[] ways = [.. plan.Route.Segments.Select(segment => segment.Path)];
        (string Ident, GeodesicPath Way)[] diversions = [.. plan.Alternates.Where(alternate => airports.ContainsKey(alternate.Airport))
            .Select(alternate => (alternate.Airport, new GeodesicPath(plan.To.Position, airports[alternate.Airport].Position)))];
        var projection = PlanProjection.About(
            [.. ways.SelectMany(way => new[] { way.From, way.To }).Concat(diversions.Select(diversion => diversion.Way.To)), plan.From.Position]);
        var route = ways.SelectMany(projection.Of).ToArray();
        var dashed = diversions.Select(diversion => projection.Of(diversion.Way).ToArray()).ToArray();
        var field = SketchField.Around([.. route, .. dashed.SelectMany(way => way), projection.Of(plan.From.Position)], Edge + 16, Width - Edge - 16,
            LowestHeight, GreatestHeight, Edge, LeastExtentNm);

        var drawing = new Drawing();
        foreach (var way in dashed)
            drawing.Polyline(way.Select(field.At), Ink.Black, 1.1, "5 4");
        drawing.Polyline(route.Select(field.At), Ink.Black, 2.2);
        var marks = Marks(plan, diversions, projection, field);
        foreach (var mark in marks)
            Symbol(drawing, mark);
        var hidden = Names(drawing, marks, [route.Select(field.At).ToArray(), .. dashed.Select(way => way.Select(field.At).ToArray())], field.Height);
        var bottom = field.Height + StripHeight;
        North(drawing, bottom, style);
        Scale(drawing, field, bottom, style);
        if (hidden > 0)
        {
            bottom += RowHeight;
            drawing.Text(4, bottom - 4, style.Number(hidden) + " " + style.Word("names left out"), fill: Ink.Grey);
        }
        return drawing.Picture(Width, bottom, Title(plan, style), "sketch");
    }

    private static SketchMark[] Marks(LegPlan.Planned plan, (string Ident, GeodesicPath Way)[] diversions, PlanProjection projection, SketchField field)
    {
        SketchMark Of(string ident, GeoPoint place, SketchKind kind) => field.At(projection.Of(place)) is var (x, y)
            ? new SketchMark(ident, x, y, kind)
            : default;
        var airports = new[] { Of(plan.Leg.From, plan.From.Position, SketchKind.Airport), Of(plan.Leg.To, plan.To.Position, SketchKind.Airport) };
        var fixes = plan.Route.Segments.SkipLast(1).Select(segment => Of(segment.To.Ident, segment.To.Position, SketchKind.Fix));
        return [.. airports.Concat(diversions.Select(diversion => Of(diversion.Ident, diversion.Way.To, SketchKind.Alternate))).Concat(fixes)
            .DistinctBy(mark => (mark.Name, Math.Round(mark.X), Math.Round(mark.Y)))];
    }

    private static void Symbol(Drawing drawing, SketchMark mark)
    {
        var (x, y) = (mark.X, mark.Y);
        if (mark.Kind == SketchKind.Airport)
            drawing.Circle(x, y, 4.2, Ink.Black);
        else if (mark.Kind == SketchKind.Alternate)
            drawing.Circle(x, y, 3.8, Ink.White, Ink.Black, 1.4);
        else
            drawing.Polygon([(x, y - 4.4), (x + 4, y + 2.8), (x - 4, y + 2.8)], Ink.White, Ink.Black, 1.2);
    }

    /// <summary>
    /// Writes the names where none covers another name, a symbol or the edge, off the lines where that can be and on a white ground where not; gives how many
    /// had no room.
    /// </summary>
    private static int Names(Drawing drawing, SketchMark[] marks, IReadOnlyList<(double X, double Y)[]> lines, double height)
    {
        var places = new NamePlaces(2, 2, Width - 2, height - 2, lines);
        foreach (var mark in marks)
            places.Block(mark.X, mark.Y, 5);
        var hidden = 0;
        foreach (var mark in marks)
        {
            var isBold = mark.Kind != SketchKind.Fix;
            var width = Drawing.WidthOf(mark.Name);
            if (places.Take(mark.X, mark.Y, width, Ink.TextSize) is not { } place)
            {
                hidden++;
                continue;
            }
            if (place.IsFar)
                drawing.Line(mark.X, mark.Y, place.NearX, place.NearY, Ink.Grey, 0.5);
            if (place.IsCrossed)
                drawing.Rectangle(place.X - (place.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => width / 2, TextAnchor.End => width }),
                    place.Baseline - Ink.TextSize + 1, width, Ink.TextSize, Ink.White);
            drawing.Text(place.X, place.Baseline, mark.Name, place.Anchor, isBold);
        }
        return hidden;
    }

    private static void North(Drawing drawing, double bottom, PictureStyle style)
    {
        const double X = 10;
        drawing.Polygon([(X, bottom - 17), (X + 5, bottom - 2), (X, bottom - 5), (X - 5, bottom - 2)], Ink.Black, Ink.Black, 0.8);
        drawing.Text(X + 10, bottom - 5, style.Word("true north"), fill: Ink.Grey);
    }

    private static void Scale(Drawing drawing, SketchField field, double bottom, PictureStyle style)
    {
        const double Longest = 80;
        var nm = Axis.StepBelow(Longest / field.PixelsPerNm);
        var (right, y) = (Width - 4, bottom - 4);
        var left = right - (nm * field.PixelsPerNm);
        drawing.Polyline([(left, y - 5), (left, y), (right, y), (right, y - 5)], Ink.Black, 1.2);
        drawing.Text(left - 5, y - 1, style.Number(nm, nm < 1 ? 2 : nm < 10 ? 1 : 0) + " NM", TextAnchor.End, fill: Ink.Grey);
    }

    private static string Title(LegPlan.Planned plan, PictureStyle style) =>
        $"{style.Word("Route from above")}: {string.Join(" – ", plan.Route.Segments.Select(segment => segment.To.Ident).Prepend(plan.Leg.From))}, {style.Number(plan.Profile.Distance.Value)} NM"
        + string.Concat(plan.Alternates.Select(alternate => $"; {style.Word("alternate")} {alternate.Airport}, {style.Number(alternate.Distance.Value)} NM, {new Quantity(alternate.MagneticCourse.Value, QuantityKind.Angle).Text(1, 0).PadLeft(3, '0')}°M")) + ".";
}
