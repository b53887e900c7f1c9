using Batch.Books.Cells;
using Batch.Books.Csv;
using Batch.Books.Files;

namespace Batch.Books.Import;

/// <summary>A folder of csv files that takes imported rows.</summary>
internal sealed class CsvImport : ImportBook
{
    private readonly ImmutableArray<string> _files;
    private readonly List<(string Path, byte[] Content)> _changed = [];

    /// <summary>Opens it.</summary>
    /// <param name="book">The folder.</param>
    /// <exception cref="BookException">It cannot be used.</exception>
    public CsvImport(BookFile book) => (_files, Raw) = (book.CsvFiles, book.Read(0));

    /// <inheritdoc/>
    public override RawBook Raw { get; }

    /// <inheritdoc/>
    public override RowTarget Open(RawSheet sheet, int last) => new CsvTarget(new CsvEdit(CsvFolder.Bytes(FileOf(sheet))), sheet.DecimalComma);

    /// <inheritdoc/>
    public override void Close(RawSheet sheet, RowTarget target, (int From, int To) grown, ImportNotes notes)
    {
        if (target is not CsvTarget { Edit: var edit }) throw new ArgumentException("The target is one of another book.", nameof(target));
        var content = edit.Done();
        if (!content.AsSpan().SequenceEqual(CsvFolder.Bytes(FileOf(sheet)))) _changed.Add((FileOf(sheet), content));
    }

    /// <inheritdoc/>
    public override (string Written, string Backup) Save()
    {
        foreach (var (path, _) in _changed) RefuseOpen(path);
        var backups = _changed.Select(file => SafeFile.Replace(file.Path, file.Content)).ToArray();
        return (string.Join(", ", _changed.Select(file => file.Path)), string.Join(", ", backups));
    }

    private string FileOf(RawSheet sheet) => _files.First(file => Path.GetFileNameWithoutExtension(file) == sheet.Name);
}
