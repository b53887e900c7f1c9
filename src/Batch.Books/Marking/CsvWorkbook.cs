using System.Globalization;
using System.Text;
using Batch.Books.Cells;
using Batch.Books.Editing;
using Batch.Books.Packages;

namespace Batch.Books.Marking;

/// <summary>A plain workbook of the csv files of a folder: every cell as the text it was, in the same place.</summary>
internal static class CsvWorkbook
{
    private const string Declaration = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private const string Types = "application/vnd.openxmlformats-officedocument.spreadsheetml.";
    private const string PackageRelations = "http://schemas.openxmlformats.org/package/2006/relationships";
    private const int LongestName = 31;

    /// <summary>Whether every sheet has a name that a workbook allows.</summary>
    public static bool CanHold(RawBook book) => book.Sheets.All(sheet => sheet.Name.Length is > 0 and <= LongestName
        && sheet.Name.IndexOfAny(['[', ']', ':', '*', '?', '/', '\\']) < 0
        && sheet.Name[0] != '\''
        && sheet.Name[^1] != '\'');

    /// <summary>The package.</summary>
    /// <param name="book">The book; <see cref="CanHold"/> is true.</param>
    public static Package Make(RawBook book)
    {
        var package = new Package();
        var (types, sheets, relations) = (new StringBuilder(), new StringBuilder(), new StringBuilder());
        var (main, ids) = (Dialect.Sheets(strict: false), Dialect.Relations(strict: false));
        for (var i = 1; i <= book.Sheets.Length; i++)
        {
            types.Append(CultureInfo.InvariantCulture, $"<Override PartName=\"/xl/worksheets/sheet{i}.xml\" ContentType=\"{Types}worksheet+xml\"/>");
            sheets.Append(CultureInfo.InvariantCulture, $"<sheet name=\"{XmlPart.Escaped(book.Sheets[i - 1].Name)}\" sheetId=\"{i}\" r:id=\"rId{i}\"/>");
            relations.Append(CultureInfo.InvariantCulture, $"<Relationship Id=\"rId{i}\" Type=\"{ids}/worksheet\" Target=\"/xl/worksheets/sheet{i}.xml\"/>");
        }

        Put("[Content_Types].xml", $"<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"{Types}sheet.main+xml\"/>{types}</Types>");
        Put("_rels/.rels", $"<Relationships xmlns=\"{PackageRelations}\"><Relationship Id=\"rId1\" Type=\"{ids}/officeDocument\" Target=\"/xl/workbook.xml\"/></Relationships>");
        Put("xl/workbook.xml", $"<workbook xmlns=\"{main}\" xmlns:r=\"{ids}\"><sheets>{sheets}</sheets></workbook>");
        Put("xl/_rels/workbook.xml.rels", $"<Relationships xmlns=\"{PackageRelations}\">{relations}</Relationships>");
        for (var i = 1; i <= book.Sheets.Length; i++) Put($"xl/worksheets/sheet{i.ToString(CultureInfo.InvariantCulture)}.xml",
            $"<worksheet xmlns=\"{main}\"><sheetData>{Rows(book.Sheets[i - 1])}</sheetData></worksheet>");
        return package;

        void Put(string name, string text) => package.Put(name, Encoding.UTF8.GetBytes(Declaration + text));
    }

    private static StringBuilder Rows(RawSheet sheet)
    {
        var text = new StringBuilder();
        foreach (var row in sheet.Rows.Where(row => row.Number <= SheetText.LastRow))
        {
            text.Append(CultureInfo.InvariantCulture, $"<row r=\"{row.Number}\">");
            for (var i = 0; i < row.Cells.Length; i++)
            {
                if (!row.Cells[i].IsBlank)
                    text.Append(CellValue.Of(row.Cells[i].Text).Xml("", CellRef.Letters(i + 1) + row.Number.ToString(CultureInfo.InvariantCulture), 0));
            }

            text.Append("</row>");
        }

        return text;
    }
}
