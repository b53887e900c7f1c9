using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Flex containers (CSS Flexbox 1, section 9): rows with basis, grow, shrink, wrap, gaps and alignment; columns as a stack.</summary>
internal sealed partial class LayoutEngine
{
    private double Flex(Box box, Fragment fragment, double inner, Sides<double> edges, double? borderHeight)
    {
        var items = box.Children.OrderBy(c => c.Style.FlexOrder).ToList();
        if (box.Style.FlexDirection == FlexDirection.Column) return FlexColumn(box, items, fragment, inner, edges);
        var gap = box.Style.ColumnGap.Against(inner);
        var y = 0.0;
        var lines = FlexLines(box, items, inner, gap);
        foreach (var line in lines)
        {
            if (y > 0 || fragment.Children.Count > 0) y += box.Style.RowGap.Against(inner);
            double? fixedCross = lines.Count == 1 && borderHeight is { } height ? Math.Max(0, height - edges.Top - edges.Bottom) : null;
            var row = FlexRow(box, line, inner, gap, fixedCross);
            (row.X, row.Y) = (edges.Left, edges.Top + y);
            fragment.Children.Add(row);
            y += row.Height;
        }

        return y;
    }

    private List<List<(Box Item, double Basis)>> FlexLines(Box box, List<Box> items, double inner, double gap)
    {
        var lines = new List<List<(Box, double)>>();
        var used = 0.0;
        foreach (var item in items)
        {
            var basis = FlexBasis(item, inner);
            var outer = FlexLimited(item, basis, inner) + Around(item, inner);
            if (lines.Count == 0 || (box.Style.FlexWrap == FlexWrap.Wrap && used + gap + outer > inner + Epsilon))
            {
                lines.Add([]);
                used = -gap;
            }

            lines[^1].Add((item, basis));
            used += gap + outer;
        }

        return lines;
    }

    private static double Around(Box item, double inner) => Margins(item.Style, inner) is var m ? m.Left + m.Right : 0;

    private double FlexBasis(Box item, double inner)
    {
        var edges = Edges(item, inner);
        var extra = edges.Left + edges.Right;
        var size = item.Style.FlexBasis.IsAuto ? item.Style.Width : item.Style.FlexBasis;
        if (size.OrNull(inner) is { } given) return Math.Max(extra, given + (item.Style.BorderBox ? 0 : extra));
        return Intrinsic(item).Max;
    }

    private double FlexLimited(Box item, double size, double inner)
    {
        var edges = Edges(item, inner);
        var automatic = item.Style.MinWidth.Px == 0 && item.Style.MinWidth.Percent == 0 && !item.Style.Hides
            ? Math.Min(Intrinsic(item).Min, item.Style.Width.OrNull(inner) is { } w ? w + (item.Style.BorderBox ? 0 : edges.Left + edges.Right) : double.PositiveInfinity) : 0;
        return Math.Max(Limited(Math.Max(size, automatic), item.Style.MinWidth, item.Style.MaxWidth, item.Style, edges.Left + edges.Right, inner), edges.Left + edges.Right);
    }

    /// <summary>Flexible lengths: items that hit a limit are frozen, the rest share again.</summary>
    private double[] FlexSizes(List<(Box Item, double Basis)> line, double inner, double gap)
    {
        var sizes = line.Select(i => FlexLimited(i.Item, i.Basis, inner)).ToArray();
        var space = inner - gap * (line.Count - 1) - line.Sum(i => Around(i.Item, inner));
        var growing = sizes.Sum() < space;
        var open = new HashSet<int>(Enumerable.Range(0, line.Count).Where(i => (growing ? line[i].Item.Style.FlexGrow : line[i].Item.Style.FlexShrink) > 0));
        while (open.Count > 0)
        {
            var free = space - line.Select((item, i) => open.Contains(i) ? item.Basis : sizes[i]).Sum();
            double Weight(int i) => growing ? line[i].Item.Style.FlexGrow : line[i].Item.Style.FlexShrink * line[i].Basis;
            var total = open.Sum(Weight);
            if (total <= 0) break;
            if (growing && total < 1) free *= total;
            var wanted = open.ToDictionary(i => i, i => line[i].Basis + free * Weight(i) / total);
            var limited = wanted.ToDictionary(w => w.Key, w => FlexLimited(line[w.Key].Item, w.Value, inner));
            var violation = limited.Sum(l => l.Value - wanted[l.Key]);
            foreach (var (i, size) in limited) sizes[i] = size;
            var frozen = limited.Where(l => Math.Abs(l.Value - wanted[l.Key]) > Epsilon && (Math.Abs(violation) <= Epsilon || (violation > 0) == (l.Value > wanted[l.Key]))).Select(l => l.Key).ToList();
            if (frozen.Count == 0) break;
            open.ExceptWith(frozen);
        }

        return sizes;
    }

    private Fragment FlexRow(Box box, List<(Box Item, double Basis)> line, double inner, double gap, double? fixedCross)
    {
        var sizes = FlexSizes(line, inner, gap);
        var row = new Fragment(box, FragmentRole.Parallel) { Width = inner, Paints = false };
        var margins = line.Select(i => Margins(i.Item.Style, inner)).ToList();
        var free = inner - sizes.Sum() - gap * (line.Count - 1) - margins.Sum(m => m.Left + m.Right);
        var autos = line.Sum(i => (i.Item.Style.Margin.Left.IsAuto ? 1 : 0) + (i.Item.Style.Margin.Right.IsAuto ? 1 : 0));
        var share = autos > 0 && free > 0 ? free / autos : 0;
        var (x, between) = autos > 0 && free > 0 ? (0, 0) : Justified(box.Style.JustifyContent, free, line.Count);
        for (var i = 0; i < line.Count; i++)
        {
            var item = line[i].Item;
            var placed = Block(item, inner, sizes[i]).Fragment;
            placed.X = x + margins[i].Left + (item.Style.Margin.Left.IsAuto ? share : 0);
            x = placed.X + sizes[i] + margins[i].Right + (item.Style.Margin.Right.IsAuto ? share : 0) + gap + between;
            row.Children.Add(placed);
        }

        var baseline = row.Children.Select((c, i) => margins[i].Top + (Baseline(c, first: true) ?? c.Height)).DefaultIfEmpty().Max();
        row.Height = fixedCross ?? row.Children.Select((c, i) => margins[i].Top + margins[i].Bottom + c.Height
            + (CrossAlign(box, c.Box) == Align.Baseline ? baseline - margins[i].Top - (Baseline(c, first: true) ?? c.Height) : 0)).DefaultIfEmpty().Max();
        for (var i = 0; i < line.Count; i++) AlignCross(box, row, i, margins[i], inner, baseline);
        return row;
    }

    private void AlignCross(Box box, Fragment row, int index, Sides<double> margin, double inner, double baseline)
    {
        var child = row.Children[index];
        var space = row.Height - margin.Top - margin.Bottom;
        var align = CrossAlign(box, child.Box);
        if (align is Align.Stretch or Align.Normal && child.Box.Style.Height.IsAuto && !child.Box.IsReplaced && space > child.Height)
        {
            if (child.Box.Kind is BoxKind.Flex)
            {
                var stretched = Block(child.Box, inner, child.Width, space).Fragment;
                stretched.X = child.X;
                row.Children[index] = child = stretched;
            }
            else child.Height = space;
        }

        child.Y = margin.Top + (align == Align.Baseline ? baseline - margin.Top - (Baseline(child, first: true) ?? child.Height) : Shifted(align, space - child.Height));
    }

    private static double Shifted(Align align, double free) => align switch { Align.Center => free / 2, Align.End => free, _ => 0 };

    private static Align CrossAlign(Box box, Box item) => item.Style.AlignSelf == Align.Auto ? box.Style.AlignItems : item.Style.AlignSelf;

    private static (double Start, double Between) Justified(Align justify, double free, int count)
    {
        var room = Math.Max(0, free);
        return justify switch
        {
            Align.Center => (free / 2, 0),
            Align.End => (free, 0),
            Align.SpaceBetween when count > 1 => (0, room / (count - 1)),
            Align.SpaceAround => (room / count / 2, room / count),
            Align.SpaceEvenly => (room / (count + 1), room / (count + 1)),
            _ => (0, 0),
        };
    }

    private double FlexColumn(Box box, List<Box> items, Fragment fragment, double inner, Sides<double> edges)
    {
        var y = 0.0;
        foreach (var item in items)
        {
            if (fragment.Children.Count > 0) y += box.Style.RowGap.Against(inner);
            var margins = Margins(item.Style, inner);
            var align = CrossAlign(box, item);
            var room = inner - margins.Left - margins.Right;
            var width = align is Align.Normal or Align.Stretch && item.Style.Width.IsAuto && !item.IsReplaced ? BorderWidth(item, inner, Edges(item, inner)) : item.IsReplaced ? (double?)null : ShrinkToFit(item, inner);
            var placed = Block(item, inner, width).Fragment;
            placed.X = edges.Left + margins.Left + Shifted(align, room - placed.Width);
            placed.Y = edges.Top + y + margins.Top;
            y += placed.Height + margins.Top + margins.Bottom;
            fragment.Children.Add(placed);
        }

        return y;
    }
}
