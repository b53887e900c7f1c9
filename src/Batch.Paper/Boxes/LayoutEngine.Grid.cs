using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Simple grids (CSS Grid 1): column tracks of lengths, shares and `auto`; items fill row after row; column spans.</summary>
internal sealed partial class LayoutEngine
{
    private double Grid(Box box, Fragment fragment, double inner, Sides<double> edges)
    {
        var (columnGap, rowGap) = (box.Style.ColumnGap.Against(inner), box.Style.RowGap.Against(inner));
        var rows = Placed(box);
        var widths = TrackWidths(box, rows, inner - columnGap * (ColumnCount(box) - 1), inner);
        var y = 0.0;
        foreach (var row in rows)
        {
            if (fragment.Children.Count > 0) y += rowGap;
            var line = new Fragment(box, FragmentRole.Parallel) { Width = inner, Paints = false, X = edges.Left, Y = edges.Top + y };
            foreach (var (item, column, span) in row) PlaceInGrid(line, item, widths, column, span, columnGap);
            line.Height = line.Children.Select(c => c.Height + Margins(c.Box.Style, inner).Top + Margins(c.Box.Style, inner).Bottom).DefaultIfEmpty().Max();
            foreach (var child in line.Children) AlignInGrid(box, line, child, inner);
            y += line.Height;
            fragment.Children.Add(line);
        }

        return y;
    }

    private void PlaceInGrid(Fragment line, Box item, double[] widths, int column, int span, double gap)
    {
        var x = widths.Take(column).Sum() + gap * column;
        var area = widths.Skip(column).Take(span).Sum() + gap * (span - 1);
        var margins = Margins(item.Style, area);
        double? width = item.IsReplaced ? null : item.Style.Width.IsAuto ? BorderWidth(item, area, Edges(item, area)) : ShrinkToFit(item, area);
        var placed = Block(item, area, width).Fragment;
        placed.X = x + margins.Left;
        line.Children.Add(placed);
    }

    private static void AlignInGrid(Box box, Fragment line, Fragment child, double inner)
    {
        var margins = Margins(child.Box.Style, inner);
        var space = line.Height - margins.Top - margins.Bottom;
        var align = CrossAlign(box, child.Box);
        if (align is Align.Normal or Align.Stretch && child.Box.Style.Height.IsAuto && !child.Box.IsReplaced) child.Height = Math.Max(child.Height, space);
        child.Y = margins.Top + Shifted(align, space - child.Height);
    }

    private static int ColumnCount(Box box) => Math.Max(1, box.Style.Columns.Length);

    /// <summary>Items by row with column and span; an item that does not fit in the rest of a row begins the next.</summary>
    private static List<List<(Box Item, int Column, int Span)>> Placed(Box box)
    {
        var count = ColumnCount(box);
        var rows = new List<List<(Box, int, int)>>();
        var next = count;
        foreach (var item in box.Children.OrderBy(c => c.Style.FlexOrder))
        {
            var start = Math.Min(count, item.Style.ColumnStart) - 1;
            var span = Math.Min(item.Style.ColumnSpan, count - Math.Max(0, start));
            if (rows.Count == 0 || (start >= 0 ? start < next : next + span > count))
            {
                rows.Add([]);
                next = 0;
            }

            if (start >= 0) next = start;
            rows[^1].Add((item, next, span));
            next += span;
        }

        return rows;
    }

    private double[] TrackWidths(Box box, List<List<(Box Item, int Column, int Span)>> rows, double space, double inner)
    {
        var tracks = box.Style.Columns.Length > 0 ? box.Style.Columns : [new Track(0, Length.Auto, MinZero: false)];
        var (least, most) = TrackContents(rows, tracks.Length);
        var widths = new double[tracks.Length];
        var isAuto = tracks.Select(t => t.Share == 0 && t.Size.IsAuto).ToArray();
        for (var i = 0; i < tracks.Length; i++) widths[i] = tracks[i].Share > 0 ? 0 : tracks[i].Size.OrNull(inner) ?? most[i];
        var flexible = Enumerable.Range(0, tracks.Length).Where(i => tracks[i].Share > 0).ToHashSet();
        var floors = flexible.Where(i => !tracks[i].MinZero).Sum(i => least[i]);
        var automatic = Enumerable.Range(0, tracks.Length).Where(i => isAuto[i]).ToList();
        var forAutomatic = space - floors - Enumerable.Range(0, tracks.Length).Where(i => !isAuto[i] && !flexible.Contains(i)).Sum(i => widths[i]);
        var (autoLeast, autoMost) = (automatic.Sum(i => least[i]), automatic.Sum(i => most[i]));
        if (automatic.Count > 0 && autoMost > forAutomatic)
        {
            var part = autoMost > autoLeast ? Math.Clamp((forAutomatic - autoLeast) / (autoMost - autoLeast), 0, 1) : 0;
            foreach (var i in automatic) widths[i] = least[i] + (most[i] - least[i]) * part;
        }
        else if (automatic.Count > 0 && flexible.Count == 0 && box.Style.JustifyContent is Align.Normal or Align.Stretch)
        {
            foreach (var i in automatic) widths[i] += (forAutomatic - autoMost) / automatic.Count;
        }

        while (flexible.Count > 0)
        {
            var free = Math.Max(0, space - widths.Where((_, i) => !flexible.Contains(i)).Sum());
            var unit = free / Math.Max(1, flexible.Sum(i => tracks[i].Share));
            var stiff = flexible.Where(i => !tracks[i].MinZero && least[i] > unit * tracks[i].Share + Epsilon).ToList();
            foreach (var i in stiff.Count > 0 ? stiff : [.. flexible]) widths[i] = stiff.Count > 0 ? least[i] : unit * tracks[i].Share;
            if (stiff.Count == 0) break;
            flexible.ExceptWith(stiff);
        }

        return widths;
    }

    private (double[] Least, double[] Most) TrackContents(List<List<(Box Item, int Column, int Span)>> rows, int count)
    {
        var (least, most) = (new double[count], new double[count]);
        foreach (var (item, column, span) in rows.SelectMany(r => r).Where(i => i.Span == 1))
        {
            var (itemLeast, itemMost) = Intrinsic(item);
            var around = Around(item, 0);
            (least[column], most[column]) = (Math.Max(least[column], itemLeast + around), Math.Max(most[column], itemMost + around));
        }

        return (least, most);
    }

    private (double Min, double Max) GridIntrinsic(Box box)
    {
        var tracks = box.Style.Columns.Length > 0 ? box.Style.Columns : [new Track(0, Length.Auto, MinZero: false)];
        var (least, most) = TrackContents(Placed(box), tracks.Length);
        var gaps = box.Style.ColumnGap.Px * (tracks.Length - 1);
        double Fixed(int i, double content) => tracks[i].Share == 0 && tracks[i].Size.OrNull(double.PositiveInfinity) is { } size ? size : content;
        return (gaps + least.Select((l, i) => Fixed(i, l)).Sum(), gaps + most.Select((m, i) => Fixed(i, m)).Sum());
    }
}
