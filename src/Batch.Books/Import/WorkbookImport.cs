using Batch.Books.Cells;
using Batch.Books.Editing;
using Batch.Books.Excel;
using Batch.Books.Files;
using Batch.Books.Packages;

namespace Batch.Books.Import;

/// <summary>A workbook that takes imported rows.</summary>
internal sealed class WorkbookImport : ImportBook
{
    private readonly string _path;
    private readonly WorkbookParts _workbook;

    /// <summary>Opens it.</summary>
    /// <param name="path">Its path.</param>
    /// <exception cref="BookException">It cannot be used, or is open in another program.</exception>
    /// <exception cref="InvalidDataException">It has no workbook part.</exception>
    public WorkbookImport(string path)
    {
        _path = path;
        RefuseOpen(path);
        Raw = WorkbookFile.Read(path, 0);
        _workbook = new WorkbookParts(Package.Read(WorkbookFile.Bytes(path, Path.GetFileName(path)), Path.GetFileName(path)));
    }

    /// <inheritdoc/>
    public override RawBook Raw { get; }

    /// <inheritdoc/>
    public override RowTarget Open(RawSheet sheet, int last) => new SheetTarget(new SheetEdit(new SheetText(_workbook.Text(Part(sheet)).Text)), last);

    /// <inheritdoc/>
    public override void Close(RawSheet sheet, RowTarget target, (int From, int To) grown, ImportNotes notes)
    {
        if (target is not SheetTarget { Edit: var edit }) throw new ArgumentException("The target is one of another book.", nameof(target));
        var part = Part(sheet);
        if (grown.To > grown.From) new GrownRanges(_workbook, part, grown.From, grown.To, notes).Grow(sheet.Name, edit);
        _workbook.Package.Put(part, _workbook.Text(part).Bytes(edit.Done()));
    }

    /// <inheritdoc/>
    public override (string Written, string Backup) Save() => (_path, SafeFile.Replace(_path, _workbook.Package.Write()));

    private string Part(RawSheet sheet) => _workbook.Sheet(sheet.Name) ?? throw new InvalidDataException($"the part of {sheet.Name} is missing");
}
