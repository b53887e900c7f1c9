using ClosedXML.Excel;

namespace Batch.Books.Starter;

/// <summary>Writes a starter book.</summary>
internal static class StarterWorkbook
{
    /// <summary>The workbook.</summary>
    /// <param name="book"><c>operator</c> or <c>week</c>.</param>
    /// <param name="days">By how many days the dates of the example move.</param>
    public static byte[] Make(string book, int days)
    {
        using var workbook = new XLWorkbook();
        workbook.Properties.Author = "tripbatch";
        workbook.Properties.Title = $"Starter {book} book - invented, not for navigation";
        ReadMePage.Write(workbook.Worksheets.Add(Sheets.AllSheets.Explanations), book);
        foreach (var sheet in ColumnCatalogue.Sheets.Where(sheet => sheet.Book == book))
        {
            var page = workbook.Worksheets.Add(sheet.Name);
            if (sheet.Items.IsEmpty) StarterSheet.Write(page, sheet, Columns(sheet, days));
            else ItemSheet.Write(page, sheet, ExampleSheet.Of(book, sheet.Name));
        }

        if (book == "week") ListsPage.Write(workbook.Worksheets.Add(Sheets.AllSheets.Lists));
        using var stream = new MemoryStream();
        workbook.SaveAs(stream);
        return stream.ToArray();
    }

    private static ImmutableArray<StarterColumn> Columns(CatalogueSheet sheet, int days)
    {
        var example = ExampleSheet.Of(sheet.Book, sheet.Name).Moved(days);
        var known = sheet.Columns.Select(column => StarterColumn.Of(column, example.Column(column.Name))).ToImmutableArray();
        var others = example.Headers.Where(header => !known.Any(column => column.Name == header)).ToImmutableArray();
        if (others.Length > 0 && !sheet.TakesAnySpeed)
            throw new InvalidOperationException($"The example of {sheet.Name} has a column {others[0]} that the sheet does not know.");
        return known.AddRange(others.Select(name => StarterColumn.Speed(name, example.Column(name))));
    }
}
