using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Tables: columns, rows, spans, separate and collapsed borders, captions (CSS 2.2, section 17).</summary>
internal sealed partial class LayoutEngine
{
    private readonly Dictionary<Box, (TableGrid Grid, ColumnWidths Widths)> _tables = [];

    private Fragment Table(Box box, double containing, double? borderWidth)
    {
        var (grid, widths) = Prepared(box);
        var style = box.Style;
        var edges = TableEdges(box, containing);
        var (spacingX, spacingY) = style.Collapse ? (0, 0) : (style.SpacingX, style.SpacingY);
        var between = spacingX * (grid.ColumnCount + (grid.ColumnCount > 0 ? 1 : 0));
        var extra = edges.Left + edges.Right + between;
        var margins = Margins(style, containing);
        var given = borderWidth ?? (style.Width.OrNull(containing) is { } w ? w + (style.BorderBox ? 0 : edges.Left + edges.Right) : null);
        var width = given ?? Math.Min(Math.Max(widths.Least + extra, containing - margins.Left - margins.Right), widths.Most + extra);
        width = Math.Max(Limited(width, style.MinWidth, style.MaxWidth, style, edges.Left + edges.Right, containing), widths.Least + extra);
        var columns = widths.Share(Math.Max(0, width - extra));
        var lefts = new double[columns.Length + 1];
        for (var i = 0; i < columns.Length; i++) lefts[i + 1] = lefts[i] + columns[i] + spacingX;
        var fragment = new Fragment(box, FragmentRole.Flow) { Width = columns.Length > 0 && grid.ColumnCount > 0 ? Math.Max(width, columns.Sum() + extra) : width };
        var heights = new TableRows(this, grid, columns, spacingX, spacingY);
        heights.Layout();
        var y = edges.Top + (grid.Rows.Count > 0 ? spacingY : 0);
        Fragment? group = null;
        for (var r = 0; r < grid.Rows.Count; r++)
        {
            if (group?.Box != grid.Rows[r].Group)
            {
                group = new Fragment(grid.Rows[r].Group, FragmentRole.Flow) { X = edges.Left + spacingX, Y = y, Width = fragment.Width - edges.Left - edges.Right - 2 * spacingX };
                fragment.Children.Add(group);
                if (group.Box.Style.Display == Display.TableHeaderGroup) fragment.RepeatedHead = group;
            }

            var row = heights.Row(r, lefts, group.Width);
            row.Y = y - group.Y;
            group.Children.Add(row);
            group.Height = row.Bottom;
            y += row.Height + spacingY;
        }

        fragment.Height = y + edges.Bottom;
        if (SpecifiedHeight(box, edges) is { } least) fragment.Height = Math.Max(fragment.Height, least);
        return Captioned(box, fragment);
    }

    private (double Min, double Max) TableIntrinsic(Box box)
    {
        var (grid, widths) = Prepared(box);
        var edges = TableEdges(box, 0);
        var own = Edges(box, 0);
        var extra = (box.Style.Collapse ? 0 : box.Style.SpacingX * (grid.ColumnCount + 1)) + edges.Left + edges.Right - own.Left - own.Right;
        return (widths.Least + extra, widths.Most + extra);
    }

    private (TableGrid Grid, ColumnWidths Widths) Prepared(Box box)
    {
        if (_tables.TryGetValue(box, out var known)) return known;
        var grid = new TableGrid(box);
        if (box.Style.Collapse) CollapsedBorders.Resolve(grid, box);
        return _tables[box] = (grid, new ColumnWidths(grid, box, Intrinsic));
    }

    /// <summary>Border and padding of a table; with collapsed borders the outer halves of the cells' borders.</summary>
    private Sides<double> TableEdges(Box box, double containing)
    {
        if (!box.Style.Collapse) return Edges(box, containing);
        var grid = Prepared(box).Grid;
        double Widest(int side, Func<TableCell, bool> at) => grid.Cells.Where(at).Select(c => c.Box.CellBorder?[side] ?? 0).DefaultIfEmpty().Max();
        return new Sides<double>(Widest(0, c => c.Row == 0), Widest(1, c => c.Column + c.ColumnSpan == grid.ColumnCount),
            Widest(2, c => c.Row + c.RowSpan == grid.Rows.Count), Widest(3, c => c.Column == 0));
    }

    private Fragment Captioned(Box box, Fragment table)
    {
        var captions = box.Children.Where(c => c.Kind == BoxKind.Caption).ToList();
        if (captions.Count == 0) return table;
        var wrapper = new Fragment(box, FragmentRole.Flow) { Width = table.Width, Paints = false };
        foreach (var below in new[] { false, true })
        {
            foreach (var caption in captions.Where(c => c.Style.CaptionBelow == below))
            {
                var margins = Margins(caption.Style, table.Width);
                var placed = Block(caption, table.Width, table.Width - margins.Left - margins.Right).Fragment;
                (placed.X, placed.Y) = (margins.Left, wrapper.Height + margins.Top);
                wrapper.Height = placed.Bottom + margins.Bottom;
                wrapper.Children.Add(placed);
            }

            if (below) continue;
            table.Y = wrapper.Height;
            wrapper.Height += table.Height;
            wrapper.Children.Add(table);
        }

        return wrapper;
    }
}
