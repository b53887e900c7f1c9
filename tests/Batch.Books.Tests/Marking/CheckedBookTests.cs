using System.Text.RegularExpressions;
using System.Xml.Linq;
using Batch.Books.Tests.Support;

namespace Batch.Books.Tests.Marking;

/// <summary>What a checked workbook keeps and what it marks, on books as several programs write them.</summary>
public sealed partial class CheckedBookTests
{
    public static TheoryData<string> Kinds => ["desktop", "libreoffice", "strict", "1904", "library"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Only_the_marked_cells_and_the_parts_of_marks_differ(string kind)
    {
        var (before, after) = Both(kind);
        string[] may = ["[Content_Types].xml", "xl/workbook.xml", "xl/_rels/workbook.xml.rels", "xl/styles.xml", "xl/worksheets/_rels/sheet1.xml.rels",
            "xl/comments1.xml", "xl/drawings/vmlDrawing1.vml"];
        var legs = LegsPart(before);
        foreach (var name in before.Names.Where(name => !may.Contains(name) && name != legs && !name.Contains("vmlDrawing",
            StringComparison.OrdinalIgnoreCase) && !name.Contains("comments", StringComparison.Ordinal)))
            Assert.True(before.Bytes(name).AsSpan().SequenceEqual(after.Bytes(name)), $"{name} differs");
        var unmarked = after.Text(legs);
        var (commented, formula, filled) = FixtureBooks.Cells(kind);
        foreach (var cell in new[] { commented, formula, filled })
            unmarked = unmarked.Replace(Tag(unmarked, cell), Tag(before.Text(legs), cell), StringComparison.Ordinal);
        Assert.NotEqual(before.Text(legs), after.Text(legs));
        Assert.Equal(before.Text(legs), unmarked);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_mark_changes_nothing_of_a_cell_but_its_fill(string kind)
    {
        var (before, after) = Both(kind);
        var (commented, formula, filled) = FixtureBooks.Cells(kind);
        foreach (var (cell, colour) in new[] { (commented, Checked.Red), (formula, Checked.Amber), (filled, Checked.Red) })
        {
            var (was, now) = (Format(before, LegsPart(before), cell), Format(after, LegsPart(before), cell));
            Assert.Equal(colour, Fill(after, now));
            foreach (var word in new[] { "fillId", "xfId", "applyFill" })
            {
                was.Attribute(word)?.Remove();
                now.Attribute(word)?.Remove();
            }

            Assert.Equal(was.ToString(), now.ToString());
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Styles_that_were_there_keep_their_numbers_and_looks(string kind)
    {
        var (before, after) = Both(kind);
        foreach (var list in new[] { "fonts", "fills", "borders", "cellStyleXfs", "cellXfs", "cellStyles", "dxfs" })
        {
            var was = List(before, list);
            Assert.Equal(was, List(after, list).Take(was.Length));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_comment_of_the_user_stays_and_ours_stands_below_it(string kind)
    {
        var (_, after) = Both(kind);
        var (commented, formula, _) = FixtureBooks.Cells(kind);
        var texts = Comments(after);
        Assert.Matches("(?s)^.*asked the client twice\n\ntripbatch found here:\nFAIL  R1/2  FUEL-03 Final reserve\nFuel on landing is short.\nRequired 1,463.27, planned 1,100 lb\nWould help: Load 370 lb more; or: Fly at FL140\n.end of tripbatch.$", texts[commented]);
        Assert.StartsWith("tripbatch found here:\nCAUTION  ", texts[formula], StringComparison.Ordinal);
        var shapes = string.Concat(after.Names.Where(name => name.EndsWith(".vml", StringComparison.Ordinal)).Select(after.Text));
        Assert.Equal(texts.Count, ShapeOfNote().Count(shapes));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Running_on_a_checked_workbook_gives_the_same_bytes(string kind)
    {
        var once = Checked.Make(FixtureBooks.Bytes(kind), Lines(kind), columns: true).Bytes;
        Assert.Equal(once, Checked.Make(once, Lines(kind), columns: true).Bytes);
        Assert.Equal(once, Checked.Make(FixtureBooks.Bytes(kind), Lines(kind), columns: true).Bytes);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Once_nothing_is_found_any_more_every_mark_is_gone(string kind)
    {
        var (before, _) = Both(kind);
        var clean = new Parts(Checked.Make(Checked.Make(FixtureBooks.Bytes(kind), Lines(kind), columns: true).Bytes, []).Bytes);
        var legs = LegsPart(before);
        Assert.Equal(Plain(before.Text(legs)), Plain(clean.Text(legs)));
        var texts = Comments(clean);
        Assert.DoesNotContain(texts, pair => pair.Value.Contains("tripbatch", StringComparison.Ordinal));
        Assert.EndsWith("asked the client twice", texts[FixtureBooks.Cells(kind).Commented], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_checked_workbook_reads_as_the_same_week(string kind)
    {
        using var folder = new TempFolder();
        var operatorBook = GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx"));
        var path = folder.File("week.xlsx");
        File.WriteAllBytes(path, FixtureBooks.Bytes(kind));
        var before = BookReader.Read([operatorBook, path]);
        File.WriteAllBytes(path, Checked.Make(FixtureBooks.Bytes(kind), Lines(kind), columns: true).Bytes);
        var after = BookReader.Read([operatorBook, path]);
        Assert.Equal(3, after.Legs.Length + after.BrokenLegs.Length);
        Assert.Equal(before.Problems.ToArray(), after.Problems.ToArray());
        Assert.Equal(before.Legs.Select(leg => (leg.Key, leg.OffBlocks, leg.From, leg.To, leg.FuelAboard)),
            after.Legs.Select(leg => (leg.Key, leg.OffBlocks, leg.From, leg.To, leg.FuelAboard)));
        Assert.All(after.Legs, leg => Assert.DoesNotContain(leg.Extra.Keys, header => header.StartsWith("tripbatch", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("desktop")]
    [InlineData("libreoffice")]
    [InlineData("library")]
    public void The_schema_of_workbooks_finds_no_fault_that_was_not_there_before(string kind)
    {
        Assert.Equal(Faults(FixtureBooks.Bytes(kind)), Faults(Checked.Make(FixtureBooks.Bytes(kind), Lines(kind), columns: true).Bytes));
        static string[] Faults(byte[] bytes)
        {
            using var document = DocumentFormat.OpenXml.Packaging.SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
            var validator = new DocumentFormat.OpenXml.Validation.OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019);
            return [.. validator.Validate(document).Select(fault => $"{fault.Part?.Uri} {fault.Description}").Order(StringComparer.Ordinal)];
        }
    }

    private static CheckedLine[] Lines(string kind)
    {
        var (commented, formula, filled) = FixtureBooks.Cells(kind);
        return [Checked.Line(State.Fail, "week.xlsx/Legs/" + commented), Checked.Line(State.Fail, "week.xlsx/Legs/" + filled),
            Checked.Line(State.Caution, "week.xlsx/Legs/" + formula)];
    }

    private static (Parts Before, Parts After) Both(string kind)
    {
        var book = FixtureBooks.Bytes(kind);
        var (bytes, notes) = Checked.Make(book, Lines(kind));
        Assert.Empty(notes);
        return (new Parts(book), new Parts(bytes));
    }

    // What a mark may leave behind without any effect: the first style named as such, a wider span, the frame of comments, an empty row, widths of columns
    // behind the last.
    private static string Plain(string sheet) => OwnWidths().Replace(EmptyRow().Replace(LegacyDrawing().Replace(Spans().Replace(sheet, ""), ""), ""), "")
        .Replace(" s=\"0\"", "", StringComparison.Ordinal);

    private static string LegsPart(Parts parts)
    {
        var id = Regex.Match(parts.Text("xl/workbook.xml"), "<[a-z:]*sheet [^>]*name=\"Legs\"[^>]*:id=\"(?<id>[^\"]+)\"", RegexOptions.ExplicitCapture,
            TimeSpan.FromSeconds(1)).Groups["id"].Value;
        var relation = XDocument.Parse(parts.Text("xl/_rels/workbook.xml.rels")).Root?.Elements().Single(element => (string?)element.Attribute("Id") == id);
        var target = (string?)relation?.Attribute("Target") ?? "";
        return target.StartsWith('/') ? target[1..] : "xl/" + target;
    }

    private static string Tag(string sheet, string cell) =>
        Regex.Match(sheet, $"<[a-z]*:?c [^>]*r=\"{cell}\"[^>]*>", RegexOptions.None, TimeSpan.FromSeconds(1)).Value;

    private static XElement Format(Parts parts, string sheet, string cell)
    {
        var style = Regex.Match(Tag(parts.Text(sheet), cell), " s=\"(?<s>[0-9]+)\"", RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)).Groups["s"].Value;
        return Styles(parts, "cellXfs")[style.Length == 0 ? 0 : int.Parse(style, System.Globalization.CultureInfo.InvariantCulture)];
    }

    private static string Fill(Parts parts, XElement format) =>
        (string?)Styles(parts, "fills")[(int?)format.Attribute("fillId")
            ?? 0].Descendants().First(element => element.Name.LocalName == "fgColor").Attribute("rgb") ?? "";

    private static XElement[] Styles(Parts parts, string list) =>
        [.. XDocument.Parse(parts.Text("xl/styles.xml")).Root?.Elements().Where(element => element.Name.LocalName == list).Elements() ?? []];

    private static string[] List(Parts parts, string list) => [.. Styles(parts, list).Select(element => element.ToString(SaveOptions.DisableFormatting))];

    private static Dictionary<string, string> Comments(Parts parts) => parts.Names.Where(name => name.StartsWith("xl/comments", StringComparison.Ordinal))
        .SelectMany(name => XDocument.Parse(parts.Text(name), LoadOptions.PreserveWhitespace).Descendants()
            .Where(element => element.Name.LocalName == "comment"))
        .ToDictionary(comment => (string?)comment.Attribute("ref") ?? "",
            comment => string.Concat(comment.Descendants().Where(element => element.Name.LocalName == "t").Select(element => element.Value)));

    [GeneratedRegex("ObjectType=\"Note\"", RegexOptions.None, 1000)]
    private static partial Regex ShapeOfNote();

    [GeneratedRegex("<[a-z]*:?legacyDrawing [^>]*/>", RegexOptions.None, 1000)]
    private static partial Regex LegacyDrawing();

    [GeneratedRegex("<(?<p>[a-z]*:?)row r=\"[0-9]+\"></[a-z]*:?row>", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex EmptyRow();

    [GeneratedRegex("(?<o><[a-z]*:?cols>)?<[a-z]*:?col min=\"[0-9]+\" max=\"[0-9]+\" width=\"14\" customWidth=\"1\"/>(?(o)</[a-z]*:?cols>)",
        RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex OwnWidths();

    [GeneratedRegex(" spans=\"[0-9:]+\"", RegexOptions.None, 1000)]
    private static partial Regex Spans();
}
