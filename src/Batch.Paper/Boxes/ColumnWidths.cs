using Batch.Paper.Style;

namespace Batch.Paper.Boxes;

/// <summary>Widths of table columns: fixed layout and automatic layout by guesses (CSS Tables 3, section 3.9). All in px.</summary>
internal sealed class ColumnWidths
{
    private readonly double[] _least;
    private readonly double[] _most;
    private readonly double?[] _fixed;
    private readonly double?[] _percent;
    private readonly bool _fixedLayout;

    public ColumnWidths(TableGrid grid, Box table, Func<Box, (double Min, double Max)> intrinsic)
    {
        var count = grid.ColumnCount;
        (_least, _most, _fixed, _percent) = (new double[count], new double[count], new double?[count], new double?[count]);
        _fixedLayout = table.Style.FixedTable && !table.Style.Width.IsAuto;
        for (var i = 0; i < grid.Columns.Count && i < count; i++) Specify(i, grid.Columns[i].Style.Width, 0, 0);
        foreach (var cell in grid.Cells.Where(c => c.ColumnSpan == 1 && (!_fixedLayout || c.Row == 0))) AddCell(cell, intrinsic);
        if (!_fixedLayout)
        {
            foreach (var cell in grid.Cells.Where(c => c.ColumnSpan > 1).OrderBy(c => c.ColumnSpan)) AddSpanning(cell, intrinsic(cell.Box));
        }
        else
        {
            foreach (var cell in grid.Cells.Where(c => c.ColumnSpan > 1 && c.Row == 0 && c.Box.Style.Width is { IsAuto: false, Percent: 0 }))
            {
                for (var i = cell.Column; i < cell.Column + cell.ColumnSpan; i++) _fixed[i] ??= cell.Box.Style.Width.Px / cell.ColumnSpan;
            }
        }

        for (var i = 0; i < count; i++) _most[i] = Math.Max(_least[i], _fixed[i] ?? _most[i]);
    }

    public double Least => _least.Sum();

    /// <summary>Width at which no cell wraps, enlarged where percentages ask for it.</summary>
    public double Most
    {
        get
        {
            var most = _most.Sum();
            var percents = _percent.Sum(p => p ?? 0);
            for (var i = 0; i < _most.Length; i++)
            {
                if (_percent[i] is > 0 and var percent) most = Math.Max(most, _most[i] * 100 / percent);
            }

            var rest = _most.Where((_, i) => _percent[i] is null).Sum();
            if (percents >= 100 && rest > 0) return 1e6;
            return percents is > 0 and < 100 ? Math.Max(most, rest * 100 / (100 - percents)) : most;
        }
    }

    /// <summary>Shares a width out among the columns; the sum is the width, or the least possible when that is more.</summary>
    public double[] Share(double width)
    {
        if (_least.Length == 0) return [];
        if (_fixedLayout) return ShareFixed(width);
        var count = _least.Length;
        var byPercent = Guess(i => _percent[i] is { } p ? Math.Max(_least[i], p / 100 * width) : _least[i]);
        var bySpecified = Guess(i => _percent[i] is null && _fixed[i] is not null ? _most[i] : byPercent[i]);
        var byMost = Guess(i => _percent[i] is null ? _most[i] : byPercent[i]);
        double[][] guesses = [_least, byPercent, bySpecified, byMost];
        for (var g = 1; g < guesses.Length; g++)
        {
            var (low, high) = (guesses[g - 1].Sum(), guesses[g].Sum());
            if (width >= high) continue;
            var part = high > low ? Math.Clamp((width - low) / (high - low), 0, 1) : 0;
            return Guess(i => guesses[g - 1][i] + (guesses[g][i] - guesses[g - 1][i]) * part);
        }

        var growing = Enumerable.Range(0, count).Where(i => _percent[i] is null && _fixed[i] is null).ToList();
        if (growing.Count == 0) growing = [.. Enumerable.Range(0, count).Where(i => _percent[i] is null)];
        if (growing.Count == 0) growing = [.. Enumerable.Range(0, count)];
        var (total, excess) = (growing.Sum(i => byMost[i]), width - byMost.Sum());
        return Guess(i => byMost[i] + (growing.Contains(i) ? total > 0 ? excess * byMost[i] / total : excess / growing.Count : 0));

        double[] Guess(Func<int, double> of) => [.. Enumerable.Range(0, count).Select(of)];
    }

    private void Specify(int column, Length width, double edges, double least)
    {
        if (width.IsAuto) return;
        if (width.Percent > 0) _percent[column] = Math.Max(_percent[column] ?? 0, width.Percent);
        else _fixed[column] = Math.Max(_fixed[column] ?? 0, Math.Max(least, width.Px + edges));
    }

    private void AddCell(TableCell cell, Func<Box, (double Min, double Max)> intrinsic)
    {
        var style = cell.Box.Style;
        var edges = LayoutEngine.Edges(cell.Box, 0);
        if (!_fixedLayout)
        {
            var (least, most) = intrinsic(cell.Box);
            (_least[cell.Column], _most[cell.Column]) = (Math.Max(_least[cell.Column], least), Math.Max(_most[cell.Column], most));
        }

        if (!_fixedLayout || (_fixed[cell.Column] is null && _percent[cell.Column] is null))
            Specify(cell.Column, style.Width, style.BorderBox ? 0 : edges.Left + edges.Right, _least[cell.Column]);
    }

    private void AddSpanning(TableCell cell, (double Min, double Max) wanted)
    {
        var columns = Enumerable.Range(cell.Column, cell.ColumnSpan).ToList();
        foreach (var (sizes, want) in new[] { (_least, wanted.Min), (_most, wanted.Max) })
        {
            var missing = want - columns.Sum(i => sizes[i]);
            if (missing <= 0) continue;
            var free = columns.Where(i => _fixed[i] is null && _percent[i] is null).ToList();
            if (free.Count == 0) free = columns;
            var total = free.Sum(i => _most[i]);
            foreach (var i in free) sizes[i] += total > 0 ? missing * _most[i] / total : missing / free.Count;
        }
    }

    private double[] ShareFixed(double width)
    {
        var widths = _fixed.Select((f, i) => _percent[i] is { } p ? p / 100 * width : f).ToArray();
        var (used, open) = (widths.Sum(w => w ?? 0), widths.Count(w => w is null));
        var rest = Math.Max(0, width - used);
        return [.. widths.Select(w => open > 0 ? w ?? rest / open : (w ?? 0) * (used > 0 ? Math.Max(1, width / used) : 1))];
    }
}
