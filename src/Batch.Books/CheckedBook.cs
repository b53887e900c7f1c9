using System.Xml;
using Batch.Books.Excel;
using Batch.Books.Files;
using Batch.Books.Marking;
using Batch.Books.Packages;
using Batch.Flight.Week;

namespace Batch.Books;

/// <summary>
/// Gives the user's own workbooks back with what was found in them: offending cells filled and commented, a sheet of findings, computed columns where asked.
/// All else in the workbook stays as it was, byte for byte where a part needs no change.
/// </summary>
public static class CheckedBook
{
    private const string Name = "checked";

    /// <summary>
    /// Makes the checked workbooks: of every book that holds legs, and of every other workbook in which a cell could not be read or is in doubt.
    /// </summary>
    /// <param name="paths">The books as given to <see cref="BookReader.Read"/>.</param>
    /// <param name="inputs">The books as they were read; one that has changed since is not marked.</param>
    /// <param name="content">What was found.</param>
    public static CheckedBookResult Make(IReadOnlyList<string> paths, IReadOnlyList<InputBook> inputs, CheckedBookContent content)
    {
        var files = ImmutableArray.CreateBuilder<CheckedBookFile>();
        var notes = ImmutableArray.CreateBuilder<string>();
        var weeks = content.Legs.Select(leg => CellAddress.Of(leg.Row)?.Book).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var doubted = content.Lines.Where(line => line.Leg.Length == 0 && line.State != State.Note).SelectMany(line => line.Cells)
            .Select(cell => CellAddress.Of(cell)?.Book).OfType<string>().ToHashSet(StringComparer.Ordinal);
        try
        {
            var books = BookFiles.Of(paths);
            foreach (var (file, i) in books.Select((file, i) => (file, i)).OrderByDescending(pair => weeks.Contains(Label(pair.file))))
            {
                var label = Label(file);
                if (!weeks.Contains(label) && !(doubted.Contains(label) && file.IsWorkbook)) continue;
                if (Marked(file, i, inputs, content, notes) is { } made)
                    files.Add(new CheckedBookFile(FileName(label, isFirst: files.Count == 0 && weeks.Contains(label)), [.. made]));
            }
        }
        catch (BookException thrown)
        {
            notes.Add($"no checked workbook was written: {thrown.Message}");
        }

        return new CheckedBookResult(files.ToImmutable(), notes.ToImmutable());
    }

    private static byte[]? Marked(BookFile file, int index, IReadOnlyList<InputBook> inputs, CheckedBookContent content, ImmutableArray<string>.Builder notes)
    {
        var label = Label(file);
        try
        {
            var book = file.Read(index);
            if (!inputs.Any(input => input.Name == book.Name && input.Sha256 == book.Sha256))
            {
                notes.Add($"{label} was changed while it was checked; no checked copy was written, run again");
                return null;
            }

            if (!file.IsWorkbook && !CsvWorkbook.CanHold(book))
            {
                notes.Add($"a csv file of {label} has a name that a workbook does not allow for a sheet; no checked workbook was written");
                return null;
            }

            var package = file.IsWorkbook ? Package.Read(WorkbookFile.Bytes(file.Path, label), label) : CsvWorkbook.Make(book);
            notes.AddRange(BookMarker.Mark(book, package, content));
            return package.Write();
        }
        catch (Exception thrown) when (thrown is BookException or XmlException or InvalidDataException)
        {
            notes.Add($"no checked copy of {label} was written: {thrown.Message.TrimEnd('.')}");
            return null;
        }
    }

    private static string FileName(string label, bool isFirst)
    {
        var ending = label.EndsWith(".xlsm", StringComparison.OrdinalIgnoreCase) ? ".xlsm" : ".xlsx";
        return (isFirst
            ? Name
            : $"{Name}-{(Path.GetExtension(label).Equals(ending, StringComparison.OrdinalIgnoreCase) ? Path.GetFileNameWithoutExtension(label) : label)}")
            + ending;
    }

    private static string Label(BookFile file) =>
        Path.GetFileName(Path.TrimEndingDirectorySeparator(file.IsWorkbook ? file.Path : Path.GetFullPath(file.Path)));
}
