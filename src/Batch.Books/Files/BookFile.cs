using Batch.Books.Cells;
using Batch.Books.Csv;
using Batch.Books.Excel;

namespace Batch.Books.Files;

/// <summary>A book on the disk: a workbook, or a folder of csv files.</summary>
/// <param name="Path">The file or the folder.</param>
/// <param name="CsvFiles">The csv files of a folder, by name; empty for a workbook.</param>
internal sealed record BookFile(string Path, ImmutableArray<string> CsvFiles)
{
    /// <summary>Whether it is a workbook.</summary>
    public bool IsWorkbook => CsvFiles.IsEmpty;

    /// <summary>Reads it.</summary>
    /// <param name="index">Number of the book in the order given.</param>
    /// <exception cref="BookException">It cannot be read.</exception>
    public RawBook Read(int index) => IsWorkbook ? WorkbookFile.Read(Path, index) : CsvFolder.Read(Path, CsvFiles, index);
}
