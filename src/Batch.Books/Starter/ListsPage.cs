using ClosedXML.Excel;

namespace Batch.Books.Starter;

/// <summary>The page of idents that the drop-downs of the week book offer: a workbook cannot offer the cells of another.</summary>
internal static class ListsPage
{
    private static readonly ImmutableArray<(string Name, string Sheet, string Column, ImmutableArray<string> UsedBy)> All =
    [
        ("Aircraft", "Aircraft", "Registration", ["Aircraft"]),
        ("Airports", "Airports", "Ident", ["From", "To", "Alternate", "Second alternate"]),
        ("Crew", "Crew", "Code", ["Captain", "Second pilot"]),
        ("Settings", "Cruise", "Setting", ["Setting"]),
    ];

    /// <summary>The column of the page, A = 1, that lists what a column of the week book may hold; null for none.</summary>
    /// <param name="sheet">Sheet of the week book.</param>
    /// <param name="column">Name of its column.</param>
    public static int? ColumnOf(string sheet, string column)
    {
        for (var i = 0; i < All.Length; i++)
        {
            if (sheet == "Legs" && All[i].UsedBy.Contains(column, StringComparer.Ordinal)) return i + 1;
        }

        return null;
    }

    /// <summary>Fills the page.</summary>
    /// <param name="page">An empty page.</param>
    public static void Write(IXLWorksheet page)
    {
        PageLook.Title(page,
            "What the drop-downs of Legs offer. Keep it in step with the operator book, without gaps; the program itself does not read this page.");
        for (var i = 0; i < All.Length; i++)
        {
            page.Column(i + 1).Width = 14;
            PageLook.Header(page.Cell(PageLook.HeaderRow, i + 1), All[i].Name, required: false);
            var idents = ExampleSheet.Of("operator", All[i].Sheet).Column(All[i].Column).Distinct(StringComparer.Ordinal).ToList();
            if (All[i].Name == "Settings") idents.Add("auto");
            for (var row = 0; row < idents.Count; row++) page.Cell(PageLook.FirstRow + row, i + 1).SetValue(idents[row]);
        }

        PageLook.Finish(page, 0);
    }
}
