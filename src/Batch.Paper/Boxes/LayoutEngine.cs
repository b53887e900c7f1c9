using Batch.Paper.Fonts;
using Batch.Paper.Html;
using Batch.Paper.Lines;
using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Box tree to fragment tree: normal flow of blocks (CSS 2.2, sections 9 and 10). Other kinds of layout are in the further parts.</summary>
internal sealed partial class LayoutEngine(FontLibrary fonts, Report report, CancellationToken cancellation)
{
    /// <summary>Smallest length that counts, px: everything nearer is the same place.</summary>
    public const double Epsilon = 0.01;

    private readonly Dictionary<(string Text, int Weight, bool Italic), List<ShapedGlyph>> _shaped = [];

    /// <summary>Glyphs of a text, shaped once a document: a text is met when widths are asked for and again when lines are made. Not to be changed.</summary>
    public List<ShapedGlyph> Shaped(string text, int weight, bool italic)
    {
        if (!_shaped.TryGetValue((text, weight, italic), out var glyphs)) _shaped[(text, weight, italic)] = glyphs = fonts.Shape(text, weight, italic);
        return glyphs;
    }

    /// <summary>Lays out a block in a column of the given width.</summary>
    /// <param name="box">The block.</param>
    /// <param name="containing">Width of the containing block, px.</param>
    /// <param name="borderWidth">Border box width when the caller decides it (items, cells, inline-blocks).</param>
    /// <param name="borderHeight">Border box height when the caller decides it.</param>
    public BlockResult Block(Box box, double containing, double? borderWidth = null, double? borderHeight = null)
    {
        cancellation.ThrowIfCancellationRequested();
        System.Runtime.CompilerServices.RuntimeHelpers.EnsureSufficientExecutionStack();
        var style = box.Style;
        var edges = Edges(box, containing);
        var independent = borderWidth is not null;
        var width = borderWidth ?? BorderWidth(box, containing, edges);
        if (box.IsReplaced) return Boxed(Replaced(box, containing, borderWidth, borderHeight), style, containing);
        if (box.Kind == BoxKind.Table) return Boxed(Table(box, containing, borderWidth), style, containing);
        var fragment = new Fragment(box, FragmentRole.Flow) { Width = width };
        var inner = Math.Max(0, width - edges.Left - edges.Right);
        MarginStrut top = default, bottom = default;
        double content;
        var fixedHeight = borderHeight ?? SpecifiedHeight(box, edges);
        var openTop = !independent && edges.Top == 0 && !style.Hides && box.Kind == BoxKind.Block;
        var openBottom = !independent && edges.Bottom == 0 && fixedHeight is null && !style.Hides && box.Kind == BoxKind.Block;
        var empty = false;
        if (box.Kind == BoxKind.Flex) content = Flex(box, fragment, inner, edges, fixedHeight);
        else if (box.Kind == BoxKind.Grid) content = Grid(box, fragment, inner, edges);
        else if (box.HoldsLines) content = Lines(box, fragment, inner, edges);
        else (content, top, bottom, empty) = Flow(box, fragment, inner, edges, openTop, openBottom);
        var height = fixedHeight ?? edges.Top + content + edges.Bottom;
        if (borderHeight is null) height = Limited(height, style.MinHeight, style.MaxHeight, style, edges.Top + edges.Bottom);
        fragment.Height = Math.Max(height, borderHeight is null ? edges.Top + edges.Bottom : 0);
        var own = Margins(style, containing);
        var through = !independent && empty && openTop && openBottom && fragment.Height < Epsilon && box.Kind == BoxKind.Block;
        return new BlockResult(fragment, top.With(own.Top), bottom.With(own.Bottom), through);
    }

    /// <summary>Children below each other with collapsing margins. Gives the height and the margins that stick out.</summary>
    private (double Height, MarginStrut Top, MarginStrut Bottom, bool Empty) Flow(Box box, Fragment fragment, double inner, Sides<double> edges, bool openTop, bool openBottom)
    {
        var (y, strut, top, placed) = (0.0, default(MarginStrut), default(MarginStrut), false);
        foreach (var child in box.Children)
        {
            var result = Block(child, inner);
            strut = strut.With(result.Top);
            var hold = !placed && openTop;
            var at = y + (hold ? 0 : strut.Value);
            result.Fragment.X = edges.Left + Offset(child.Style, inner, result.Fragment.Width, box.Style);
            result.Fragment.Y = edges.Top + at;
            fragment.Children.Add(result.Fragment);
            if (result.Through)
            {
                strut = strut.With(result.Bottom);
                continue;
            }

            if (hold) top = strut;
            placed = true;
            y = at + result.Fragment.Height;
            strut = result.Bottom;
        }

        if (!placed && openTop) return openBottom ? (0, strut, strut, true) : (strut.Value, default, default, false);
        return openBottom ? (y, top, strut, false) : (Math.Max(0, y + strut.Value), top, default, false);
    }

    private double Lines(Box box, Fragment fragment, double inner, Sides<double> edges)
    {
        var height = 0.0;
        foreach (var line in new LineLayout(this, fonts, report).Lines(box, inner))
        {
            line.X = edges.Left;
            line.Y = edges.Top + height;
            height += line.Height;
            fragment.Children.Add(line);
        }

        return height;
    }

    /// <summary>Border plus padding of each side, px.</summary>
    public static Sides<double> Edges(Box box, double containing)
    {
        var (border, padding) = (box.CellBorder ?? box.Style.Border, box.Style.Padding);
        if (box.Kind == BoxKind.Table && box.Style.Collapse) return default;
        return new Sides<double>(border.Top + padding.Top.Against(containing), border.Right + padding.Right.Against(containing),
            border.Bottom + padding.Bottom.Against(containing), border.Left + padding.Left.Against(containing));
    }

    /// <summary>Margins in px, `auto` as zero.</summary>
    public static Sides<double> Margins(ComputedStyle style, double containing) => style.Margin.Select(m => m.OrNull(containing) ?? 0);

    private static BlockResult Boxed(Fragment fragment, ComputedStyle style, double containing)
    {
        var margins = Margins(style, containing);
        return new BlockResult(fragment, default(MarginStrut).With(margins.Top), default(MarginStrut).With(margins.Bottom), Through: false);
    }

    private static double Offset(ComputedStyle style, double containing, double width, ComputedStyle parent)
    {
        var margins = Margins(style, containing);
        var free = containing - width - margins.Left - margins.Right;
        if (style.Margin.Left.IsAuto && style.Margin.Right.IsAuto) return Math.Max(0, free / 2);
        if (style.Margin.Left.IsAuto) return Math.Max(0, free);
        return parent.Display is Display.None ? 0 : margins.Left;
    }

    private static double BorderWidth(Box box, double containing, Sides<double> edges)
    {
        var style = box.Style;
        var margins = Margins(style, containing);
        var width = style.Width.OrNull(containing) is { } given ? given + (style.BorderBox ? 0 : edges.Left + edges.Right) : containing - margins.Left - margins.Right;
        return Math.Max(Limited(width, style.MinWidth, style.MaxWidth, style, edges.Left + edges.Right, containing), edges.Left + edges.Right);
    }

    private static double? SpecifiedHeight(Box box, Sides<double> edges) =>
        box.Kind != BoxKind.Cell && box.Style.Height is { IsAuto: false, Percent: 0 } height ? height.Px + (box.Style.BorderBox ? 0 : edges.Top + edges.Bottom) : null;

    /// <summary>Applies min and max to a border box size.</summary>
    public static double Limited(double size, Length least, Length most, ComputedStyle style, double edges, double basis = double.PositiveInfinity)
    {
        var extra = style.BorderBox ? 0 : edges;
        if (most.OrNull(basis) is { } upper) size = Math.Min(size, upper + extra);
        return least.OrNull(basis) is { } lower ? Math.Max(size, lower + (lower > 0 ? extra : 0)) : size;
    }
}
