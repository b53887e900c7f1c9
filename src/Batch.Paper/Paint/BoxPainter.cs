using Batch.Paper.Boxes;
using Batch.Paper.Style;

namespace Batch.Paper.Paint;

/// <summary>Backgrounds and borders of boxes.</summary>
internal static class BoxPainter
{
    /// <summary>Paints a border box. An open end is one where the box goes on, on another page or line: no border, no rounding there.</summary>
    public static void Decorate(List<DisplayItem> items, ComputedStyle style, Rect box, double opacity, Sides<bool> open)
    {
        var radii = Radii(style, box, open);
        if (style.Background.IsVisible && box is { Width: > 0, Height: > 0 })
            items.Add(new DisplayItem.Shape(PathStep.Rounded(box.X, box.Y, box.Width, box.Height, radii), Faded(style.Background, opacity), EvenOdd: false, null));
        var border = style.Border;
        if (border == default) return;
        var colours = new Sides<Colour>(Of(0), Of(1), Of(2), Of(3));
        var shown = new Sides<double>(open.Top ? 0 : border.Top, open.Right ? 0 : border.Right, open.Bottom ? 0 : border.Bottom, open.Left ? 0 : border.Left);
        if (Enumerable.Range(0, 4).All(i => shown[i] == 0 || (style.BorderStyles[i] == BorderStyle.Solid && colours[i] == colours[FirstShown(shown)])) && shown != default)
        {
            Ring(items, box, shown, radii, colours[FirstShown(shown)]);
            return;
        }

        for (var side = 0; side < 4; side++)
        {
            if (shown[side] > 0) Side(items, box, shown, side, style.BorderStyles[side], colours[side]);
        }

        Colour Of(int side) => Faded(style.BorderColor[side] ?? style.Color, opacity);
    }

    /// <summary>The winning borders of a cell, centred on the grid line. Cells to the right and below draw the sides they share, but for the last row on a page.</summary>
    public static void Collapsed(List<DisplayItem> items, Sides<CollapsedEdge> edges, Rect cell, bool last, double opacity)
    {
        Line(edges.Top, cell.X, cell.Y, cell.X + cell.Width, cell.Y);
        Line(edges.Left, cell.X, cell.Y, cell.X, cell.Y + cell.Height);
        if (!edges.Right.Shared) Line(edges.Right, cell.X + cell.Width, cell.Y, cell.X + cell.Width, cell.Y + cell.Height);
        if (last || !edges.Bottom.Shared) Line(edges.Bottom, cell.X, cell.Y + cell.Height, cell.X + cell.Width, cell.Y + cell.Height);

        void Line(CollapsedEdge edge, double x1, double y1, double x2, double y2)
        {
            if (edge.Width <= 0 || !edge.Colour.IsVisible) return;
            var half = edge.Width / 2;
            var across = x1 == x2;
            if (edge.Style == BorderStyle.Solid)
                items.Add(new DisplayItem.Shape(PathStep.Rectangle(x1 - half, y1 - half, across ? edge.Width : x2 - x1 + edge.Width, across ? y2 - y1 + edge.Width : edge.Width), Faded(edge.Colour, opacity), EvenOdd: false, null));
            else items.Add(Dashed(x1, y1, x2, y2, edge.Width, edge.Style, Faded(edge.Colour, opacity)));
        }
    }

    public static Colour Faded(Colour colour, double opacity) => opacity >= 1 ? colour : colour with { Alpha = colour.Alpha * opacity };

    private static int FirstShown(Sides<double> shown) => Enumerable.Range(0, 4).FirstOrDefault(i => shown[i] > 0);

    private static void Ring(List<DisplayItem> items, Rect box, Sides<double> border, ImmutableArray<(double X, double Y)> radii, Colour colour)
    {
        if (!colour.IsVisible) return;
        var inner = new Rect(box.X + border.Left, box.Y + border.Top, Math.Max(0, box.Width - border.Left - border.Right), Math.Max(0, box.Height - border.Top - border.Bottom));
        ImmutableArray<(double, double)> innerRadii =
        [
            (Math.Max(0, radii[0].X - border.Left), Math.Max(0, radii[0].Y - border.Top)), (Math.Max(0, radii[1].X - border.Right), Math.Max(0, radii[1].Y - border.Top)),
            (Math.Max(0, radii[2].X - border.Right), Math.Max(0, radii[2].Y - border.Bottom)), (Math.Max(0, radii[3].X - border.Left), Math.Max(0, radii[3].Y - border.Bottom)),
        ];
        var only = FirstShown(border);
        if (Enumerable.Range(0, 4).Count(i => border[i] > 0) == 1 && radii.All(r => r.X <= 0))
        {
            var (x, y) = (only == 1 ? box.X + box.Width - border.Right : box.X, only == 2 ? box.Y + box.Height - border.Bottom : box.Y);
            items.Add(new DisplayItem.Shape(PathStep.Rectangle(x, y, only % 2 == 1 ? border[only] : box.Width, only % 2 == 0 ? border[only] : box.Height), colour, EvenOdd: false, null));
            return;
        }

        ImmutableArray<PathStep> ring = [.. PathStep.Rounded(box.X, box.Y, box.Width, box.Height, radii), .. PathStep.Rounded(inner.X, inner.Y, inner.Width, inner.Height, innerRadii)];
        items.Add(new DisplayItem.Shape(ring, colour, EvenOdd: true, null));
    }

    private static void Side(List<DisplayItem> items, Rect box, Sides<double> b, int side, BorderStyle style, Colour colour)
    {
        if (!colour.IsVisible) return;
        var (l, t, r, u) = (box.X, box.Y, box.X + box.Width, box.Y + box.Height);
        if (style == BorderStyle.Solid)
        {
            var polygon = side switch
            {
                0 => PathStep.Polygon((l, t), (r, t), (r - b.Right, t + b.Top), (l + b.Left, t + b.Top)),
                1 => PathStep.Polygon((r, t), (r, u), (r - b.Right, u - b.Bottom), (r - b.Right, t + b.Top)),
                2 => PathStep.Polygon((r, u), (l, u), (l + b.Left, u - b.Bottom), (r - b.Right, u - b.Bottom)),
                _ => PathStep.Polygon((l, u), (l, t), (l + b.Left, t + b.Top), (l + b.Left, u - b.Bottom)),
            };
            items.Add(new DisplayItem.Shape(polygon, colour, EvenOdd: false, null));
            return;
        }

        var h = b[side] / 2;
        items.Add(side switch
        {
            0 => Dashed(l, t + h, r, t + h, b.Top, style, colour),
            1 => Dashed(r - h, t, r - h, u, b.Right, style, colour),
            2 => Dashed(l, u - h, r, u - h, b.Bottom, style, colour),
            _ => Dashed(l + h, t, l + h, u, b.Left, style, colour),
        });
    }

    private static DisplayItem.Shape Dashed(double x1, double y1, double x2, double y2, double width, BorderStyle style, Colour colour) =>
        new([PathStep.Move(x1, y1), PathStep.Line(x2, y2)], null, EvenOdd: false,
            style == BorderStyle.Dotted ? new Pen(colour, width, [0, 2 * width], -width / 2, 1, 0) : new Pen(colour, width, [width <= 2 ? 3 * width : 2 * width, width <= 2 ? 2 * width : width], 0, 0, 0));

    /// <summary>Radii that overlap are scaled down together (CSS Backgrounds 3, section 5.5).</summary>
    private static ImmutableArray<(double X, double Y)> Radii(ComputedStyle style, Rect box, Sides<bool> open)
    {
        if (style.Radius == default) return [(0, 0), (0, 0), (0, 0), (0, 0)];
        var r = Enumerable.Range(0, 4).Select(i => (X: style.Radius[i].Against(box.Width), Y: style.Radius[i].Against(box.Height))).ToArray();
        if (open.Top || open.Left) r[0] = default;
        if (open.Top || open.Right) r[1] = default;
        if (open.Bottom || open.Right) r[2] = default;
        if (open.Bottom || open.Left) r[3] = default;
        double Part(double length, double sum) => sum > length && sum > 0 ? length / sum : 1;
        var f = Math.Min(Math.Min(Part(box.Width, r[0].X + r[1].X), Part(box.Width, r[2].X + r[3].X)), Math.Min(Part(box.Height, r[0].Y + r[3].Y), Part(box.Height, r[1].Y + r[2].Y)));
        return [.. r.Select(c => (c.X * f, c.Y * f))];
    }
}
