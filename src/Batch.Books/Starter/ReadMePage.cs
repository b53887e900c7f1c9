using ClosedXML.Excel;

namespace Batch.Books.Starter;

/// <summary>The page of explanations that a starter book opens with.</summary>
internal static class ReadMePage
{
    private static readonly ImmutableArray<string> OfOperator =
    [
        "Operator book",
        "What changes seldom: your settings, types with their tables, aircraft, airports, runways, pilots. The week book beside it holds the trips.",
        "INVENTED EXAMPLE, NOT FOR NAVIGATION. Every figure, place and person in this book is made up. Replace all of it before you plan a flight.",
        "",
        "Where to begin",
        "1.  Operator: your name, home base and rule set. Point at an item to see what it means.",
        "2.  Types: one row for each aircraft type. Take every limit and every table (Climb, Cruise, Descent, Holding, Takeoff, Landing, Speeds, Envelope, Stations, FuelArms) from your approved flight manual.",
        "3.  Aircraft: one row for each aircraft, with weight and arm from its latest weighing.",
        "4.  Airports and Runways: only those you use. tripbatch import takes them from a list, so that nobody types coordinates. Check each against the official publication.",
        "5.  Crew and Logged: codes, dates, and what was flown already, so that duty and rest can be reckoned.",
        "6.  Fixes, Airways, Land, AltitudeGrid: as far as you want routes by name, glide to land and safe altitudes. Checks: your own stricter limits.",
        "",
        "How to write",
        "A dark header is needed in every row; a light one may stay empty or be deleted. Columns may be moved and added. Point at a header to see what it means.",
        "The unit stands in the header, such as Weight [lb]: change it to [kg] and write kilograms. One cell may carry its own unit: 45 kg.",
        "The program answers in pounds; set Weight unit on the sheet Operator to kg and it answers in kilograms.",
        "A sheet that you do not need may be deleted. What is missing is said where it is needed, at the cell.",
    ];

    private static readonly ImmutableArray<string> OfWeek =
    [
        "Week book",
        "What changes daily: legs, who and what flies on them, winds, bulletins, notices. The operator book beside it holds aircraft, airports and pilots.",
        "INVENTED EXAMPLE, NOT FOR NAVIGATION. Every trip, place and person in this book is made up. Replace all of it.",
        "",
        "Where to begin",
        "1.  Legs: one row a leg. Off blocks is local time at the departure, unless you write a Z behind it.",
        "2.  Manifest and Cargo: who and what flies on which legs: all, 1, 1-3 or 1,3. Without a weight the standard weight of the category holds, and the sheet says so.",
        "3.  Winds: by place, time and altitude; the place may be all. Or paste raw bulletins (winds aloft, METAR, TAF) into Bulletins, one a row.",
        "4.  Notices: a closed runway, no fuel, no lights.",
        "5.  Lists: what the drop-downs of Legs offer. Add your aircraft, airports and pilots there.",
        "",
        "Then",
        "Save, and run tripbatch check with the folder of both books; it names each cell that it cannot use. tripbatch run writes the trip sheets.",
        "Among them is checked.xlsx: this book with the cells that need you coloured and commented, and a sheet Findings with a link to each.",
        "A dark header is needed in every row; a light one may stay empty. Columns may be moved and added; columns of your own are kept for the sheets.",
        "The program plans; it does not authorise. The approved flight manual, local rules and the pilot in command decide.",
    ];

    /// <summary>Fills the page.</summary>
    /// <param name="page">An empty page.</param>
    /// <param name="book"><c>operator</c> or <c>week</c>.</param>
    public static void Write(IXLWorksheet page, string book)
    {
        const double LettersALine = 118;
        var lines = book == "week" ? OfWeek : OfOperator;
        page.Column(1).Width = 2;
        page.Column(2).Width = 105;
        page.ShowGridLines = false;
        for (var i = 0; i < lines.Length; i++)
        {
            var cell = page.Cell(i + 1, 2);
            cell.SetValue(lines[i]);
            cell.Style.Alignment.WrapText = true;
            cell.Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
            page.Row(i + 1).Height = 17 * Math.Max(1, Math.Ceiling(lines[i].Length / LettersALine));
            if (i > 0 && lines[i - 1].Length == 0) cell.Style.Font.Bold = true;
        }

        page.PageSetup.PageOrientation = XLPageOrientation.Landscape;
        page.PageSetup.FitToPages(1, 0);
        page.Cell(1, 2).Style.Font.FontSize = 18;
        page.Cell(1, 2).Style.Font.Bold = true;
        page.Row(1).Height = 28;
        page.Cell(3, 2).Style.Font.Bold = true;
        page.Cell(3, 2).Style.Fill.BackgroundColor = XLColor.FromArgb(0xFF, 0xE9, 0xB0);
        page.Row(3).Height = 36;
        page.Cell(3, 2).Style.Alignment.Vertical = XLAlignmentVerticalValues.Center;
    }
}
