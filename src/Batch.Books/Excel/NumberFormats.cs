using System.Globalization;
using Batch.Books.Cells;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Batch.Books.Excel;

/// <summary>How each cell style of a workbook shows numbers.</summary>
internal static class NumberFormats
{
    /// <summary>The looks by style index; empty where the workbook has no styles.</summary>
    public static NumberLook[] Looks(WorkbookPart workbook)
    {
        if (workbook.WorkbookStylesPart?.Stylesheet is not { CellFormats: { } formats } sheet) return [];
        var own = new Dictionary<uint, string>();
        foreach (var format in sheet.NumberingFormats?.Elements<NumberingFormat>() ?? [])
        {
            if (format.NumberFormatId?.Value is { } id) own[id] = format.FormatCode?.Value ?? "";
        }

        return [.. formats.Elements<CellFormat>().Select(format => Look(format.NumberFormatId?.Value ?? 0, own))];
    }

    /// <summary>What a format code shows.</summary>
    public static NumberLook Look(string code)
    {
        var look = NumberLook.Plain;
        for (var i = 0; i < code.Length; i++)
        {
            switch (char.ToLowerInvariant(code[i]))
            {
                case '"':
                    i = code.IndexOf('"', i + 1);
                    if (i < 0) return look;
                    break;
                case '\\' or '_' or '*':
                    i++;
                    break;
                case '[':
                    var end = code.IndexOf(']', i + 1);
                    if (end < 0) return look;
                    if (code[i + 1] is 'h' or 'H' or 'm' or 'M' or 's' or 'S') look |= NumberLook.Clock;
                    i = end;
                    break;
                case 'd' or 'y':
                    look |= NumberLook.Date;
                    break;
                case 'h' or 's':
                    look |= NumberLook.Clock;
                    break;
                case 'g' when code.AsSpan(i).StartsWith("General", StringComparison.OrdinalIgnoreCase):
                    i += "General".Length - 1;
                    break;
                case '%':
                    look |= NumberLook.Percent;
                    break;
                case ';':
                    return look;
                default:
                    break;
            }
        }

        return look;
    }

    // The built-in formats with a date or a time (ECMA-376 part 1, 18.8.30); 27 to 36 and 50 to 58 are dates in the East Asian editions.
    private static NumberLook Look(uint id, Dictionary<uint, string> own) => id switch
    {
        _ when own.TryGetValue(id, out var code) && code.Length > 0 => Look(code),
        9 or 10 => NumberLook.Percent,
        (>= 14 and <= 17) or (>= 27 and <= 31) or 36 or (>= 50 and <= 54) or 57 or 58 => NumberLook.Date,
        22 => NumberLook.Date | NumberLook.Clock,
        (>= 18 and <= 21) or (>= 32 and <= 35) or (>= 45 and <= 47) or 55 or 56 => NumberLook.Clock,
        _ => NumberLook.Plain,
    };

    /// <summary>The style index of a cell as text; 0 where it is none.</summary>
    public static int Style(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var style) ? style : 0;
}
