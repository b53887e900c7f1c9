using System.Xml.Linq;
using Batch.Books.Editing;
using Batch.Books.Headers;

namespace Batch.Books.Marking;

/// <summary>The computed columns beside the legs.</summary>
internal static class ResultColumns
{
    private static ImmutableArray<string> Names(WeightUnit unit) =>
        ["state", "block time [h:mm]", $"fuel required [{unit}]", $"fuel aboard [{unit}]", $"takeoff weight [{unit}]"];

    /// <summary>Width of each column [characters].</summary>
    private const double Width = 14;

    /// <summary>Takes the columns of an earlier run away.</summary>
    /// <param name="edit">The changes to the sheet.</param>
    /// <param name="header">The header row.</param>
    public static void Remove(SheetEdit edit, HeaderMatch header)
    {
        foreach (var column in header.Results)
        {
            foreach (var row in edit.Sheet.Rows.Values.Where(row => row.Number >= header.Row))
            {
                if (row.Cell(column) is { } cell) edit.Remove(row.Number, cell);
            }
        }
    }

    /// <summary>Writes the columns behind the last one in use.</summary>
    /// <param name="edit">The changes to the sheet.</param>
    /// <param name="header">The header row.</param>
    /// <param name="styles">The styles of the workbook.</param>
    /// <param name="marks">The styles of marks.</param>
    /// <param name="unit">The unit of the weights.</param>
    /// <param name="legs">What is written, by row.</param>
    public static void Write(
        SheetEdit edit, HeaderMatch header, StylesPart styles, MarkStyles marks, WeightUnit unit, IEnumerable<(int Row, LegResult Leg)> legs)
    {
        var names = Names(unit);
        var rows = edit.Sheet.Rows.Values.Where(row => row.Number >= header.Row).SelectMany(row => row.Cells)
            .Where(cell => !header.Results.Contains(cell.Column));
        var last = rows.Select(cell => cell.Column).DefaultIfEmpty(0).Max();
        int Format(int numberFormat) => StylesPart.FindOrAdd(styles.CellFormats, styles.Made(
            "xf", new XAttribute("numFmtId", numberFormat), new XAttribute("fontId", 0), new XAttribute("fillId", 0), new XAttribute("borderId", 0),
            new XAttribute("xfId", 0),
            new XAttribute("applyNumberFormat", 1), new XAttribute("applyAlignment", 1), styles.Made("alignment", new XAttribute("horizontal", "center"))));
        var (plain, time, weight) = (Format(0), Format(styles.NumberFormat("[h]:mm")), Format(3));
        var headerStyle = marks.Unmarked(edit.Sheet.StyleAt(header.Row, header.Placed.Values.Select(placed => placed.Column).DefaultIfEmpty(1).Max()));
        edit.Widen(last + 1, last + names.Length, Width);
        for (var i = 0; i < names.Length; i++) edit.Put(header.Row, last + 1 + i, headerStyle, CellValue.Of(Sheets.AllSheets.ResultPrefix + names[i]));
        foreach (var (row, leg) in legs)
        {
            edit.Put(row, last + 1, leg.Mark is { } state ? marks.Marked(plain, state) : plain, CellValue.Of(leg.State));
            edit.Put(row, last + 2, time, CellValue.Of(leg.BlockTime?.TotalDays));
            edit.Put(row, last + 3, weight, CellValue.Of(Rounded(leg.FuelRequired)));
            edit.Put(row, last + 4, weight, CellValue.Of(Rounded(leg.FuelAboard)));
            edit.Put(row, last + 5, weight, CellValue.Of(Rounded(leg.TakeoffWeight)));
        }
    }

    private static double? Rounded(double? weight) => weight is { } number ? Math.Round(number) : null;
}
