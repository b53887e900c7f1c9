using Batch.Books.Cells;

namespace Batch.Books.Import;

/// <summary>A book that takes imported rows: a workbook or a folder of csv files.</summary>
internal abstract class ImportBook
{
    /// <summary>The book as it was read.</summary>
    public abstract RawBook Raw { get; }

    /// <summary>Opens a sheet.</summary>
    /// <param name="sheet">The sheet as it was read.</param>
    /// <param name="last">Its last filled row; 0 where only headers stand there.</param>
    public abstract RowTarget Open(RawSheet sheet, int last);

    /// <summary>Takes the changes of a sheet over.</summary>
    /// <param name="sheet">The sheet as it was read.</param>
    /// <param name="target">The changes.</param>
    /// <param name="grown">Last row before and after; what was sized to the rows grows with them.</param>
    /// <param name="notes">What there is to say.</param>
    public abstract void Close(RawSheet sheet, RowTarget target, (int From, int To) grown, ImportNotes notes);

    /// <summary>Writes the book.</summary>
    /// <returns>What was written, and the copies of what stood there before.</returns>
    /// <exception cref="BookException">It cannot be written.</exception>
    public abstract (string Written, string Backup) Save();

    // The other program would write over what is taken in here when it saves.
    private protected static void RefuseOpen(string path)
    {
        var (folder, name) = (Path.GetDirectoryName(Path.GetFullPath(path)) ?? "", Path.GetFileName(path));
        string[] marks = [Path.Combine(folder, "~$" + name), Path.Combine(folder, $".~lock.{name}#")];
        if (Array.Exists(marks, File.Exists))
            throw new BookException($"{name} is open in a spreadsheet program; close it there first, or its next save would undo the import");
    }
}
