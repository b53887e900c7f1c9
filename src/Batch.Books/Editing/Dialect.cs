namespace Batch.Books.Editing;

/// <summary>The two editions of the workbook standard, which differ in their addresses (ECMA-376 part 1 strict, part 4 transitional).</summary>
internal static class Dialect
{
    /// <summary>The namespace of sheets, styles and comments.</summary>
    public static string Sheets(bool strict) =>
        strict ? "http://purl.oclc.org/ooxml/spreadsheetml/main" : "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>The namespace of relationship ids, and the beginning of relationship types.</summary>
    public static string Relations(bool strict) =>
        strict ? "http://purl.oclc.org/ooxml/officeDocument/relationships" : "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
}
