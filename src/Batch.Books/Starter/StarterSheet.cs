using System.Globalization;
using ClosedXML.Excel;
using NodaTime.Text;

namespace Batch.Books.Starter;

/// <summary>Writes a sheet of rows: title, headers, example rows, drop-downs.</summary>
internal static class StarterSheet
{
    /// <summary>Fills a page.</summary>
    /// <param name="page">An empty page.</param>
    /// <param name="sheet">What it holds.</param>
    /// <param name="columns">Its columns with their example cells.</param>
    public static void Write(IXLWorksheet page, CatalogueSheet sheet, ImmutableArray<StarterColumn> columns)
    {
        PageLook.Title(page, sheet.Meaning + (columns.Any(column => column.Cells.Length > 0)
            ? "  Example rows: invented, not for navigation. Replace them."
            : "  No example rows; fill it or leave it empty."));
        for (var i = 0; i < columns.Length; i++)
        {
            var column = columns[i];
            page.Column(i + 1).Width = column.Width;
            page.Column(i + 1).Style.NumberFormat.Format = column.Format;
            page.Column(i + 1).Style.Alignment.Horizontal = Alignment(column.Kind);
            PageLook.Header(page.Cell(PageLook.HeaderRow, i + 1), column.Header, column.IsRequired);
            PageLook.Comment(page.Cell(PageLook.HeaderRow, i + 1), column.Explanation);
            DropDown.Offer(page, i + 1, sheet, column);
            for (var row = 0; row < column.Cells.Length; row++) Put(page.Cell(PageLook.FirstRow + row, i + 1), column, column.Cells[row]);
        }

        PageLook.Title(page, page.Cell(PageLook.TitleRow, 1).GetString());
        PageLook.Finish(page, sheet.Name == "Legs" ? 2 : 1);
    }

    private static XLAlignmentHorizontalValues Alignment(ColumnKind kind) => kind switch
    {
        ColumnKind.Text or ColumnKind.Mixed => XLAlignmentHorizontalValues.Left,
        ColumnKind.Number => XLAlignmentHorizontalValues.Right,
        ColumnKind.Whole or ColumnKind.Date or ColumnKind.Time or ColumnKind.UtcDateTime => XLAlignmentHorizontalValues.Center,
    };

    /// <summary>Writes a text as what its column holds.</summary>
    public static void Put(IXLCell cell, StarterColumn column, string text)
    {
        cell.Style.NumberFormat.Format = column.Format;
        if (text.Length == 0) return;
        if (column.Kind != ColumnKind.Text && double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)) cell.SetValue(number);
        else if (column.Kind == ColumnKind.Date) cell.SetValue(LocalDatePattern.Iso.Parse(text).GetValueOrThrow().ToDateTimeUnspecified());
        else if (column.Kind == ColumnKind.Time) cell.SetValue(LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(text)
            .GetValueOrThrow().NanosecondOfDay / (double)NodaConstants.NanosecondsPerDay);
        else if (column.Kind == ColumnKind.UtcDateTime)
            cell.SetValue(LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm'Z'").Parse(text).GetValueOrThrow().ToDateTimeUnspecified());
        else cell.SetValue(text);
    }
}
