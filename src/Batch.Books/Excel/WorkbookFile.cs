using System.Security.Cryptography;
using System.Text;
using System.Xml;
using Batch.Books.Cells;
using Batch.Books.Files;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Batch.Books.Excel;

/// <summary>Reads a workbook file, also while it is open in a spreadsheet program.</summary>
internal static class WorkbookFile
{
    /// <summary>Most bytes of a workbook file [B].</summary>
    public const long GreatestFile = 100L * 1024 * 1024;

    private static ReadOnlySpan<byte> CompoundFileMark => [0xD0, 0xCF, 0x11, 0xE0];

    /// <summary>Name of the stream that holds a workbook with a password, as the directory of a compound file writes it (MS-OFFCRYPTO 2.3).</summary>
    private static readonly byte[] EncryptedStream = Encoding.Unicode.GetBytes("EncryptedPackage");

    /// <summary>The book.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="index">Number of the book in the order given.</param>
    /// <exception cref="BookException">The file is not a workbook, or is protected, or too large.</exception>
    public static RawBook Read(string path, int index)
    {
        var name = Path.GetFileName(path);
        var bytes = Bytes(path, name);
        if (bytes.Length == 0) throw new BookException($"{name} is empty, or is no file (a pipe or a device)");
        if (bytes.AsSpan().StartsWith(CompoundFileMark))
        {
            throw new BookException(bytes.AsSpan().IndexOf(EncryptedStream) >= 0
                ? $"{name} needs a password; save it without one"
                : $"{name} is in the old .xls format whatever its name says; open it in a spreadsheet program and save it as .xlsx");
        }

        try
        {
            using var document = Open(bytes);
            return new RawBook(name, Convert.ToHexStringLower(SHA256.HashData(bytes)), Sheets(document, name, index));
        }
        // A damaged package makes the library throw almost anything, null references included; it is the file that is at fault.
        catch (Exception thrown) when (thrown is OpenXmlPackageException or InvalidDataException or FileFormatException or XmlException or IOException
            or ArgumentException
            or FormatException or NotSupportedException or InvalidOperationException or KeyNotFoundException or UriFormatException or NullReferenceException
                or InvalidCastException or IndexOutOfRangeException)
        {
            throw new BookException(
                $"{name} is not a workbook that can be read ({Reason(thrown)}); open it in a spreadsheet program and save it as .xlsx", thrown);
        }
    }

    private static string Reason(Exception thrown) =>
        thrown is XmlException && thrown.Message.Contains("DTD", StringComparison.Ordinal)
            ? "a part of it declares entities, as no spreadsheet program does"
            : thrown.Message.TrimEnd('.');

    private static SpreadsheetDocument Open(byte[] bytes)
    {
        try
        {
            return SpreadsheetDocument.Open(new MemoryStream(bytes, writable: false), isEditable: false,
                new OpenSettings { MaxCharactersInPart = PartReader.GreatestPart });
        }
        catch (OpenXmlPackageException thrown) when (thrown.InnerException is UriFormatException)
        {
            // A slip in the mail address of a hyperlink is no reason to refuse a week; the library mends such links in a copy only.
            var copy = new MemoryStream();
            copy.Write(bytes);
            copy.Position = 0;
            var mended = RelationshipErrorHandler.CreateRewriterFactory((_, _, _) => "about:blank");
            return SpreadsheetDocument.Open(copy, isEditable: true,
                new OpenSettings { AutoSave = false, MaxCharactersInPart = PartReader.GreatestPart, RelationshipErrorHandlerFactory = mended });
        }
    }

    private static ImmutableArray<RawSheet> Sheets(SpreadsheetDocument document, string name, int index)
    {
        var workbook = document.WorkbookPart ?? throw new InvalidDataException("it has no workbook part");
        var from1904 = workbook.Workbook?.WorkbookProperties?.Date1904?.Value ?? false;
        var texts = SharedTexts.Of(workbook, name);
        var looks = NumberFormats.Looks(workbook);
        var sheets = ImmutableArray.CreateBuilder<RawSheet>();
        foreach (var sheet in workbook.Workbook?.Sheets?.Elements<Sheet>() ?? [])
        {
            var title = sheet.Name?.Value ?? "";
            if (sheet.Id?.Value is not { } id || !workbook.TryGetPartById(id, out var part) || part is not WorksheetPart worksheet) continue;
            var place = new CellRef(index, sheets.Count, name + "/" + title);
            var xml = new SheetXml(texts, looks, from1904, name);
            var rows = xml.Rows(worksheet);
            sheets.Add(new RawSheet
            {
                Place = place,
                Name = title,
                Rows = rows,
                Merged = xml.Merged,
                Spread = xml.Spread,
                Hidden = sheet.State is { } state && state.Value != SheetStateValues.Visible,
            });
        }

        return sheets.ToImmutable();
    }

    /// <summary>The bytes of a file, also while another program has it open.</summary>
    /// <param name="path">Path of the file.</param>
    /// <param name="name">Its name, for refusals.</param>
    /// <exception cref="BookException">It cannot be opened or is too large.</exception>
    public static byte[] Bytes(string path, string name) => FileBytes.Read(path, name, GreatestFile);
}
