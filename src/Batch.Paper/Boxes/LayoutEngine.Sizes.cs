using Batch.Paper.Lines;
using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Widths that follow from the content, pictures, and boxes that stand in a line.</summary>
internal sealed partial class LayoutEngine
{
    /// <summary>Narrowest and widest border box a box may want (CSS Sizing 3), px.</summary>
    public (double Min, double Max) Intrinsic(Box box)
    {
        if (box.Intrinsic is { } known) return known;
        var edges = Edges(box, 0);
        var extra = edges.Left + edges.Right;
        var (least, most) = Content(box);
        var style = box.Style;
        if (style.Width is { IsAuto: false, Percent: 0 } width && box.Kind != BoxKind.Cell)
        {
            var fixedWidth = width.Px + (style.BorderBox ? -extra : 0);
            (least, most) = box.Kind == BoxKind.Table ? (least, Math.Max(least, fixedWidth)) : (fixedWidth, fixedWidth);
        }

        least = Math.Max(Limited(least + extra, style.MinWidth, style.MaxWidth, style, extra), extra);
        most = Math.Max(Limited(most + extra, style.MinWidth, style.MaxWidth, style, extra), least);
        box.Intrinsic = (least, most);
        return (least, most);
    }

    /// <summary>Lays out a box that stands in a line: as wide as its content wants, at most the column.</summary>
    public Fragment Atom(Box box, double containing)
    {
        if (box.IsReplaced) return Replaced(box, containing, null, null);
        return box.Kind == BoxKind.Table ? Table(box, containing, null) : Block(box, containing, ShrinkToFit(box, containing)).Fragment;
    }

    /// <summary>Distance from a fragment's top to the baseline of its last line (first line with <paramref name="first"/>); null when it has none.</summary>
    public static double? Baseline(Fragment fragment, bool first = false)
    {
        if (fragment.Line is { } line) return line.Baseline;
        if (fragment.Box.Style.Hides) return null;
        var children = first ? fragment.Children : Enumerable.Reverse(fragment.Children);
        foreach (var child in children)
        {
            if (Baseline(child, first || fragment.Role == FragmentRole.Parallel) is { } inner) return child.Y + inner;
        }

        return null;
    }

    private double ShrinkToFit(Box box, double containing)
    {
        var edges = Edges(box, containing);
        var style = box.Style;
        var extra = edges.Left + edges.Right;
        var (least, most) = Intrinsic(box);
        var margins = Margins(style, containing);
        var width = style.Width.OrNull(containing) is { } given ? given + (style.BorderBox ? 0 : extra) : Math.Min(Math.Max(least, containing - margins.Left - margins.Right), most);
        return Math.Max(Limited(width, style.MinWidth, style.MaxWidth, style, extra, containing), extra);
    }

    private (double Min, double Max) Content(Box box)
    {
        if (box.IsReplaced) return (NaturalSize(box, 0).Width, NaturalSize(box, 0).Width);
        if (box.Kind == BoxKind.Table) return TableIntrinsic(box);
        if (box.HoldsLines && box.Kind is not (BoxKind.Flex or BoxKind.Grid)) return new LineLayout(this, fonts, report).Intrinsic(box);
        double least = 0, most = 0;
        var side = box.Kind == BoxKind.Flex && box.Style.FlexDirection == FlexDirection.Row;
        var gaps = Math.Max(0, box.Children.Count - 1) * box.Style.ColumnGap.Px;
        if (box.Kind == BoxKind.Grid) return GridIntrinsic(box);
        foreach (var child in box.Children)
        {
            var (childLeast, childMost) = Intrinsic(child);
            var margins = Margins(child.Style, 0);
            var around = margins.Left + margins.Right;
            if (side && child.Style.FlexBasis is { IsAuto: false, Percent: 0 } basis) childMost = Math.Max(childLeast, basis.Px);
            least = side && box.Style.FlexWrap == FlexWrap.Nowrap ? least + childLeast + around : Math.Max(least, childLeast + around);
            most = side ? most + childMost + around : Math.Max(most, childMost + around);
        }

        return side ? (least + (box.Style.FlexWrap == FlexWrap.Nowrap ? gaps : 0), most + gaps) : (least, most);
    }

    private static Fragment Replaced(Box box, double containing, double? borderWidth, double? borderHeight)
    {
        var edges = Edges(box, containing);
        var (width, height) = NaturalSize(box, containing);
        var fragment = new Fragment(box, FragmentRole.Whole) { Width = borderWidth ?? width + edges.Left + edges.Right };
        if (borderWidth is { } given && box.Style.Height.IsAuto && width > 0) height *= (given - edges.Left - edges.Right) / width;
        fragment.Height = borderHeight ?? height + edges.Top + edges.Bottom;
        return fragment;
    }

    /// <summary>Content size of a picture from width, height, limits and its own shape (CSS 2.2, sections 10.3.2 and 10.6.2).</summary>
    private static (double Width, double Height) NaturalSize(Box box, double containing)
    {
        var style = box.Style;
        var (naturalWidth, naturalHeight) = box.Natural ?? (box.Text.Length > 0 ? box.Text.Length * 8 : 0, box.Text.Length > 0 ? 20 : 0);
        var ratio = naturalWidth > 0 ? naturalHeight / naturalWidth : 0;
        var edges = Edges(box, containing);
        var (extraX, extraY) = style.BorderBox ? (edges.Left + edges.Right, edges.Top + edges.Bottom) : (0, 0);
        var givenWidth = style.Width.OrNull(containing) is { } w ? w - extraX : Attribute(box, "width");
        double? givenHeight = style.Height is { IsAuto: false, Percent: 0 } h ? h.Px - extraY : style.Height.IsAuto && style.Width.IsAuto ? Attribute(box, "height") : null;
        var width = givenWidth ?? (givenHeight is { } height && ratio > 0 ? height / ratio : naturalWidth);
        if (style.MaxWidth.OrNull(containing) is { } most && (containing > 0 || style.MaxWidth.Percent == 0) && width > most - extraX) width = Math.Max(0, most - extraX);
        width = Math.Max(width, (style.MinWidth.OrNull(containing) ?? 0) - extraX);
        var result = givenHeight is { } fixedHeight && (givenWidth is not null || ratio == 0) ? fixedHeight : width * ratio;
        if (style.MaxHeight is { IsAuto: false, Percent: 0 } limit && result > limit.Px)
        {
            if (givenWidth is null && result > 0) width *= limit.Px / result;
            result = limit.Px;
        }

        return (width, Math.Max(result, style.MinHeight.Px));
    }

    private static double? Attribute(Box box, string name) => box.Element?.GetAttribute(name) is { } text && Length.TryNumber(text.Replace("px", "", StringComparison.Ordinal), out var value) && value >= 0 ? value : null;
}
