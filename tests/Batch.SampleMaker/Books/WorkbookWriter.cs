using ClosedXML.Excel;

namespace Batch.SampleMaker.Books;

/// <summary>Writes a book as xlsx, the same bytes each time.</summary>
public static class WorkbookWriter
{
    public static void Write(Book book, string path)
    {
        using var workbook = new XLWorkbook();
        workbook.Properties.Author = "tripbatch sample maker";
        workbook.Properties.Title = book.Name + " - invented, not for navigation";
        AddReadMe(workbook, book);
        foreach (var sheet in book.Sheets)
        {
            Add(workbook, sheet);
        }

        using var raw = new MemoryStream();
        workbook.SaveAs(raw);
        File.WriteAllBytes(path, FixedPackage.Rewrite(raw.ToArray()));
    }

    private static void AddReadMe(XLWorkbook workbook, Book book)
    {
        var page = workbook.Worksheets.Add("Read me");
        page.Column(1).Width = 110;
        for (var i = 0; i < book.ReadMe.Length; i++)
        {
            page.Cell(i + 1, 1).SetValue(book.ReadMe[i]);
            page.Cell(i + 1, 1).Style.Alignment.WrapText = true;
        }

        page.Cell(1, 1).Style.Font.Bold = true;
        page.Cell(1, 1).Style.Font.FontSize = 14;
    }

    private static void Add(XLWorkbook workbook, SheetTable sheet)
    {
        var page = workbook.Worksheets.Add(sheet.Name);
        page.Cell(1, 1).SetValue(sheet.Title);
        page.Cell(1, 1).Style.Font.Italic = true;
        page.Cell(1, 1).Style.Font.FontColor = XLColor.DimGray;
        for (var c = 0; c < sheet.Columns.Length; c++)
        {
            var column = sheet.Columns[c];
            page.Column(c + 1).Width = column.Width;
            var header = page.Cell(2, c + 1);
            header.SetValue(column.Header);
            header.Style.Font.Bold = true;
            header.Style.Fill.BackgroundColor = XLColor.FromArgb(0xDD, 0xE6, 0xEE);
            header.Style.Border.BottomBorder = XLBorderStyleValues.Thin;
            header.Style.Alignment.WrapText = true;
            header.Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
            if (sheet.Rows.Length > 0)
            {
                page.Range(3, c + 1, sheet.Rows.Length + 2, c + 1).Style.NumberFormat.Format = NumberFormat(column.Format);
            }
        }

        page.Row(2).Height = 32;
        for (var r = 0; r < sheet.Rows.Length; r++)
        {
            for (var c = 0; c < sheet.Columns.Length; c++)
            {
                Put(page.Cell(r + 3, c + 1), sheet.Rows[r][c]);
            }
        }

        page.SheetView.FreezeRows(2);
    }

    private static void Put(IXLCell cell, object? value)
    {
        switch (value)
        {
            case null:
                break;
            case string text:
                cell.SetValue(text);
                break;
            case int number:
                cell.SetValue(number);
                break;
            case double number:
                cell.SetValue(number);
                break;
            case LocalDate date:
                cell.SetValue(date.ToDateTimeUnspecified());
                break;
            case LocalTime time:
                cell.SetValue(time.NanosecondOfDay / (double)NodaConstants.NanosecondsPerDay);
                break;
            case Instant instant:
                cell.SetValue(instant.InUtc().ToDateTimeUnspecified());
                break;
            default:
                throw new InvalidOperationException($"No cell for a value of {value.GetType().Name}.");
        }
    }

    private static string NumberFormat(CellFormat format) => format switch
    {
        CellFormat.Text => "@",
        CellFormat.Whole => "#,##0",
        CellFormat.Tenths => "#,##0.0",
        CellFormat.Hundredths => "#,##0.00",
        CellFormat.Degrees => "0.0000",
        CellFormat.Date => "yyyy-mm-dd",
        CellFormat.Time => "hh:mm",
        CellFormat.UtcDateTime => "yyyy-mm-dd hh:mm",
    };
}
