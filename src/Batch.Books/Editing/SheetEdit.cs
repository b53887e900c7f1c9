using System.Globalization;
using Batch.Books.Cells;
using Batch.Books.Packages;

namespace Batch.Books.Editing;

/// <summary>Changes to single cells of a sheet. Whatever is not named keeps its every character: formulas, formats, rows, filters, rules.</summary>
internal sealed class SheetEdit(SheetText sheet)
{
    // What stands before the drawing of comments in a worksheet (ECMA-376 part 1, 18.3.1.99).
    private static readonly HashSet<string> BeforeLegacyDrawing = new(StringComparer.Ordinal)
    {
        "sheetPr", "dimension", "sheetViews", "sheetFormatPr", "cols", "sheetData", "sheetCalcPr", "sheetProtection", "protectedRanges", "scenarios",
        "autoFilter", "sortState", "dataConsolidate",
        "customSheetViews", "mergeCells", "phoneticPr", "conditionalFormatting", "dataValidations", "hyperlinks", "printOptions", "pageMargins", "pageSetup",
        "headerFooter", "rowBreaks", "colBreaks",
        "customProperties", "cellWatches", "ignoredErrors", "smartTags", "drawing",
    };

    private readonly Splices _splices = new();
    private readonly HashSet<(int Row, int Column)> _removed = [];
    private readonly SortedDictionary<int, SortedDictionary<int, string>> _put = [];

    /// <summary>The sheet as it was.</summary>
    public SheetText Sheet => sheet;

    /// <summary>Sets the style of a cell that is there.</summary>
    public void SetStyle(CellPlace cell, int style)
    {
        if (cell.Style == style) return;
        var number = style.ToString(CultureInfo.InvariantCulture);
        if (cell.Tag.ValueRange(sheet.Text, "s") is not { } range) _splices.Insert(cell.Tag.NameEnd, $" s=\"{number}\"");
        else _splices.Replace(range.Start.Value, range.End.Value, number);
    }

    /// <summary>Takes a cell away.</summary>
    public void Remove(int row, CellPlace cell)
    {
        _splices.Replace(cell.Tag.Start, cell.End, "");
        _removed.Add((row, cell.Column));
    }

    /// <summary>Writes a cell: in the place of the one that is there, or between its neighbours.</summary>
    /// <param name="row">Row, 1 or more.</param>
    /// <param name="column">Column, A = 1.</param>
    /// <param name="style">Style index.</param>
    /// <param name="value">What it holds; <see cref="CellValue.Empty"/> for a cell that only has a style.</param>
    public void Put(int row, int column, int style, CellValue value)
    {
        var text = value.Xml(sheet.Prefix, CellRef.Letters(column) + row.ToString(CultureInfo.InvariantCulture), style);
        if (sheet.Rows.TryGetValue(row, out var place) && place.Cell(column) is { } cell && !_removed.Contains((row, column)))
        {
            _splices.Replace(cell.Tag.Start, cell.End, text);
            return;
        }

        if (!_put.TryGetValue(row, out var cells)) _put.Add(row, cells = []);
        cells[column] = text;
    }

    /// <summary>Sets the width of columns where none is set.</summary>
    /// <param name="first">First column.</param>
    /// <param name="last">Last column.</param>
    /// <param name="width">Width [characters].</param>
    public void Widen(int first, int last, double width)
    {
        if (Enumerable.Range(first, last - first + 1).Any(sheet.HasWidth)) return;
        var column = string.Create(CultureInfo.InvariantCulture, $"<{sheet.Prefix}col min=\"{first}\" max=\"{last}\" width=\"{width}\" customWidth=\"1\"/>");
        if (sheet.ColumnsClose is { IsClose: true } close) _splices.Insert(close.Start, column);
        else _splices.Insert(sheet.Data.Start, $"<{sheet.Prefix}cols>{column}</{sheet.Prefix}cols>");
    }

    /// <summary>Names the drawing of the sheet's comments.</summary>
    /// <param name="id">Id of the relationship to it.</param>
    public void SetLegacyDrawing(string id)
    {
        var at = sheet.Root.End;
        for (var tag = XmlTags.Next(sheet.Text, sheet.Root.End); tag is { IsClose: false } child; tag = XmlTags.Next(sheet.Text, at))
        {
            var end = XmlTags.Close(sheet.Text, child).End;
            if (!BeforeLegacyDrawing.Contains(child.LocalName(sheet.Text))) break;
            at = end;
        }

        _splices.Insert(at, $"<{sheet.Prefix}legacyDrawing xmlns:r=\"{Dialect.Relations(sheet.IsStrict)}\" r:id=\"{id}\"/>");
    }

    /// <summary>Replaces a range of the part outside its cells.</summary>
    public void Replace(Range range, string text) => _splices.Replace(range.Start.Value, range.End.Value, text);

    /// <summary>The changed part.</summary>
    public string Done()
    {
        var opened = sheet.Data.IsEmpty && _put.Count > 0;
        if (opened) _splices.Replace(sheet.Data.Start, sheet.Data.End, Opened(sheet.Text[sheet.Data.Start..sheet.Data.End]));
        var there = sheet.Rows.Keys.ToArray();
        foreach (var (row, cells) in _put)
        {
            if (sheet.Rows.TryGetValue(row, out var place)) IntoRow(place, cells);
            else NewRow(row, cells, there);
        }

        if (opened) _splices.Insert(sheet.Data.End, $"</{sheet.Prefix}sheetData>");
        return _splices.Apply(sheet.Text);
    }

    private void IntoRow(RowPlace row, SortedDictionary<int, string> cells)
    {
        if (row.Tag.IsEmpty)
        {
            _splices.Replace(row.Tag.Start, row.Tag.End,
                Opened(sheet.Text[row.Tag.Start..row.Tag.End]) + string.Concat(cells.Values) + $"</{sheet.Prefix}row>");
            return;
        }

        foreach (var (column, text) in cells)
        {
            var after = row.Cells.FindIndex(cell => cell.Column > column);
            _splices.Insert(after < 0 ? row.Close.Start : row.Cells[after].Tag.Start, text);
        }

        // The row may say which columns it spans; a wrong span would hide nothing, but it is kept true.
        if (row.Tag.ValueRange(sheet.Text, "spans") is { } range && sheet.Text[range].Split(':') is [var first, var last]
            && int.TryParse(first, CultureInfo.InvariantCulture, out var from) && int.TryParse(last, CultureInfo.InvariantCulture, out var to)
            && (cells.Keys.First() < from || cells.Keys.Last() > to))
        {
            _splices.Replace(range.Start.Value, range.End.Value,
                string.Create(CultureInfo.InvariantCulture, $"{Math.Min(from, cells.Keys.First())}:{Math.Max(to, cells.Keys.Last())}"));
        }
    }

    private void NewRow(int row, SortedDictionary<int, string> cells, int[] there)
    {
        var next = ~Array.BinarySearch(there, row);
        var at = next < there.Length ? sheet.Rows[there[next]].Tag.Start : sheet.Data.IsEmpty ? sheet.Data.End : sheet.DataClose.Start;
        _splices.Insert(at, $"<{sheet.Prefix}row r=\"{row.ToString(CultureInfo.InvariantCulture)}\">{string.Concat(cells.Values)}</{sheet.Prefix}row>");
    }

    private static string Opened(string emptyTag) => emptyTag[..^2].TrimEnd() + ">";
}
