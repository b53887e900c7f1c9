using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Border conflicts of a table with collapsed borders (CSS 2.2, section 17.6.2), one winner a side of a cell.</summary>
internal static class CollapsedBorders
{
    /// <summary>Gives every cell its winning borders.</summary>
    public static void Resolve(TableGrid grid, Box table)
    {
        var slots = new TableCell?[grid.Rows.Count + 2, grid.ColumnCount + 2];
        foreach (var cell in grid.Cells)
        {
            for (var r = 0; r < cell.RowSpan; r++)
            {
                for (var c = 0; c < cell.ColumnSpan; c++) slots[cell.Row + r + 1, cell.Column + c + 1] = cell;
            }
        }

        foreach (var cell in grid.Cells)
        {
            var edges = new Sides<CollapsedEdge>(Side(cell, 0), Side(cell, 1), Side(cell, 2), Side(cell, 3));
            cell.Edges = edges;
            cell.Box.CellBorder = edges.Select(e => e.Width / 2);
        }

        CollapsedEdge Side(TableCell cell, int side)
        {
            var (edge, shared) = (Own(cell, side), true);
            for (var i = 0; i < (side % 2 == 0 ? cell.ColumnSpan : cell.RowSpan); i++)
            {
                var (row, column) = side switch { 0 => (0, i + 1), 1 => (i + 1, cell.ColumnSpan + 1), 2 => (cell.RowSpan + 1, i + 1), _ => (i + 1, 0) };
                var neighbour = slots[cell.Row + row, cell.Column + column];
                shared &= neighbour is not null;
                if (neighbour is not null) edge = CollapsedEdge.Stronger(edge, Own(neighbour, (side + 2) % 4));
            }

            return edge with { Shared = shared };
        }

        CollapsedEdge Own(TableCell cell, int side)
        {
            var edge = CollapsedEdge.Of(cell.Box.Style, side);
            var (first, last) = (cell.Row, cell.Row + cell.RowSpan - 1);
            if (side == 1 && cell.Column + cell.ColumnSpan != grid.ColumnCount || side == 3 && cell.Column != 0) return edge;
            var row = grid.Rows[side == 2 ? last : first];
            edge = CollapsedEdge.Stronger(edge, CollapsedEdge.Of(row.Row.Style, side));
            var edgeOfGroup = side is 1 or 3 || (side == 0 ? first == 0 || grid.Rows[first - 1].Group != row.Group : last + 1 == grid.Rows.Count || grid.Rows[last + 1].Group != row.Group);
            if (edgeOfGroup) edge = CollapsedEdge.Stronger(edge, CollapsedEdge.Of(row.Group.Style, side));
            var edgeOfTable = side is 1 or 3 || (side == 0 ? first == 0 : last + 1 == grid.Rows.Count);
            return edgeOfTable ? CollapsedEdge.Stronger(edge, CollapsedEdge.Of(table.Style, side)) : edge;
        }
    }
}
