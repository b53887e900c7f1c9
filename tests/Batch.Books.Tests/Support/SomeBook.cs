using System.Globalization;
using System.Text;
using ClosedXML.Excel;

namespace Batch.Books.Tests.Support;

/// <summary>A book made in memory: sheets of rows of text, numbers, dates, times and truth values. Written as a workbook or as csv files.</summary>
internal sealed class SomeBook
{
    public SomeBook(params (string Sheet, object?[][] Rows)[] sheets) =>
        Sheets = [.. sheets.Select(sheet => (sheet.Sheet, sheet.Rows.Select(row => row.ToArray()).ToList()))];

    public List<(string Name, List<object?[]> Rows)> Sheets { get; }

    public List<object?[]> this[string name] => Sheets.Single(sheet => sheet.Name == name).Rows;

    /// <summary>Sets the cell of a column, by its header in the first row, in the n-th data row (from 1).</summary>
    public SomeBook Set(string sheet, int dataRow, string header, object? value)
    {
        var rows = this[sheet];
        var column = Array.FindIndex(rows[0], cell => cell is string text && (text == header || text.StartsWith(header + " [", StringComparison.Ordinal)));
        Assert.True(column >= 0, $"{sheet} has no column {header}");
        if (rows[dataRow].Length <= column) rows[dataRow] = [.. rows[dataRow], .. new object?[column + 1 - rows[dataRow].Length]];
        rows[dataRow][column] = value;
        return this;
    }

    /// <summary>The cell of a column, by its header in the first row, such as <c>F3</c>.</summary>
    public string Cell(string sheet, int dataRow, string header)
    {
        var column = Array.FindIndex(this[sheet][0], cell => cell is string text && (text == header
            || text.StartsWith(header + " [", StringComparison.Ordinal)));
        return XLHelper.GetColumnLetterFromNumber(column + 1) + (dataRow + 1).ToString(CultureInfo.InvariantCulture);
    }

    public SomeBook Add(string sheet, params object?[] row)
    {
        this[sheet].Add(row);
        return this;
    }

    public SomeBook Rename(string sheet, string name)
    {
        var at = Sheets.FindIndex(one => one.Name == sheet);
        Sheets[at] = (name, Sheets[at].Rows);
        return this;
    }

    public string SaveXlsx(string path, Action<XLWorkbook>? change = null)
    {
        using var book = new XLWorkbook();
        foreach (var (name, rows) in Sheets)
        {
            var sheet = book.AddWorksheet(name);
            for (var r = 0; r < rows.Count; r++)
            {
                for (var c = 0; c < rows[r].Length; c++) Put(sheet.Cell(r + 1, c + 1), rows[r][c]);
            }
        }

        change?.Invoke(book);
        book.SaveAs(path);
        return path;
    }

    public string SaveCsv(string folder, char delimiter = ',', Encoding? encoding = null, bool decimalComma = false, string newLine = "\r\n", string only = "")
    {
        Directory.CreateDirectory(folder);
        foreach (var (name, rows) in Sheets.Where(sheet => only.Length == 0 || sheet.Name == only))
        {
            var text = new StringBuilder();
            foreach (var row in rows) text.Append(string.Join(delimiter, row.Select(cell => Quoted(Text(cell, decimalComma), delimiter)))).Append(newLine);
            File.WriteAllText(Path.Combine(folder, name + ".csv"), text.ToString(), encoding ?? new UTF8Encoding(false));
        }

        return folder;
    }

    private static void Put(IXLCell cell, object? value)
    {
        switch (value)
        {
            case null:
                break;
            case string text:
                cell.SetValue(text);
                cell.DataType = XLDataType.Text;
                break;
            case double number:
                cell.SetValue(number);
                break;
            case int number:
                cell.SetValue(number);
                break;
            case bool truth:
                cell.SetValue(truth);
                break;
            case DateTime date:
                cell.SetValue(date);
                cell.Style.NumberFormat.Format = date.TimeOfDay == TimeSpan.Zero ? "yyyy-mm-dd" : "yyyy-mm-dd hh:mm";
                break;
            case TimeSpan time:
                cell.SetValue(time.TotalDays);
                cell.DataType = XLDataType.Number;
                cell.Style.NumberFormat.Format = "hh:mm";
                break;
            default:
                throw new ArgumentException(value.GetType().Name, nameof(value));
        }
    }

    private static string Text(object? value, bool decimalComma) => value switch
    {
        null => "",
        string text => text,
        double number => number.ToString("R", CultureInfo.InvariantCulture).Replace('.', decimalComma ? ',' : '.'),
        int number => number.ToString(CultureInfo.InvariantCulture),
        bool truth => truth ? "TRUE" : "FALSE",
        DateTime date => date.ToString(date.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : "yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture),
        TimeSpan time => time.ToString("hh\\:mm", CultureInfo.InvariantCulture),
        _ => throw new ArgumentException(value.GetType().Name, nameof(value)),
    };

    private static string Quoted(string text, char delimiter) =>
        text.AsSpan().IndexOfAny([delimiter, '"', '\n', '\r']) >= 0 ? "\"" + text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"" : text;
}
