using ClosedXML.Excel;

namespace Batch.Books.Starter;

/// <summary>Writes the Operator sheet: one item a row, each explained in a comment.</summary>
internal static class ItemSheet
{
    /// <summary>Fills a page.</summary>
    /// <param name="page">An empty page.</param>
    /// <param name="sheet">The Operator sheet.</param>
    /// <param name="example">Its example.</param>
    public static void Write(IXLWorksheet page, CatalogueSheet sheet, ExampleSheet example)
    {
        PageLook.Title(page, sheet.Meaning + "  The values are those of an invented operator: set your own.");
        page.Column(1).Width = 28;
        page.Column(2).Width = 52;
        for (var i = 0; i < sheet.Columns.Length; i++)
        {
            PageLook.Header(page.Cell(PageLook.HeaderRow, i + 1), sheet.Columns[i].Header, sheet.Columns[i].IsRequired);
            PageLook.Comment(page.Cell(PageLook.HeaderRow, i + 1), StarterColumn.Explain(sheet.Columns[i]));
        }

        for (var i = 0; i < example.Rows.Length; i++)
        {
            var item = sheet.Items.First(item => item.Name == example.Rows[i][0]);
            var row = PageLook.FirstRow + i;
            page.Cell(row, 1).SetValue(item.Header);
            PageLook.Comment(page.Cell(row, 1), StarterColumn.Explain(item));
            StarterSheet.Put(page.Cell(row, 2), StarterColumn.Of(item, [example.Rows[i][1]]), example.Rows[i][1]);
            page.Cell(row, 2).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Left;
            if (item.Words.Length > 0) DropDown.OfWords(page.Range(row, 2, row, 2), item.Words, isOpen: false);
        }

        PageLook.Finish(page, 1);
    }
}
