using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Lays out the cells of a table in given columns and finds the row heights.</summary>
internal sealed class TableRows(LayoutEngine engine, TableGrid grid, double[] columns, double spacingX, double spacingY)
{
    private readonly List<(TableCell Cell, Fragment Fragment)> _cells = [];
    private readonly double[] _heights = new double[grid.Rows.Count];
    private readonly double[] _baselines = new double[grid.Rows.Count];

    public void Layout()
    {
        foreach (var cell in grid.Cells)
        {
            var width = columns.Skip(cell.Column).Take(cell.ColumnSpan).Sum() + spacingX * (cell.ColumnSpan - 1);
            var fragment = engine.Block(cell.Box, width, width).Fragment;
            fragment.CollapsedEdges = cell.Edges;
            _cells.Add((cell, fragment));
            if (Alignment(cell) == VerticalAlign.Baseline && LayoutEngine.Baseline(fragment, first: true) is { } baseline) _baselines[cell.Row] = Math.Max(_baselines[cell.Row], baseline);
        }

        for (var r = 0; r < _heights.Length; r++)
        {
            if (grid.Rows[r].Row.Style.Height is { IsAuto: false, Percent: 0 } given) _heights[r] = given.Px;
        }

        foreach (var (cell, fragment) in _cells.Where(c => c.Cell.RowSpan == 1)) _heights[cell.Row] = Math.Max(_heights[cell.Row], Wanted(cell, fragment));
        foreach (var (cell, fragment) in _cells.Where(c => c.Cell.RowSpan > 1))
        {
            var missing = Wanted(cell, fragment) - Spanned(cell);
            if (missing > 0) _heights[cell.Row + cell.RowSpan - 1] += missing;
        }
    }

    /// <summary>The fragment of one row with its cells in place.</summary>
    public Fragment Row(int index, double[] lefts, double width)
    {
        var row = new Fragment(grid.Rows[index].Row, FragmentRole.Parallel) { Width = width, Height = _heights[index] };
        foreach (var (cell, fragment) in _cells.Where(c => c.Cell.Row == index))
        {
            fragment.X = lefts[cell.Column];
            var height = Spanned(cell);
            var shift = Alignment(cell) switch
            {
                VerticalAlign.Middle => (height - fragment.Height) / 2,
                VerticalAlign.Bottom => height - fragment.Height,
                VerticalAlign.Baseline => Math.Max(0, _baselines[cell.Row] - (LayoutEngine.Baseline(fragment, first: true) ?? _baselines[cell.Row])),
                _ => 0,
            };
            foreach (var child in fragment.Children) child.Y += shift;
            fragment.Height = height;
            row.Children.Add(fragment);
        }

        row.JoinedWithNext = grid.Cells.Exists(c => c.RowSpan > 1 && c.Row <= index && c.Row + c.RowSpan - 1 > index);
        return row;
    }

    /// <summary>Height a cell asks of its rows; its own height property counts as a least one (CSS 2.2, section 17.5.3).</summary>
    private double Wanted(TableCell cell, Fragment fragment) => Math.Max(Given(cell.Box), fragment.Height
        + (Alignment(cell) == VerticalAlign.Baseline && LayoutEngine.Baseline(fragment, first: true) is { } baseline ? _baselines[cell.Row] - baseline : 0));

    private static double Given(Box cell)
    {
        var edges = LayoutEngine.Edges(cell, 0);
        return cell.Style.Height is { IsAuto: false, Percent: 0 } height ? height.Px + (cell.Style.BorderBox ? 0 : edges.Top + edges.Bottom) : 0;
    }

    private double Spanned(TableCell cell) => _heights.Skip(cell.Row).Take(cell.RowSpan).Sum() + spacingY * (cell.RowSpan - 1);

    private static VerticalAlign Alignment(TableCell cell) => cell.Box.Style.VerticalAlign switch
    {
        VerticalAlign.Top => VerticalAlign.Top,
        VerticalAlign.Middle => VerticalAlign.Middle,
        VerticalAlign.Bottom => VerticalAlign.Bottom,
        _ => VerticalAlign.Baseline,
    };
}
