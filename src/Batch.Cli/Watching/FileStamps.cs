using System.Globalization;
using Batch.Books;
using Batch.Sheets;

namespace Batch.Cli.Watching;

/// <summary>
/// Looks whether books or templates were saved: size and time of every file that a run would read. Looking is enough and sees what notices of the system do
/// not: files that are replaced by a renamed one, and folders on another machine.
/// </summary>
internal static class FileStamps
{
    /// <summary>The stamp of some files and folders; another text after a save.</summary>
    /// <param name="paths">Books and template folders; a folder stands for the files in it.</param>
    public static string Of(IEnumerable<string> paths) => string.Join('\n', paths.SelectMany(Files).Order(StringComparer.Ordinal).Select(Stamp));

    private static IEnumerable<string> Files(string path)
    {
        if (!Directory.Exists(path)) return [path];
        try
        {
            return Directory.GetFiles(path).Where(file => BookReader.IsBook(file) || TemplateFolder.IsTemplate(file));
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
            // A link says nothing of what is saved behind it.
            return (File.ResolveLinkTarget(path, returnFinalTarget: true) ?? new FileInfo(path)) is FileInfo { Exists: true } file
                ? string.Create(CultureInfo.InvariantCulture, $"{path} {file.Length} {file.LastWriteTimeUtc.Ticks}")
                : path;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return path;
        }
    }
}
