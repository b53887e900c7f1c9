using Batch.Paper.Boxes;
using Batch.Paper.Fonts;
using Batch.Paper.Html;
using Batch.Paper.Lines;
using Batch.Paper.Pages;
using Batch.Paper.Style;
using Batch.Paper.Svg;

namespace Batch.Paper.Paint;

/// <summary>Fragments of one page to display items: the stretch of the column is shifted to the page, boxes that go on are cut.</summary>
internal sealed class PagePainter(PageSetup setup, FontLibrary fonts, SvgPainter svg, Report report)
{
    private const double Epsilon = LayoutEngine.Epsilon;
    private static readonly (double From, double To, double Next) Everything = (double.NegativeInfinity, double.PositiveInfinity, double.PositiveInfinity);
    private List<DisplayItem> _items = [];
    private (double From, double To, double Next) _stretch;
    private bool _repeating;
    private double _headHeight;

    /// <summary>Running titles set so far, by name.</summary>
    public Dictionary<string, string> Titles { get; } = [];

    public List<DisplayItem> Paint(Page page, Fragment root)
    {
        _items = [];
        var origin = setup.Origin(page.Index);
        if (Canvas(root) is { IsVisible: true } canvas) _items.Add(new DisplayItem.Shape(PathStep.Rectangle(0, 0, setup.Width, setup.Height), canvas, EvenOdd: false, null));
        (_stretch, _repeating, _headHeight) = (Everything, true, 0);
        var y = origin.Y;
        foreach (var head in page.Heads)
        {
            Fragment(head, origin.X + Left(root, head), y - head.Y, 0 - head.Y, 1);
            y += head.Height;
        }

        (_stretch, _repeating, _headHeight) = ((page.Index == 0 ? double.NegativeInfinity : page.Start, page.End, page.Next), false, page.HeadHeight);
        Fragment(root, origin.X, y - page.Start, 0, 1);
        return _items;
    }

    /// <summary>Fragments placed on the page itself, such as margin boxes.</summary>
    public void Add(List<DisplayItem> items, IEnumerable<Fragment> placed)
    {
        (_items, _stretch, _repeating, _headHeight) = (items, Everything, true, 0);
        foreach (var fragment in placed) Fragment(fragment, 0, 0, 0, 1);
    }

    /// <param name="fragment">What to paint.</param>
    /// <param name="left">Left of the parent on the page.</param>
    /// <param name="shift">Add to a place in the column to get the place on the page.</param>
    /// <param name="top">Top of the parent in the column.</param>
    /// <param name="opacity">Opacity of the ancestors.</param>
    private void Fragment(Fragment fragment, double left, double shift, double top, double opacity)
    {
        var (x, y) = (left + fragment.X, top + fragment.Y);
        var (style, bottom) = (fragment.Box.Style, y + fragment.Height);
        if (fragment.Role is FragmentRole.Line or FragmentRole.Whole)
        {
            if (y < _stretch.From - Epsilon || y >= _stretch.Next - Epsilon) return;
        }
        else if (y + fragment.Reach.Bottom < _stretch.From - Epsilon || y + fragment.Reach.Top >= _stretch.Next - Epsilon) return;

        if (fragment.Paints) opacity *= style.Opacity;
        var here = bottom >= _stretch.From - Epsilon && y < _stretch.To - Epsilon;
        if (fragment.Paints && style.Visible && here) Decorations(fragment, x, y, shift, opacity);
        if (fragment.Paints && fragment.Box.Marker is { } marker) Marker(fragment, marker, x, y, shift);
        if (fragment.Paints && y >= _stretch.From - Epsilon && y < _stretch.Next - Epsilon) Marks(fragment, y, shift);
        if (fragment.Line is { } line && opacity > 0) Line(line, fragment, x, y + shift, opacity);
        else if (fragment.Role == FragmentRole.Whole && style.Visible) Picture(fragment, x, y + shift, opacity);
        var clips = fragment.Paints && style.Hides && fragment.Role == FragmentRole.Flow && !style.Height.IsAuto && here;
        if (clips) _items.Add(new DisplayItem.Clip(x, y + shift, fragment.Width, fragment.Height));
        var stretch = _stretch;
        if (fragment.Role == FragmentRole.Line) _stretch = Everything;
        foreach (var child in fragment.Children) Fragment(child, x, shift, y, opacity);
        _stretch = stretch;
        if (clips) _items.Add(new DisplayItem.EndClip());
    }

    private void Decorations(Fragment fragment, double x, double y, double shift, double opacity)
    {
        if (fragment.Box.Element?.LocalName is "html" or "body" && !fragment.Box.Anonymous && fragment.Box.Style.Border == default) return;
        var bottom = y + fragment.Height;
        var (openTop, openBottom) = (y < _stretch.From - Epsilon, bottom > _stretch.To + Epsilon);
        var from = openTop ? _stretch.From - (fragment.RepeatedHead is not null ? _headHeight : 0) : y;
        var box = new Rect(x, from + shift, fragment.Width, Math.Max(0, (openBottom ? _stretch.To : bottom) - from)).Snapped();
        if (box.Height <= 0 && (openTop || openBottom)) return;
        if (fragment.Box.CellBorder is null && !(fragment.Box.Kind is BoxKind.Table && fragment.Box.Style.Collapse) && fragment.Box.Kind is not (BoxKind.Row or BoxKind.RowGroup))
            BoxPainter.Decorate(_items, fragment.Box.Style, box, opacity, new Sides<bool>(openTop, Right: false, openBottom, Left: false));
        else if (fragment.Box.Style.Background.IsVisible)
            _items.Add(new DisplayItem.Shape(PathStep.Rectangle(box.X, box.Y, box.Width, box.Height), BoxPainter.Faded(fragment.Box.Style.Background, opacity), EvenOdd: false, null));
        if (fragment.CollapsedEdges is { } edges) BoxPainter.Collapsed(_items, edges, box, last: _repeating || bottom > _stretch.To - 1, opacity);
    }

    private void Marks(Fragment fragment, double y, double shift)
    {
        if (_repeating || fragment.Box.Anonymous || fragment.Box.Element is not { } element) return;
        if (element.Id is { Length: > 0 } id) _items.Add(new DisplayItem.Anchor(id, y + shift));
        if (element.LocalName is not ("h1" or "h2" or "h3") && fragment.Box.Style.RunningTitle is null) return;
        var title = System.Text.RegularExpressions.Regex.Replace(element.TextContent, @"\s+", " ", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(20)).Trim();
        if (element.LocalName is "h1" or "h2" or "h3" && title.Length > 0) _items.Add(new DisplayItem.Bookmark(element.LocalName[1] - '0', title, y + shift));
        if (fragment.Box.Style.RunningTitle is { } name) Titles[name] = title;
    }

    /// <summary>The marker stands on the page of the item's first line.</summary>
    private void Marker(Fragment fragment, string marker, double x, double y, double shift)
    {
        var style = fragment.Box.Style;
        var column = y + (LayoutEngine.Baseline(fragment, first: true) ?? LineMetrics.Of(style, fonts).Ascent);
        if (column < _stretch.From || column >= _stretch.Next) return;
        var baseline = column + shift;
        var (ascent, edge) = (LineMetrics.Of(style, fonts).Ascent, x + LayoutEngine.Edges(fragment.Box, 0).Left);
        if (marker is "disc" or "circle" or "square")
        {
            var (offset, size) = (Math.Floor(ascent * 2 / 3), Math.Floor((Math.Floor(ascent * 2 / 3) + 1) / 2));
            var (left, top) = (edge - offset - 9, baseline - ascent + Math.Floor(3 * (ascent - offset) / 2));
            var steps = marker == "square" ? PathStep.Rectangle(left, top, size, size) : PathStep.Ellipse(left + size / 2, top + size / 2, size / 2, size / 2);
            _items.Add(marker == "circle" ? new DisplayItem.Shape(steps, null, EvenOdd: false, Pen.Plain(style.Color, 1)) : new DisplayItem.Shape(steps, style.Color, EvenOdd: false, null));
            return;
        }

        var glyphs = fonts.Shape(marker + " ", style.FontWeight, style.Italic);
        var width = glyphs.Sum(g => g.AdvanceEm) * style.FontSize;
        ReportOff(fragment.Box.Element, edge - glyphs[^1].AdvanceEm * style.FontSize, baseline);
        _items.AddRange(TextRuns.Of(glyphs.SkipLast(1), style.FontSize).Select(run => run.Painted(Matrix.Shift(edge - width + run.X, baseline), style.FontSize, style.Color)));
    }

    private void ReportOff(AngleSharp.Dom.IElement? element, double right, double baseline)
    {
        if (right > setup.Width + 0.5) report.Add(element, "width", "text runs off the right edge of the page");
        if (baseline > setup.Height) report.Add(element, "height", "text runs off the foot of the page, out of a box too low for it");
    }

    private void Line(LineContent line, Fragment fragment, double x, double y, double opacity)
    {
        foreach (var span in line.Spans)
        {
            if (!_repeating && span.Begins && span.Box.Element?.Id is { Length: > 0 } id) _items.Add(new DisplayItem.Anchor(id, y + span.Y));
            if (!span.Box.Style.Visible) continue;
            BoxPainter.Decorate(_items, span.Box.Style, new Rect(x + span.X, y + span.Y, span.Width, span.Height).Snapped(), opacity * span.Box.Style.Opacity,
                new Sides<bool>(Top: false, !span.Ends, Bottom: false, !span.Begins));
        }

        foreach (var piece in line.Pieces)
        {
            var style = piece.Box.Style;
            if (!style.Visible) continue;
            var colour = BoxPainter.Faded(style.Color, opacity);
            var (left, baseline) = (x + piece.X, Math.Round(y + piece.Baseline, MidpointRounding.AwayFromZero));
            if (piece.Text.Trim().Length > 0) ReportOff(piece.Box.Element, left + piece.Width, baseline);
            _items.Add(new DisplayItem.Text(Matrix.Shift(left, baseline), piece.Font, piece.Size, colour, piece.Glyphs, piece.Advances, piece.Texts));
            var thickness = Math.Max(1, Math.Round(piece.Size / 16));
            if (style.Underline) Bar(left, baseline + Math.Max(1, Math.Round(piece.Size / 12)), piece.Width, thickness, colour);
            if (style.LineThrough) Bar(left, baseline - piece.Size * 0.28, piece.Width, thickness, colour);
            if (piece.Box.Link is { } target) _items.Add(new DisplayItem.Link(left, y, piece.Width, fragment.Height, target));
        }
    }

    private void Bar(double x, double y, double width, double thickness, Colour colour) => _items.Add(new DisplayItem.Shape(PathStep.Rectangle(x, y, width, thickness), colour, EvenOdd: false, null));

    private void Picture(Fragment fragment, double x, double y, double opacity)
    {
        var edges = LayoutEngine.Edges(fragment.Box, fragment.Width);
        var box = new Rect(Math.Round(x + edges.Left), Math.Round(y + edges.Top), fragment.Width - edges.Left - edges.Right, fragment.Height - edges.Top - edges.Bottom);
        if (fragment.Box.Kind == BoxKind.Svg) svg.Paint(_items, fragment.Box, box, opacity);
        else if (fragment.Box.ImageBytes is { } bytes) _items.Add(new DisplayItem.Image(box.X, box.Y, box.Width, box.Height, bytes));
        else if (fragment.Box.Text.Length > 0)
        {
            var (style, size) = (fragment.Box.Style, Math.Min(12, fragment.Box.Style.FontSize));
            _items.AddRange(TextRuns.Of(fonts.Shape(fragment.Box.Text, style.FontWeight, style.Italic), size).Select(run => run.Painted(Matrix.Shift(box.X + run.X, box.Y + 12), size, style.Color)));
        }

        if (fragment.Box.Link is { } target) _items.Add(new DisplayItem.Link(x, y, fragment.Width, fragment.Height, target));
    }

    /// <summary>The background of the root, or of the body when the root has none, covers the page (CSS 2.2, section 14.2).</summary>
    private static Colour Canvas(Fragment root) => root.Box.Style.Background.IsVisible ? root.Box.Style.Background
        : root.Children.Find(c => c.Box.Element?.LocalName == "body")?.Box.Style.Background ?? Colour.Transparent;

    /// <summary>Left edge, from the root's, of the parent a fragment lies in.</summary>
    private static double Left(Fragment root, Fragment wanted)
    {
        foreach (var child in root.Children)
        {
            if (child == wanted) return root.X;
            if (Left(child, wanted) is var inner && !double.IsNaN(inner)) return root.X + inner;
        }

        return double.NaN;
    }
}
