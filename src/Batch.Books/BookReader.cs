using Batch.Books.Cells;
using Batch.Books.Files;
using Batch.Books.Links;
using Batch.Flight.Week;

namespace Batch.Books;

/// <summary>
/// Reads week books and operator books into one typed week. Every complaint about the input is in <see cref="OperatorWeek.Problems"/>, at its cell.
/// </summary>
public static class BookReader
{
    /// <summary>Reads books together. A sheet may stand in any of them; the same sheet in two is joined.</summary>
    /// <param name="paths">
    /// Workbooks (<c>.xlsx</c>) and folders. A folder means the workbooks standing directly in it, by name, or, where there are none, its <c>.csv</c> files as
    /// one book named after the folder. Lock files (<c>~$</c>) and hidden files are passed over.
    /// </param>
    /// <returns>Everything the books hold.</returns>
    /// <exception cref="BookException">A path does not exist or is the folder of a run, a file is not a
    /// workbook, two books or csv files of one have the same name, or no book has a Legs sheet.</exception>
    public static OperatorWeek Read(IReadOnlyList<string> paths)
    {
        if (paths.Count == 0) throw new BookException("no book is given; name a workbook or a folder");
        var reading = BookFiles.Of(paths).Select((file, index) => Task.Run(() => file.Read(index))).ToArray();
        ImmutableArray<RawBook> books = [.. reading.Select(book => book.GetAwaiter().GetResult())];
        var twice = books.GroupBy(book => book.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(group => group.Skip(1).Any());
        if (twice is not null) throw new BookException($"two books are called {twice.Key}, so a cell could not be named clearly; rename one or give it once");
        return Week.Of(books, BookFiles.NotRead(paths));
    }

    /// <summary>Whether a file in a folder is one that <see cref="Read"/> makes a book of, by its name.</summary>
    /// <param name="path">The file.</param>
    public static bool IsBook(string path) => BookFiles.IsBook(path);
}
