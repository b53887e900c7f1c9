namespace Batch.Books.Files;

/// <summary>Finds the books that are meant by what was given on the command line.</summary>
internal static class BookFiles
{
    private const string SaveAs = "open it in a spreadsheet program and save it as .xlsx";

    private static readonly string[] WorkbookEndings = [".xlsx", ".xlsm"];
    private static readonly string[] OtherEndings = [".xls", ".xlsb", ".ods", ".fods", ".numbers"];

    /// <summary>The books, in the order given; those of a folder by name.</summary>
    /// <param name="paths">Workbooks and folders.</param>
    /// <exception cref="BookException">A path does not exist or is no book.</exception>
    public static ImmutableArray<BookFile> Of(IEnumerable<string> paths) => [.. paths.SelectMany(Of)];

    /// <summary>Workbooks of other programs that stand in the folders given: they are not read, which is said.</summary>
    /// <param name="paths">Workbooks and folders.</param>
    public static ImmutableArray<Problem> NotRead(IEnumerable<string> paths) =>
    [
        .. paths.Where(Directory.Exists).SelectMany(Directory.EnumerateFiles).Where(IsOther).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)
            .Select(name => new Problem { State = State.Caution, Cell = name, Text = $"{name} stands in the folder and is not read; {SaveAs}, or take it away" }),
    ];

    private static IEnumerable<BookFile> Of(string path)
    {
        if (string.IsNullOrWhiteSpace(path)) throw new BookException("a book was given without a name");
        if (Directory.Exists(path)) return Folder(path);
        if (!File.Exists(path)) throw new BookException($"{path} does not exist");
        if (!IsWorkbook(path)) throw new BookException($"{Path.GetFileName(path)} is not a workbook (.xlsx) or a folder" + (path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase) ? "; give the folder the csv files stand in" : IsOther(path) ? "; " + SaveAs : ""));
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
        if (csvs.Length > 0) return [new BookFile(path, [.. csvs])];
        throw new BookException($"{path} holds no workbook (.xlsx) and no csv file" + (Array.Find(files, IsOther) is { } other ? $"; {Path.GetFileName(other)} is none: {SaveAs}" : ""));
    }

    private static bool IsOther(string path) =>
        Array.Exists(OtherEndings, ending => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase)) && !Path.GetFileName(path).StartsWith('.') && !Path.GetFileName(path).StartsWith('~');

    private static bool IsWorkbook(string path) => Array.Exists(WorkbookEndings, ending => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase));
}
