using System.Globalization;
using ClosedXML.Excel;

namespace Batch.Books.Starter;

/// <summary>
/// Drop-downs of starter sheets. They offer and warn; they never forbid, since the reader understands more than they list and says itself what is wrong.
/// </summary>
internal static class DropDown
{
    /// <summary>Where references of the operator book are listed: the sheet, by its first column.</summary>
    private static readonly Dictionary<string, string> InOperator = new(StringComparer.Ordinal)
    {
        ["Type"] = "Types",
        ["Airport"] = "Airports",
        ["Home"] = "Airports",
        ["Base"] = "Airports",
        ["Fix"] = "Fixes",
        ["Crew"] = "Crew",
    };

    /// <summary>Offers what a column may hold, in all rows.</summary>
    /// <param name="page">The page.</param>
    /// <param name="number">Number of the column, A = 1.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="column">The column.</param>
    public static void Offer(IXLWorksheet page, int number, CatalogueSheet sheet, StarterColumn column)
    {
        var cells = page.Range(PageLook.FirstRow, number, PageLook.LastRow, number);
        if (column.Words.Length > 0) OfWords(cells, column.Words, isOpen: false);
        else if (column.Name == "Fuel plan") OfWords(cells, ["minimum", "minimum+200", "full", "carry"], isOpen: true);
        else if (sheet.Book == "week" && ListsPage.ColumnOf(sheet.Name, column.Name) is { } list) OfSheet(cells, Sheets.AllSheets.Lists, list);
        else if (sheet.Book == "operator" && InOperator.TryGetValue(column.Name, out var other) && other != sheet.Name) OfSheet(cells, other, 1);
    }

    /// <summary>Offers words.</summary>
    /// <param name="cells">The cells.</param>
    /// <param name="words">The words.</param>
    /// <param name="isOpen">Whether other text is expected too, so that no warning is due.</param>
    public static void OfWords(IXLRange cells, ImmutableArray<string> words, bool isOpen) => Set(cells, '"' + string.Join(',', words) + '"', isOpen);

    /// <summary>Offers the filled cells of a column of a sheet.</summary>
    private static void OfSheet(IXLRange cells, string sheet, int column)
    {
        var letter = Cells.CellRef.Letters(column);
        Set(cells, string.Create(CultureInfo.InvariantCulture,
            $"OFFSET({sheet}!${letter}${PageLook.FirstRow},0,0,MAX(1,COUNTA({sheet}!${letter}${PageLook.FirstRow}:${letter}$2000)),1)"), isOpen: false);
    }

    private static void Set(IXLRange cells, string list, bool isOpen)
    {
        var validation = cells.SetDataValidation();
        validation.List(list, true);
        validation.IgnoreBlanks = true;
        validation.ErrorStyle = XLErrorStyle.Warning;
        validation.ErrorTitle = "Not in the list";
        validation.ErrorMessage = "This is not in the list. Keep it all the same?";
        validation.ShowErrorMessage = !isOpen;
    }
}
