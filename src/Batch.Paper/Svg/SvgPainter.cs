using AngleSharp.Dom;
using Batch.Paper.Boxes;
using Batch.Paper.Fonts;
using Batch.Paper.Html;
using Batch.Paper.Paint;
using Batch.Paper.Style;

namespace Batch.Paper.Svg;

/// <summary>Inline SVG to display items. Everything is mapped to page px here, so the canvas needs no transforms.</summary>
internal sealed class SvgPainter(Cascade cascade, FontLibrary fonts, Report report)
{
    public void Paint(List<DisplayItem> items, Box box, Rect place, double opacity)
    {
        if (box.Element is not { } svg || place is not { Width: > 0, Height: > 0 }) return;
        if (svg.GetAttribute("preserveAspectRatio") is { } ratio && ratio is not ("none" or "xMidYMid" or "xMidYMid meet")) report.Add(svg, "preserveAspectRatio", "value not supported: " + ratio);
        items.Add(new DisplayItem.Clip(place.X, place.Y, place.Width, place.Height));
        foreach (var child in svg.Children) Element(items, child, box.Style, SvgViewport.Map(svg, place), opacity);
        items.Add(new DisplayItem.EndClip());
    }

    private void Element(List<DisplayItem> items, IElement element, ComputedStyle parent, Matrix map, double opacity)
    {
        if (element.LocalName is "title" or "desc" or "metadata" or "style") return;
        var style = cascade.Of(element, parent);
        if (style.Display == Display.None) return;
        opacity *= style.Opacity;
        if (element.GetAttribute("transform") is { } text)
        {
            if (TransformReader.Read(text) is { } own) map = map.After(own);
            else report.Add(element, "transform", "value not supported: " + text);
        }

        switch (element.LocalName)
        {
            case "g":
                foreach (var child in element.Children) Element(items, child, style, map, opacity);
                break;
            case "text":
                if (style.Visible) new SvgText(cascade, fonts, report).Paint(items, element, style, map, opacity);
                break;
            case "path" or "line" or "polyline" or "polygon" or "rect" or "circle" or "ellipse":
                if (style.Visible) Shape(items, Outline(element), style, map, opacity, element.LocalName != "line");
                break;
            default:
                report.Add(element, "", "element not supported in a picture; it is left out");
                break;
        }
    }

    private static void Shape(List<DisplayItem> items, ImmutableArray<PathStep> outline, ComputedStyle style, Matrix map, double opacity, bool filled)
    {
        if (outline.Length == 0) return;
        Colour? fill = filled && style.Fill is { } f ? BoxPainter.Faded(f, opacity * style.FillOpacity) : null;
        var scale = map.Scale;
        var pen = style.Stroke is { } stroke && style.StrokeWidth > 0
            ? new Pen(BoxPainter.Faded(stroke, opacity * style.StrokeOpacity), style.StrokeWidth * scale, [.. style.Dashes.Select(d => d * scale)], style.DashOffset * scale, style.LineCap, style.LineJoin) : null;
        if (fill is not { IsVisible: true } && pen is not { Colour.IsVisible: true }) return;
        items.Add(new DisplayItem.Shape([.. outline.Select(s => s.Through(map))], fill is { IsVisible: true } ? fill : null, style.EvenOdd, pen));
    }

    private ImmutableArray<PathStep> Outline(IElement element)
    {
        double N(string name) => Number(element, name) ?? 0;
        switch (element.LocalName)
        {
            case "path":
                var (steps, sound) = PathReader.Read(element.GetAttribute("d") ?? "");
                if (!sound) report.Add(element, "d", "path data not sound; drawn up to the error");
                return steps;
            case "line":
                return [PathStep.Move(N("x1"), N("y1")), PathStep.Line(N("x2"), N("y2"))];
            case "rect":
                var (width, height) = (N("width"), N("height"));
                var (rx, ry) = (Number(element, "rx") ?? Number(element, "ry") ?? 0, Number(element, "ry") ?? Number(element, "rx") ?? 0);
                var corner = (Math.Min(rx, width / 2), Math.Min(ry, height / 2));
                return width > 0 && height > 0 ? PathStep.Rounded(N("x"), N("y"), width, height, [corner, corner, corner, corner]) : [];
            case "circle":
                return N("r") > 0 ? PathStep.Ellipse(N("cx"), N("cy"), N("r"), N("r")) : [];
            case "ellipse":
                return N("rx") > 0 && N("ry") > 0 ? PathStep.Ellipse(N("cx"), N("cy"), N("rx"), N("ry")) : [];
            default:
                var numbers = new SvgNumbers(element.GetAttribute("points") ?? "");
                var points = ImmutableArray.CreateBuilder<PathStep>();
                while (!numbers.AtEnd && numbers.Number() is { } x && numbers.Number() is { } y) points.Add(points.Count == 0 ? PathStep.Move(x, y) : PathStep.Line(x, y));
                if (!numbers.AtEnd) report.Add(element, "points", "list of points not sound; drawn up to the error");
                if (element.LocalName == "polygon" && points.Count > 0) points.Add(PathStep.Close());
                return points.ToImmutable();
        }
    }

    private double? Number(IElement element, string name)
    {
        if (element.GetAttribute(name) is not { } text) return null;
        if (Length.TryNumber(text, out var value)) return value;
        if (Length.Parse(text, 16, 16) is { IsAuto: false, Percent: 0 } length) return length.Px;
        report.Add(element, name, "value not supported: " + text);
        return null;
    }
}
