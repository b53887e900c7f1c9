using System.Globalization;
using System.Security;
using System.Text;

namespace Batch.Sheets.Register;

/// <summary>The small parts of the workbook of the register, as text (ECMA-376, Office Open XML, SpreadsheetML).</summary>
internal static class WorkbookParts
{
    private const string Declaration = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Right = "horizontal=\"right\" indent=\"1\" ";
    private const string Left = "horizontal=\"left\" ";
    private const string Package = "http://schemas.openxmlformats.org/package/2006/relationships";

    /// <summary>What the package holds.</summary>
    public static string ContentTypes(int sheets) => Declaration
        + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/>"
        + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
        + "<Override PartName=\"/xl/styles.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/>"
        + string.Concat(Numbers(sheets).Select(n =>
            $"<Override PartName=\"/xl/worksheets/sheet{n}.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>"))
        + "</Types>";

    /// <summary>Where the package begins.</summary>
    public static string PackageRelations => Declaration
        + $"<Relationships xmlns=\"{Package}\"><Relationship Id=\"rId1\" Type=\"{Relations}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>";

    /// <summary>The parts of the workbook.</summary>
    public static string WorkbookRelations(int sheets) => Declaration
        + $"<Relationships xmlns=\"{Package}\">"
        + string.Concat(Numbers(sheets).Select(n => $"<Relationship Id=\"rId{n}\" Type=\"{Relations}/worksheet\" Target=\"worksheets/sheet{n}.xml\"/>"))
        + $"<Relationship Id=\"rIdS\" Type=\"{Relations}/styles\" Target=\"styles.xml\"/></Relationships>";

    /// <summary>The workbook: its sheets, their filters and the header row that is printed on every page.</summary>
    /// <param name="sheets">Names and ranges, such as <c>$A$1:$H$20</c>.</param>
    public static string Workbook(IReadOnlyList<(string Name, string Range)> sheets)
    {
        var names = sheets.Select((sheet, index) =>
            $"<definedName name=\"_xlnm._FilterDatabase\" localSheetId=\"{Number(index)}\" hidden=\"1\">{Escaped(sheet.Name)}!{sheet.Range}</definedName>")
            .Concat(sheets.Select((sheet, index) =>
                $"<definedName name=\"_xlnm.Print_Titles\" localSheetId=\"{Number(index)}\">{Escaped(sheet.Name)}!$1:$1</definedName>"));
        return Declaration
            + $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Relations}\"><bookViews><workbookView activeTab=\"0\"/></bookViews><sheets>"
            + string.Concat(
                sheets.Select((sheet, index) => $"<sheet name=\"{Escaped(sheet.Name)}\" sheetId=\"{Number(index + 1)}\" r:id=\"rId{Number(index + 1)}\"/>"))
            + $"</sheets><definedNames>{string.Concat(names)}</definedNames></workbook>";
    }

    /// <summary>
    /// The looks, in the order of <see cref="CellStyle"/>. Red and amber are those of 14 CFR 25.1322, light enough for black print; every state is also a word.
    /// </summary>
    public static string Styles => Declaration
        + $"<styleSheet xmlns=\"{Main}\">"
        + "<numFmts count=\"4\"><numFmt numFmtId=\"164\" formatCode=\"#,##0.##\"/><numFmt numFmtId=\"165\" formatCode=\"#,##0.0\"/><numFmt numFmtId=\"166\" formatCode=\"yyyy\\-mm\\-dd\"/><numFmt numFmtId=\"167\" formatCode=\"yyyy\\-mm\\-dd\\ hh:mm\"/></numFmts>"
        + "<fonts count=\"3\"><font><sz val=\"9\"/><name val=\"Arial\"/></font><font><b/><sz val=\"9\"/><name val=\"Arial\"/></font><font><u/><sz val=\"9\"/><color rgb=\"FF1F4E8C\"/><name val=\"Arial\"/></font></fonts>"
        + "<fills count=\"6\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill>" + Fill("FFE6E8EB")
            + Fill("FFF6C9C4") + Fill("FFFBE3A6") + Fill("FFEDEDED") + "</fills>"
        + "<borders count=\"2\"><border><left/><right/><top/><bottom/><diagonal/></border><border><left/><right/><top/><bottom style=\"thin\"><color rgb=\"FF8A9099\"/></bottom><diagonal/></border></borders>"
        + "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>"
        + "<cellXfs count=\"14\">"
        + Look(0, 0, 0) + Look(0, 1, 2, border: 1, wraps: true) + Look(0, 0, 0, wraps: true) + Look(164, 0, 0, side: Right) + Look(3, 0, 0, side: Right)
            + Look(165, 0, 0, side: Right) + Look(166, 0, 0, side: Left) + Look(167, 0, 0, side: Left)
        + Look(0, 1, 3) + Look(0, 1, 4) + Look(0, 0, 5) + Look(0, 2, 0) + Look(0, 1, 0) + Look(165, 1, 0, side: Right)
        + "</cellXfs><cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/></cellStyles></styleSheet>";

    /// <summary>A text as it stands in an attribute or element.</summary>
    public static string Escaped(string text) => SecurityElement.Escape(text) ?? "";

    private static string Fill(string colour) =>
        $"<fill><patternFill patternType=\"solid\"><fgColor rgb=\"{colour}\"/><bgColor indexed=\"64\"/></patternFill></fill>";

    private static string Look(int format, int font, int fill, int border = 0, bool wraps = false, string side = "")
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"<xf numFmtId=\"{format}\" fontId=\"{font}\" fillId=\"{fill}\" borderId=\"{border}\" xfId=\"0\" applyNumberFormat=\"1\" applyFont=\"1\" applyFill=\"1\" applyBorder=\"1\" applyAlignment=\"1\">");
        return text.Append("<alignment ").Append(side).Append("vertical=\"top\"").Append(wraps ? " wrapText=\"1\"" : "").Append("/></xf>").ToString();
    }

    private static IEnumerable<string> Numbers(int sheets) => Enumerable.Range(1, sheets).Select(Number);

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
