using AngleSharp.Dom;
using Batch.Paper.Paint;
using Batch.Paper.Style;

namespace Batch.Paper.Svg;

/// <summary>Natural size of a picture and the map of its user units to the page (SVG 2, section 8).</summary>
internal static class SvgViewport
{
    /// <summary>Size from width and height, else from the view box; null when only the default of 300 by 150 is left.</summary>
    public static (double Width, double Height)? Natural(IElement svg)
    {
        var box = ViewBox(svg);
        var (width, height) = (Size(svg, "width"), Size(svg, "height"));
        if (width is { } w && height is { } h) return (w, h);
        if (box is not { } view) return (width ?? 300, height ?? 150);
        if (width is { } onlyWidth) return (onlyWidth, onlyWidth * view.Height / view.Width);
        return height is { } onlyHeight ? (onlyHeight * view.Width / view.Height, onlyHeight) : (view.Width, view.Height);
    }

    /// <summary>Map from user units to the page for a picture placed in a rectangle; the view box is centred and keeps its shape.</summary>
    public static Matrix Map(IElement svg, Rect place)
    {
        if (ViewBox(svg) is not { } view) return Matrix.Shift(place.X, place.Y);
        var (sx, sy) = (place.Width / view.Width, place.Height / view.Height);
        if (svg.GetAttribute("preserveAspectRatio") != "none") sx = sy = Math.Min(sx, sy);
        return new Matrix(sx, 0, 0, sy, place.X + (place.Width - view.Width * sx) / 2 - view.X * sx, place.Y + (place.Height - view.Height * sy) / 2 - view.Y * sy);
    }

    private static Rect? ViewBox(IElement svg)
    {
        var parts = (svg.GetAttribute("viewBox") ?? "").Split([' ', ',', '\n', '\t'], StringSplitOptions.RemoveEmptyEntries);
        var numbers = parts.Select(p => Length.TryNumber(p, out var n) ? n : double.NaN).ToArray();
        return numbers.Length == 4 && Array.TrueForAll(numbers, double.IsFinite) && numbers[2] > 0 && numbers[3] > 0 ? new Rect(numbers[0], numbers[1], numbers[2], numbers[3]) : null;
    }

    private static double? Size(IElement svg, string name) => svg.GetAttribute(name) is { } text && !text.EndsWith('%')
        ? Length.TryNumber(text, out var number) ? number : Length.Parse(text, 16, 16) is { IsAuto: false } length ? length.Px : null : null;
}
