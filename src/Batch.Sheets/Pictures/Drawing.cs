using System.Globalization;
using System.Text;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Pictures;

/// <summary>An SVG picture under construction. Only presentation attributes, so that browser and paper draw the same.</summary>
internal sealed class Drawing
{
    private readonly StringBuilder _shapes = new();

    public void Line(double x1, double y1, double x2, double y2, string stroke, double width, string dash = "") =>
        _shapes.Append(CultureInfo.InvariantCulture,
            $"<line x1=\"{N(x1)}\" y1=\"{N(y1)}\" x2=\"{N(x2)}\" y2=\"{N(y2)}\" stroke=\"{stroke}\" stroke-width=\"{N(width)}\"{Dash(dash)}/>");

    public void Rectangle(double x, double y, double width, double height, string fill, string stroke = "none", double strokeWidth = 0) =>
        _shapes.Append(CultureInfo.InvariantCulture,
            $"<rect x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(width)}\" height=\"{N(height)}\" fill=\"{fill}\"{Stroke(stroke, strokeWidth)}/>");

    /// <summary>Slanting lines across a field, so that it differs from its neighbours without colour.</summary>
    public void Hatch(double x, double y, double width, double height, double step, string stroke)
    {
        for (var at = step / 2; at < width + height; at += step)
        {
            var (over, under) = (Math.Max(0, at - width), Math.Min(at, height));
            Line(x + at - over, y + over, x + at - under, y + under, stroke, 0.8);
        }
    }

    public void Circle(double x, double y, double radius, string fill, string stroke = "none", double strokeWidth = 0) =>
        _shapes.Append(CultureInfo.InvariantCulture, $"<circle cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{N(radius)}\" fill=\"{fill}\"{Stroke(stroke, strokeWidth)}/>");

    public void Polygon(IEnumerable<(double X, double Y)> points, string fill, string stroke, double width, string dash = "") =>
        _shapes.Append(CultureInfo.InvariantCulture,
            $"<polygon points=\"{Points(points)}\" fill=\"{fill}\"{Stroke(stroke, width)} stroke-linejoin=\"round\"{Dash(dash)}/>");

    public void Polyline(IEnumerable<(double X, double Y)> points, string stroke, double width, string dash = "") =>
        _shapes.Append(CultureInfo.InvariantCulture,
            $"<polyline points=\"{Points(points)}\" fill=\"none\" stroke=\"{stroke}\" stroke-width=\"{N(width)}\" stroke-linejoin=\"round\" stroke-linecap=\"round\"{Dash(dash)}/>");

    public void Text(double x, double y, string text, TextAnchor anchor = TextAnchor.Start, bool isBold = false, string fill = Ink.Black,
        double size = Ink.TextSize) =>
        _shapes.Append(CultureInfo.InvariantCulture,
            $"<text x=\"{N(x)}\" y=\"{N(y)}\"{Anchor(anchor)} font-size=\"{N(size)}px\"{(isBold ? " font-weight=\"600\"" : "")} fill=\"{fill}\">{Markup.Escaped(text)}</text>");

    /// <summary>The picture.</summary>
    /// <param name="width">Width of its field.</param>
    /// <param name="height">Height of its field.</param>
    /// <param name="title">What it shows, for those who cannot see it.</param>
    /// <param name="cssClass">Class by which a style sheet can size it.</param>
    public Markup Picture(double width, double height, string title, string cssClass) => new(string.Create(CultureInfo.InvariantCulture,
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"{cssClass}\" role=\"img\" viewBox=\"0 0 {N(width)} {N(height)}\" width=\"{N(width)}\" height=\"{N(height)}\" font-family=\"IBM Plex Sans, sans-serif\"><title>{Markup.Escaped(title)}</title>{_shapes}</svg>"));

    /// <summary>About how wide a text is: most letters and all figures of the type family are no wider than 0.6 of its size.</summary>
    public static double WidthOf(string text, double size = Ink.TextSize) => text.Length * size * 0.6;

    private static string Points(IEnumerable<(double X, double Y)> points) => string.Join(' ', points.Select(point => N(point.X) + "," + N(point.Y)));

    private static string Stroke(string stroke, double width) => stroke == "none" ? "" : $" stroke=\"{stroke}\" stroke-width=\"{N(width)}\"";

    private static string Dash(string dash) => dash.Length == 0 ? "" : $" stroke-dasharray=\"{dash}\"";

    private static string Anchor(TextAnchor anchor) => anchor switch
    {
        TextAnchor.Start => "",
        TextAnchor.Middle => " text-anchor=\"middle\"",
        TextAnchor.End => " text-anchor=\"end\"",
    };

    private static string N(double number) => (Math.Round(number, 1, MidpointRounding.AwayFromZero) + 0.0).ToString("0.#", CultureInfo.InvariantCulture);
}
