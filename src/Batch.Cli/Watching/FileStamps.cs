using System.Globalization;

namespace Batch.Cli.Watching;

/// <summary>
/// Looks whether books or templates were saved: size and time of every file that a run would read. Looking is enough and sees what notices of the system do not: files that are replaced by a
/// renamed one, and folders on another machine. Lock files and temporary files of spreadsheets are passed over.
/// </summary>
internal static class FileStamps
{
    private static readonly string[] Kinds = [".xlsx", ".xlsm", ".csv", ".html", ".css", ".js", ".svg", ".txt"];

    /// <summary>The stamp of some files and folders; another text after a save.</summary>
    /// <param name="paths">Books and template folders; a folder stands for the files in it.</param>
    public static string Of(IEnumerable<string> paths) => string.Join('\n', paths.SelectMany(Files).Order(StringComparer.Ordinal).Select(Stamp));

    /// <summary>Whether a file is one that a spreadsheet leaves beside an open book.</summary>
    /// <param name="name">Its name without folder.</param>
    public static bool IsLock(string name) => name.StartsWith("~$", StringComparison.Ordinal) || name.StartsWith(".~", StringComparison.Ordinal) || name.StartsWith('.') || name.EndsWith(".tmp", StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<string> Files(string path)
    {
        if (!Directory.Exists(path)) return [path];
        try
        {
            return Directory.GetFiles(path).Where(file => !IsLock(Path.GetFileName(file)) && Kinds.Contains(Path.GetExtension(file), StringComparer.OrdinalIgnoreCase));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return [path];
        }
    }

    private static string Stamp(string path)
    {
        try
        {
            var file = new FileInfo(path);
            return file.Exists ? string.Create(CultureInfo.InvariantCulture, $"{path} {file.Length} {file.LastWriteTimeUtc.Ticks}") : path;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return path;
        }
    }
}
