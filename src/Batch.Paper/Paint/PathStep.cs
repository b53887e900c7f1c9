using System.Runtime.InteropServices;

namespace Batch.Paper.Paint;

/// <summary>One step of an outline. A curve is a cubic Bezier with two control points and an end.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct PathStep(PathVerb Verb, double X1, double Y1, double X2, double Y2, double X, double Y)
{
    /// <summary>Control length of a quarter circle drawn as one cubic: 4/3 (sqrt 2 - 1).</summary>
    private const double Quarter = 0.5522847498307936;

    public static PathStep Move(double x, double y) => new(PathVerb.Move, 0, 0, 0, 0, x, y);

    public static PathStep Line(double x, double y) => new(PathVerb.Line, 0, 0, 0, 0, x, y);

    public static PathStep Curve(double x1, double y1, double x2, double y2, double x, double y) => new(PathVerb.Curve, x1, y1, x2, y2, x, y);

    public static PathStep Close() => new(PathVerb.Close, 0, 0, 0, 0, 0, 0);

    public PathStep Through(Matrix map)
    {
        var (x1, y1) = map.Map(X1, Y1);
        var (x2, y2) = map.Map(X2, Y2);
        var (x, y) = map.Map(X, Y);
        return Verb switch { PathVerb.Close => this, PathVerb.Curve => Curve(x1, y1, x2, y2, x, y), _ => new PathStep(Verb, 0, 0, 0, 0, x, y) };
    }

    public static ImmutableArray<PathStep> Rectangle(double x, double y, double width, double height) =>
        [Move(x, y), Line(x + width, y), Line(x + width, y + height), Line(x, y + height), Close()];

    public static ImmutableArray<PathStep> Polygon(params (double X, double Y)[] points) => [Move(points[0].X, points[0].Y), .. points.Skip(1).Select(p => Line(p.X, p.Y)), Close()];

    public static ImmutableArray<PathStep> Ellipse(double cx, double cy, double rx, double ry) => Rounded(cx - rx, cy - ry, 2 * rx, 2 * ry, [(rx, ry), (rx, ry), (rx, ry), (rx, ry)]);

    /// <summary>A rectangle with elliptical corners, clockwise from the top left.</summary>
    public static ImmutableArray<PathStep> Rounded(double x, double y, double w, double h, ImmutableArray<(double X, double Y)> r)
    {
        if (r.All(c => c.X <= 0 || c.Y <= 0)) return Rectangle(x, y, w, h);
        const double k = 1 - Quarter;
        return
        [
            Move(x + r[0].X, y), Line(x + w - r[1].X, y), Curve(x + w - r[1].X * k, y, x + w, y + r[1].Y * k, x + w, y + r[1].Y),
            Line(x + w, y + h - r[2].Y), Curve(x + w, y + h - r[2].Y * k, x + w - r[2].X * k, y + h, x + w - r[2].X, y + h),
            Line(x + r[3].X, y + h), Curve(x + r[3].X * k, y + h, x, y + h - r[3].Y * k, x, y + h - r[3].Y),
            Line(x, y + r[0].Y), Curve(x, y + r[0].Y * k, x + r[0].X * k, y, x + r[0].X, y), Close(),
        ];
    }
}
