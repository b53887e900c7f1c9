using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Border conflicts of a table with collapsed borders (CSS 2.2, section 17.6.2), one winner a side of a cell.</summary>
internal static class CollapsedBorders
{
    public static Dictionary<TableCell, Sides<CollapsedEdge>> Resolve(TableGrid grid, Box table)
    {
        var slots = new Dictionary<(int, int), TableCell>();
        foreach (var cell in grid.Cells)
        {
            for (var r = cell.Row; r < cell.Row + cell.RowSpan; r++)
            {
                for (var c = cell.Column; c < cell.Column + cell.ColumnSpan; c++) slots[(r, c)] = cell;
            }
        }

        return grid.Cells.ToDictionary(cell => cell, cell => new Sides<CollapsedEdge>(
            Side(cell, 0, Enumerable.Range(cell.Column, cell.ColumnSpan).Select(c => slots.GetValueOrDefault((cell.Row - 1, c)))),
            Side(cell, 1, Enumerable.Range(cell.Row, cell.RowSpan).Select(r => slots.GetValueOrDefault((r, cell.Column + cell.ColumnSpan)))),
            Side(cell, 2, Enumerable.Range(cell.Column, cell.ColumnSpan).Select(c => slots.GetValueOrDefault((cell.Row + cell.RowSpan, c)))),
            Side(cell, 3, Enumerable.Range(cell.Row, cell.RowSpan).Select(r => slots.GetValueOrDefault((r, cell.Column - 1))))));

        CollapsedEdge Side(TableCell cell, int side, IEnumerable<TableCell?> neighbours)
        {
            var (edge, shared) = (Own(cell, side), true);
            foreach (var neighbour in neighbours.Distinct())
            {
                shared &= neighbour is not null;
                if (neighbour is not null) edge = CollapsedEdge.Stronger(edge, Own(neighbour, (side + 2) % 4));
            }

            return edge with { Shared = shared };
        }

        CollapsedEdge Own(TableCell cell, int side)
        {
            var edge = CollapsedEdge.Of(cell.Box.Style, side);
            var (first, last) = (cell.Row, cell.Row + cell.RowSpan - 1);
            var atSide = side switch { 0 => true, 2 => true, 1 => cell.Column + cell.ColumnSpan == grid.ColumnCount, _ => cell.Column == 0 };
            if (!atSide) return edge;
            var row = grid.Rows[side == 2 ? last : first];
            edge = CollapsedEdge.Stronger(edge, CollapsedEdge.Of(row.Row.Style, side));
            var edgeOfGroup = side is 1 or 3 || (side == 0 ? first == 0 || grid.Rows[first - 1].Group != row.Group : last + 1 == grid.Rows.Count || grid.Rows[last + 1].Group != row.Group);
            if (edgeOfGroup) edge = CollapsedEdge.Stronger(edge, CollapsedEdge.Of(row.Group.Style, side));
            var edgeOfTable = side is 1 or 3 || (side == 0 ? first == 0 : last + 1 == grid.Rows.Count);
            return edgeOfTable ? CollapsedEdge.Stronger(edge, CollapsedEdge.Of(table.Style, side)) : edge;
        }
    }
}
