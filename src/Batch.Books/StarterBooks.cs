using Batch.Books.Starter;

namespace Batch.Books;

/// <summary>
/// The pair of books that a user begins with: every known sheet with its columns, units, explanations and drop-downs, filled with a small invented operator and
/// one trip, so that it can be planned at once.
/// </summary>
public static class StarterBooks
{
    /// <summary>The Monday that the example is written for; for another week all its dates move by as many days.</summary>
    public static LocalDate ExampleMonday { get; } = new(2026, 12, 7);

    /// <summary>Makes the books; the same day gives the same bytes.</summary>
    /// <param name="today">The day on which they are made: the example trip flies on the Monday after it.</param>
    /// <returns>The operator book, then the week book.</returns>
    public static ImmutableArray<StarterFile> Make(LocalDate today)
    {
        var days = Period.DaysBetween(ExampleMonday, today.Next(IsoDayOfWeek.Monday));
        return [Book("operator", days), Book("week", days)];
    }

    private static StarterFile Book(string name, int days) => new(name + ".xlsx", [.. SteadyPackage.Of(StarterWorkbook.Make(name, days))]);
}
