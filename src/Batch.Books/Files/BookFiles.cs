namespace Batch.Books.Files;

/// <summary>Finds the books that are meant by what was given on the command line.</summary>
internal static class BookFiles
{
    private static readonly string[] WorkbookEndings = [".xlsx", ".xlsm"];

    /// <summary>The books, in the order given; those of a folder by name.</summary>
    /// <param name="paths">Workbooks and folders.</param>
    /// <exception cref="BookException">A path does not exist or is no book.</exception>
    public static ImmutableArray<BookFile> Of(IEnumerable<string> paths) => [.. paths.SelectMany(Of)];

    private static IEnumerable<BookFile> Of(string path)
    {
        if (Directory.Exists(path)) return Folder(path);
        if (!File.Exists(path)) throw new BookException($"{path} does not exist");
        if (!IsWorkbook(path)) throw new BookException($"{Path.GetFileName(path)} is not a workbook (.xlsx) or a folder" + (path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) ? "; give the folder the csv files stand in" : ""));
        return [new BookFile(path, [])];
    }

    private static IEnumerable<BookFile> Folder(string path)
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
        if (workbooks.Length > 0) return workbooks.Select(file => new BookFile(file, []));
        var csvs = Array.FindAll(files, file => file.EndsWith(".csv", StringComparison.OrdinalIgnoreCase));
        return csvs.Length > 0 ? [new BookFile(path, [.. csvs])] : throw new BookException($"{path} holds no workbook (.xlsx) and no csv file");
    }

    private static bool IsWorkbook(string path) => Array.Exists(WorkbookEndings, ending => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase));
}
