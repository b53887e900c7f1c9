using Batch.Books.Cells;
using Batch.Books.Csv;
using Batch.Books.Excel;
using Batch.Books.Links;
using Batch.Flight.Week;

namespace Batch.Books;

/// <summary>Reads week books and operator books into one typed week. Every complaint about the input is in <see cref="OperatorWeek.Problems"/>, at its cell.</summary>
public static class BookReader
{
    private static readonly string[] WorkbookEndings = [".xlsx", ".xlsm"];

    /// <summary>Reads books together. A sheet may stand in any of them; the same sheet in two is joined.</summary>
    /// <param name="paths">
    /// Workbooks (<c>.xlsx</c>) and folders. A folder means the workbooks standing directly in it, by name, or, where there are none, its <c>.csv</c> files as one
    /// book named after the folder. Lock files (<c>~$</c>) are passed over.
    /// </param>
    /// <returns>Everything the books hold.</returns>
    /// <exception cref="BookException">A path does not exist, a file is not a workbook, two books have the same name, or no book has a Legs sheet.</exception>
    public static OperatorWeek Read(IReadOnlyList<string> paths)
    {
        if (paths.Count == 0) throw new BookException("no book is given; name a workbook or a folder");
        var books = ImmutableArray.CreateBuilder<RawBook>();
        foreach (var path in paths) books.AddRange(Books(path, books.Count));
        var twice = books.GroupBy(book => book.Name, StringComparer.OrdinalIgnoreCase).FirstOrDefault(group => group.Skip(1).Any());
        if (twice is not null) throw new BookException($"two books are called {twice.Key}, so a cell could not be named clearly; rename one or give it once");
        return Week.Of(books.ToImmutable());
    }

    private static IEnumerable<RawBook> Books(string path, int index)
    {
        if (Directory.Exists(path)) return Folder(path, index);
        if (!File.Exists(path)) throw new BookException($"{path} does not exist");
        if (!IsWorkbook(path)) throw new BookException($"{Path.GetFileName(path)} is not a workbook (.xlsx) or a folder" + (path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) ? "; give the folder the csv files stand in" : ""));
        return [WorkbookFile.Read(path, index)];
    }

    private static IEnumerable<RawBook> Folder(string path, int index)
    {
        string[] files;
        try
        {
            files = [.. Directory.EnumerateFiles(path).Where(file => !Path.GetFileName(file).StartsWith("~$", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        }
        catch (Exception thrown) when (thrown is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"{path} cannot be opened: {thrown.Message}", thrown);
        }

        var workbooks = Array.FindAll(files, IsWorkbook);
        if (workbooks.Length > 0) return workbooks.Select((file, i) => WorkbookFile.Read(file, index + i));
        var csvs = Array.FindAll(files, file => file.EndsWith(".csv", StringComparison.OrdinalIgnoreCase));
        return csvs.Length > 0 ? [CsvFolder.Read(path, csvs, index)] : throw new BookException($"{path} holds no workbook (.xlsx) and no csv file");
    }

    private static bool IsWorkbook(string path) => Array.Exists(WorkbookEndings, ending => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase));
}
