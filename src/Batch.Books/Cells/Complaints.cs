namespace Batch.Books.Cells;

/// <summary>All complaints of one reading, collected in one pass and given out in book, sheet, row and column order.</summary>
internal sealed class Complaints
{
    private readonly List<(CellRef At, Problem Problem)> _all = [];

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

    /// <summary>All of them in order.</summary>
    public ImmutableArray<Problem> InOrder() => [.. _all.OrderBy(entry => entry.At).Select(entry => entry.Problem)];
}
