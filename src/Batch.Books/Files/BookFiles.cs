namespace Batch.Books.Files;

/// <summary>Finds the books that are meant by what was given on the command line.</summary>
internal static class BookFiles
{
    private const string SaveAs = "open it in a spreadsheet program and save it as .xlsx";

    /// <summary>The record of a run, by which the folder of one is known.</summary>
    private const string RunRecord = "run.json";

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
        .. paths.Where(Directory.Exists).SelectMany(Directory.EnumerateFiles).Where(IsOther).Select(file => Path.GetFileName(file))
            .Order(StringComparer.Ordinal)
            .Select(name => new Problem { State = State.Caution, Cell = name,
                Text = $"{name} stands in the folder and is not read; {SaveAs}, or take it away" }),
    ];

    /// <summary>
    /// Whether a file in a folder is one that its books are made of, by its name. Lock files, and what systems and programs leave beside a book, are not.
    /// </summary>
    /// <param name="path">The file.</param>
    public static bool IsBook(string path) => !IsPassedOver(path) && (IsWorkbook(path) || IsCsv(path));

    private static IEnumerable<BookFile> Of(string path)
    {
        if (string.IsNullOrWhiteSpace(path)) throw new BookException("a book was given without a name");
        if (Directory.Exists(path)) return Folder(path);
        if (!File.Exists(path)) throw new BookException($"{path} does not exist");
        if (!IsWorkbook(path)) throw new BookException($"{Path.GetFileName(path)} is not a workbook (.xlsx) or a folder"
            + (IsCsv(path) ? "; give the folder the csv files stand in" : IsOther(path) ? "; " + SaveAs : ""));
        return [new BookFile(path, [])];
    }

    private static IEnumerable<BookFile> Folder(string path)
    {
        string[] files;
        try
        {
            files = [.. Directory.EnumerateFiles(path).Where(file => !IsPassedOver(file)).Order(StringComparer.Ordinal)];
        }
        catch (Exception thrown) when (thrown is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"{path} cannot be opened: {thrown.Message}", thrown);
        }

        if (Array.Exists(files, file => Path.GetFileName(file) == RunRecord))
            throw new BookException($"{path} is the folder of a finished run; name the workbook in it that is meant");
        var workbooks = Array.FindAll(files, IsWorkbook);
        if (workbooks.Length > 0) return workbooks.Select(file => new BookFile(file, []));
        var csvs = Array.FindAll(files, IsCsv);
        if (csvs.GroupBy(file => Path.GetFileNameWithoutExtension(file), StringComparer.OrdinalIgnoreCase)
            .FirstOrDefault(group => group.Skip(1).Any()) is { } twins)
            throw new BookException(
                $"{path} holds {string.Join(" and ", twins.Select(Path.GetFileName))}, so a cell could not be named clearly; take one away");
        if (csvs.Length > 0) return [new BookFile(path, [.. csvs])];
        throw new BookException($"{path} holds no workbook (.xlsx) and no csv file"
            + (Array.Find(files, IsOther) is { } other ? $"; {Path.GetFileName(other)} is none: {SaveAs}" : ""));
    }

    // Hidden files, such as those that some systems put beside every file of a memory stick, and the owner files of spreadsheet programs.
    private static bool IsPassedOver(string path) => Path.GetFileName(path) is ['.', ..] or ['~', '$', ..];

    private static bool IsOther(string path) =>
        Array.Exists(OtherEndings, ending => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase)) && !IsPassedOver(path);

    private static bool IsCsv(string path) => path.EndsWith(".csv", StringComparison.OrdinalIgnoreCase);

    private static bool IsWorkbook(string path) => Array.Exists(WorkbookEndings, ending => path.EndsWith(ending, StringComparison.OrdinalIgnoreCase));
}
