using System.IO.Compression;
using System.Text;

namespace Batch.Sheets.Register;

/// <summary>
/// Writes a workbook sheet by sheet and row by row into a stream, so that a hundred thousand rows need no memory. Nothing in it comes from a clock or from
/// chance; the entries of the package carry the first day that a zip file can name.
/// </summary>
internal sealed class WorkbookWriter : IDisposable
{
    private static readonly DateTimeOffset EntryTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    private readonly ZipArchive _zip;
    private readonly string _title;
    private readonly string _foot;
    private readonly List<(string Name, string Range)> _sheets = [];

    /// <summary>Begins a workbook.</summary>
    /// <param name="to">Stream that takes it; left open.</param>
    /// <param name="title">Printed above every page.</param>
    /// <param name="foot">Printed below every page.</param>
    public WorkbookWriter(Stream to, string title, string foot)
    {
        _zip = new ZipArchive(to, ZipArchiveMode.Create, leaveOpen: true);
        (_title, _foot) = (title, foot);
    }

    /// <summary>Writes a sheet.</summary>
    /// <param name="name">Name without blanks or signs.</param>
    /// <param name="columns">Columns.</param>
    /// <param name="frozen">Columns that stay in sight.</param>
    /// <param name="rows">Writes the rows below the header.</param>
    /// <param name="isLarge">Whether it is printed on A3; else on A4.</param>
    public void Sheet(string name, IReadOnlyList<BookColumn> columns, int frozen, Action<SheetWriter> rows, bool isLarge = false)
    {
        var number = (_sheets.Count + 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
        using var part = Entry($"xl/worksheets/sheet{number}.xml").Open();
        using var sheet = new SheetWriter(part, columns, frozen, isFirst: _sheets.Count == 0);
        rows(sheet);
        sheet.Finish(_title + " - " + name, _foot, isLarge);
        _sheets.Add((name, sheet.Range));
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Part("xl/styles.xml", WorkbookParts.Styles);
        Part("xl/workbook.xml", WorkbookParts.Workbook(_sheets));
        Part("xl/_rels/workbook.xml.rels", WorkbookParts.WorkbookRelations(_sheets.Count));
        Part("_rels/.rels", WorkbookParts.PackageRelations);
        Part("[Content_Types].xml", WorkbookParts.ContentTypes(_sheets.Count));
        _zip.Dispose();
    }

    private void Part(string name, string text)
    {
        using var stream = Entry(name).Open();
        stream.Write(Encoding.UTF8.GetBytes(text));
    }

    private ZipArchiveEntry Entry(string name)
    {
        var entry = _zip.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = EntryTime;
        return entry;
    }
}
