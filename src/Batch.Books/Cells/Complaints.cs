using System.Globalization;

namespace Batch.Books.Cells;

/// <summary>All complaints of one reading, collected in one pass and given out in book, sheet, row and column order.</summary>
internal sealed class Complaints
{
    private const int MostNamed = 5;

    private readonly List<(CellRef At, Problem Problem)> _all = [];
    private readonly Dictionary<(CellRef Column, string About), List<(CellRef At, Problem Problem)>> _columns = [];

    /// <summary>Adds a complaint.</summary>
    /// <param name="at">Its cell.</param>
    /// <param name="state">How serious it is.</param>
    /// <param name="text">One sentence; names no person.</param>
    /// <param name="read">What was read.</param>
    /// <param name="expected">What would have been understood.</param>
    public Problem Add(CellRef at, State state, string text, string read = "", string expected = "")
    {
        var problem = new Problem { State = state, Cell = at.ToString(), Text = text, Read = read, Expected = expected };
        _all.Add((at, problem));
        return problem;
    }

    /// <summary>Adds a complaint that is given out once a column: the first of its cells, with the others named.</summary>
    /// <param name="at">Its cell.</param>
    /// <param name="about">What it is about: a column may have one of each.</param>
    /// <param name="state">How serious it is.</param>
    /// <param name="text">One sentence about the cell; names no person.</param>
    /// <param name="read">What was read.</param>
    /// <param name="expected">What would have been understood.</param>
    public void AddOnceAColumn(CellRef at, string about, State state, string text, string read, string expected)
    {
        var column = (at with { Row = 0 }, about);
        if (!_columns.TryGetValue(column, out var cells)) _columns.Add(column, cells = []);
        cells.Add((at, new Problem { State = state, Cell = at.ToString(), Text = text, Read = read, Expected = expected }));
    }

    /// <summary>All of them in order.</summary>
    public ImmutableArray<Problem> InOrder() => [.. _all.Concat(_columns.Values.Select(Gathered)).OrderBy(entry => entry.At).Select(entry => entry.Problem)];

    private static (CellRef At, Problem Problem) Gathered(List<(CellRef At, Problem Problem)> cells)
    {
        var ordered = cells.DistinctBy(cell => cell.At).OrderBy(cell => cell.At).ToArray();
        var (at, first) = ordered[0];
        if (ordered.Length == 1) return ordered[0];
        var named = ordered.Skip(1).Take(MostNamed).Select(cell => CellRef.Letters(cell.At.Column) + cell.At.Row.ToString(CultureInfo.InvariantCulture));
        var more = ordered.Length - 1 - MostNamed;
        return (at, first with
        {
            Text = $"{first.Text}; likewise {string.Join(", ", named)}"
            + (more > 0 ? $" and {more.ToString(CultureInfo.InvariantCulture)} more of the column" : "")
        });
    }
}
