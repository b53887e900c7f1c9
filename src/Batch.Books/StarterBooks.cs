using Batch.Books.Starter;

namespace Batch.Books;

/// <summary>
/// The pair of books that a user begins with: every known sheet with its columns, units, explanations and drop-downs, filled with a small invented operator and
/// one trip, so that it can be planned at once.
/// </summary>
public static class StarterBooks
{
    /// <summary>Makes the books.</summary>
    /// <returns>The operator book, then the week book.</returns>
    public static ImmutableArray<StarterFile> Make() => [Book("operator"), Book("week")];

    private static StarterFile Book(string name) => new(name + ".xlsx", [.. StarterWorkbook.Make(name)]);
}
