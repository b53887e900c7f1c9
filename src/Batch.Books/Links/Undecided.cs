using Batch.Books.Headers;

namespace Batch.Books.Links;

/// <summary>Cells in which somebody wrote that it is not yet decided. Words in use, no source.</summary>
internal static class Undecided
{
    private static readonly ImmutableHashSet<string> Words =
        ["tba", "tbc", "tbd", "tbn", "tobeadvised", "tobeannounced", "tobeconfirmed", "tobedecided", "tobedetermined", "tobenamed", "undecided", "open"];

    /// <summary>Complains of a cell that says so, with a fail: nothing passes by it.</summary>
    /// <param name="row">The row of the leg.</param>
    /// <param name="column">The column of the cell.</param>
    /// <param name="written">What stands there; no name that is known.</param>
    /// <param name="asked">What is to stand there, such as <c>one of Aircraft</c>.</param>
    /// <returns>Whether it said so.</returns>
    public static bool Complains(Row row, Column column, string written, string asked)
    {
        if (!Words.Contains(HeaderText.Plain(written)) && written.Trim('?', ' ').Length > 0) return false;
        row.Fail(column, $"{column.Name} is not yet decided; the leg does not pass until {asked} stands here");
        return true;
    }
}
