using ClosedXML.Excel;

namespace Batch.Books.Tests.Support;

/// <summary>
/// Week books as different programs write them, each with a Legs sheet of three legs of trip R1 in rows 4 to 6 (in row 2 to 4 where a library made it).
/// </summary>
internal static class FixtureBooks
{
    public static string PathOf(string name) => Path.Combine(Testing.RepositoryRoot.Folder, "tests", "Batch.Books.Tests", "Books", name);

    private static readonly System.Collections.Concurrent.ConcurrentDictionary<string, byte[]> Made = new(StringComparer.Ordinal);

    public static byte[] Bytes(string kind) => Made.GetOrAdd(kind, Make);

    private static byte[] Make(string kind) => kind switch
    {
        "desktop" => File.ReadAllBytes(PathOf("desktop.xlsx")),
        "libreoffice" => File.ReadAllBytes(PathOf("libreoffice.xlsx")),
        "strict" => Parts.Changed(Bytes("desktop"), (_, text) => text
            .Replace("http://schemas.openxmlformats.org/spreadsheetml/2006/main", "http://purl.oclc.org/ooxml/spreadsheetml/main", StringComparison.Ordinal)
            .Replace("http://schemas.openxmlformats.org/officeDocument/2006/relationships", "http://purl.oclc.org/ooxml/officeDocument/relationships",
                StringComparison.Ordinal)),
        "1904" => Parts.Changed(Bytes("desktop"),
            (name, text) => name == "xl/workbook.xml" ? text.Replace("<workbookPr ", "<workbookPr date1904=\"1\" ", StringComparison.Ordinal) : text),
        "library" => Library(),
        _ => throw new ArgumentException(kind, nameof(kind)),
    };

    /// <summary>The cells that the tests mark, by kind of book: one with a comment of the user, one with a formula, one with a fill.</summary>
    public static (string Commented, string Formula, string Filled) Cells(string kind) => kind == "library" ? ("G3", "B3", "E2") : ("G5", "B5", "E4");

    private static byte[] Library()
    {
        using var folder = new TempFolder();
        var path = GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"), book =>
        {
            var legs = book.Worksheet("Legs");
            legs.Cell("G3").Comment.AddText("asked the client twice");
            legs.Cell("B3").FormulaA1 = "B2+1";
            legs.Cell("E2").Style.Fill.BackgroundColor = XLColor.FromArgb(0xCF, 0xE8, 0xFF);
            legs.Range("A1:S4").SetAutoFilter();
            legs.Range("S2:S4").AddConditionalFormat().WhenGreaterThan(700).Font.SetFontColor(XLColor.Red);
            legs.Column(7).Width = 17.5;
            book.NamedRanges.Add("Fields", legs.Range("F2:F4"));
        });
        return File.ReadAllBytes(path);
    }
}
