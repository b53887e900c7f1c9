using ClosedXML.Excel;

namespace Batch.Books.Starter;

/// <summary>How the pages of starter books look.</summary>
internal static class PageLook
{
    /// <summary>Row of the title.</summary>
    public const int TitleRow = 1;

    /// <summary>Row of the headers.</summary>
    public const int HeaderRow = 2;

    /// <summary>First row of data.</summary>
    public const int FirstRow = 3;

    /// <summary>Last row that drop-downs reach.</summary>
    public const int LastRow = 1000;

    private static readonly XLColor Needed = XLColor.FromArgb(0x1F, 0x3A, 0x5F);
    private static readonly XLColor Optional = XLColor.FromArgb(0xDD, 0xE6, 0xEE);

    /// <summary>Writes the title row.</summary>
    public static void Title(IXLWorksheet page, string text)
    {
        var cell = page.Cell(TitleRow, 1);
        cell.SetValue(text);
        cell.Style.Font.Italic = true;
        cell.Style.Font.FontColor = XLColor.DimGray;
        cell.Style.NumberFormat.Format = "General";
        cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Left;
        page.Row(TitleRow).Height = 18;
    }

    /// <summary>Writes a header.</summary>
    public static void Header(IXLCell cell, string text, bool required)
    {
        cell.SetValue(text);
        cell.Style.NumberFormat.Format = "General";
        cell.Style.Font.Bold = true;
        cell.Style.Font.FontColor = required ? XLColor.White : XLColor.Black;
        cell.Style.Fill.BackgroundColor = required ? Needed : Optional;
        cell.Style.Border.RightBorder = XLBorderStyleValues.Thin;
        cell.Style.Border.RightBorderColor = XLColor.White;
        cell.Style.Alignment.WrapText = true;
        cell.Style.Alignment.Vertical = XLAlignmentVerticalValues.Center;
        cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Left;
    }

    /// <summary>Puts a comment on a cell, large enough for its text.</summary>
    public static void Comment(IXLCell cell, string text)
    {
        const int LettersALine = 44;
        var lines = text.Split('\n').Sum(line => 1 + (line.Length / LettersALine));
        cell.Comment.Author = "tripbatch";
        cell.Comment.AddText(text);
        cell.Comment.Style.Alignment.SetAutomaticSize(false);
        cell.Comment.Style.Size.SetWidth(36);
        cell.Comment.Style.Size.SetHeight((lines * 14) + 10);
    }

    /// <summary>Freezes the headers and the first columns, and sets the page for printing.</summary>
    public static void Finish(IXLWorksheet page, int frozenColumns)
    {
        page.Row(HeaderRow).Height = 34;
        page.SheetView.Freeze(HeaderRow, frozenColumns);
        page.PageSetup.PageOrientation = XLPageOrientation.Landscape;
        page.PageSetup.FitToPages(1, 0);
        page.PageSetup.SetRowsToRepeatAtTop(TitleRow, HeaderRow);
    }
}
