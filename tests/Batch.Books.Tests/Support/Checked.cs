using Batch.Flight.Week;

namespace Batch.Books.Tests.Support;

/// <summary>Makes checked workbooks of books held in memory.</summary>
internal static class Checked
{
    public const string Red = "FFEF5350";
    public const string Amber = "FFFFC107";

    public static CheckedLine Line(State state, string cell, string text = "Fuel on landing is short.", string leg = "R1/2") => new()
    {
        State = state,
        Leg = leg,
        Check = "FUEL-03 Final reserve",
        Text = text,
        Required = 1463.27,
        Actual = 1100,
        Unit = "lb",
        Remedies = ["Load 370 lb more", "Fly at FL140"],
        Citation = "14 CFR 91.167",
        Actor = "dispatcher",
        Cells = [cell],
    };

    public static CheckedBookContent Content(IEnumerable<CheckedLine> lines, bool columns = false) => new()
    {
        Lines = [.. lines],
        Legs =
        [
            .. Enumerable.Range(0, 3).Select(i => new LegResult
            {
                Row = "week.xlsx/Legs/" + (4 + i).ToString(System.Globalization.CultureInfo.InvariantCulture),
                State = i == 1 ? "fail" : "pass",
                Mark = i == 1 ? State.Fail : null,
                BlockTime = Duration.FromMinutes(83),
                FuelRequired = 1463.3,
                FuelAboard = 1100,
                TakeoffWeight = 9876.5,
            }),
        ],
        HasResultColumns = columns,
        Summary = "3 legs.  Made 2026-12-03 15:00Z.",
    };

    /// <summary>The book, called week.xlsx, with the lines marked in it.</summary>
    public static (byte[] Bytes, string[] Notes) Make(byte[] book, IEnumerable<CheckedLine> lines, bool columns = false, string name = "week.xlsx")
    {
        using var folder = new TempFolder();
        var path = folder.File(name);
        File.WriteAllBytes(path, book);
        var result = Of(path, Content(lines, columns));
        return (result.Files.IsEmpty ? [] : [.. result.Files[0].Content], [.. result.Notes]);
    }

    /// <summary>Opens a workbook; without its pictures, for which the library needs a drawing system.</summary>
    public static ClosedXML.Excel.XLWorkbook Open(byte[] bytes) =>
        new(new MemoryStream(Parts.Changed(bytes, (name, text) =>
            name.StartsWith("xl/drawings/", StringComparison.Ordinal) && !name.EndsWith(".vml", StringComparison.Ordinal) ? null
            : name == "xl/worksheets/_rels/sheet3.xml.rels" ? null
            : name == "[Content_Types].xml"
                ? text.Replace("<Override PartName=\"/xl/drawings/drawing1.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.drawing+xml\"/>",
                    "", StringComparison.Ordinal)
                .Replace("<Override PartName=\"/xl/drawings/drawing1.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.drawing+xml\" />", "",
                    StringComparison.Ordinal)
            : text.Replace("<drawing r:id=\"rId1\"/>", "", StringComparison.Ordinal))));

    public static CheckedBookResult Of(string path, CheckedBookContent content)
    {
        var inputs =
            new[] { new InputBook(Path.GetFileName(path), Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(path)))) };
        return CheckedBook.Make([path], inputs, content);
    }
}
