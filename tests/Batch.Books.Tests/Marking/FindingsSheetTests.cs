using System.Text.RegularExpressions;
using Batch.Books.Tests.Support;
using ClosedXML.Excel;

namespace Batch.Books.Tests.Marking;

/// <summary>The sheet of findings, computed columns, and what is said where something cannot be kept.</summary>
public sealed class FindingsSheetTests
{
    [Fact]
    public void Each_line_has_a_link_to_its_cell_and_what_is_required_planned_and_would_help()
    {
        var page = Findings(Checked.Make(FixtureBooks.Bytes("desktop"), [Checked.Line(State.Fail, "week.xlsx/Legs/G5")]).Bytes, out var book);
        using (book)
        {
            Assert.Equal("tripbatch findings", page.Cell(1, 1).GetString());
            Assert.Equal(["fail", "R1/2", "", "", "Legs G5", "Fuel on landing is short."], Enumerable.Range(1, 6).Select(i => page.Cell(5, i).GetString()));
            Assert.Equal((1463.27, 1100.0, "lb", "Load 370 lb more\nFly at FL140"),
                (page.Cell(5, 7).GetDouble(), page.Cell(5, 8).GetDouble(), page.Cell(5, 9).GetString(), page.Cell(5, 10).GetString()));
            Assert.Equal("'Legs'!G5", page.Cell(5, 5).Hyperlink.InternalAddress);
        }
    }

    [Theory]
    [InlineData("=HYPERLINK(\"http://x.example\",\"click\")")]
    [InlineData("+1+1")]
    [InlineData("-2")]
    [InlineData("@SUM(A1)")]
    [InlineData("a\u0000b\u000Bc\uD800 _x0041_ <tag> & \"quote\" ]]>")]
    public void Whatever_stands_in_a_text_stays_text(string text)
    {
        var bytes = Checked.Make(FixtureBooks.Bytes("desktop"), [Checked.Line(State.Fail, "week.xlsx/Legs/G5", text)]).Bytes;
        var page = Findings(bytes, out var book);
        using (book)
        {
            var cell = page.Cell(5, 6);
            Assert.False(cell.HasFormula);
            Assert.Equal(XLDataType.Text, cell.DataType);
            Assert.Equal(text.Replace('\u0000', ' ').Replace('\u000B', ' ').Replace('\uD800', ' '),
                cell.GetString().Replace("_x005F_x0041_", "_x0041_", StringComparison.Ordinal));
        }

        var parts = new Parts(bytes);
        Assert.DoesNotContain("<f", parts.Text(parts.Names.Last(name => name.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal))),
            StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_cell_and_a_row_beyond_the_last_are_marked_too()
    {
        var bytes = Checked.Make(FixtureBooks.Bytes("desktop"), [Checked.Line(State.Fail, "week.xlsx/Legs/H5"),
            Checked.Line(State.Caution, "week.xlsx/Legs/C40"), Checked.Line(State.Caution, "week.xlsx/Plot/A1")]).Bytes;
        using var book = Checked.Open(bytes);
        Assert.Equal(XLColor.FromArgb(0xEF, 0x53, 0x50), book.Worksheet("Legs").Cell("H5").Style.Fill.BackgroundColor);
        Assert.Equal(XLColor.FromArgb(0xFF, 0xC1, 0x07), book.Worksheet("Legs").Cell("C40").Style.Fill.BackgroundColor);
        Assert.Equal("yyyy\\-mm\\-dd", book.Worksheet("Legs").Cell("C40").Style.NumberFormat.Format);
        Assert.Contains("<sheetProtection sheet=\"1\" objects=\"1\" scenarios=\"1\"/>", new Parts(bytes).Text("xl/worksheets/sheet3.xml"),
            StringComparison.Ordinal);
        Assert.Contains("<comment ref=\"A1\"", new Parts(bytes).Text("xl/comments2.xml"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_is_marked_at_its_first_cell_and_a_leg_without_cells_here_at_its_own()
    {
        var away = Checked.Line(State.Fail, "operator.xlsx/Types/D4") with { LegCell = "week.xlsx/Legs/B6" };
        var bytes = Checked.Make(FixtureBooks.Bytes("desktop"), [Checked.Line(State.Caution, "week.xlsx/Manifest/3"), away]).Bytes;
        using var book = Checked.Open(bytes);
        Assert.Equal(XLColor.FromArgb(0xFF, 0xC1, 0x07), book.Worksheet("Manifest").Cell("A3").Style.Fill.BackgroundColor);
        Assert.Equal(XLColor.FromArgb(0xEF, 0x53, 0x50), book.Worksheet("Legs").Cell("B6").Style.Fill.BackgroundColor);
        Assert.Contains("<f t=\"shared\" ref=\"B5:B6\" si=\"0\">B4+1</f>", new Parts(bytes).Text("xl/worksheets/sheet1.xml"), StringComparison.Ordinal);
        Assert.Equal(("Legs B6", "operator.xlsx/Types/D4"),
            (book.Worksheet("Findings").Cell(6, 5).GetString(), book.Worksheet("Findings").Cell(6, 14).GetString()));
    }

    [Fact]
    public void Computed_columns_stand_beside_the_legs_only_when_asked_for()
    {
        using var without = Checked.Open(Checked.Make(FixtureBooks.Bytes("desktop"), []).Bytes);
        Assert.Equal(13, without.Worksheet("Legs").LastColumnUsed().ColumnNumber());
        using var book = Checked.Open(Checked.Make(FixtureBooks.Bytes("desktop"), [], columns: true).Bytes);
        var legs = book.Worksheet("Legs");
        Assert.Equal(["tripbatch state", "tripbatch block time [h:mm]", "tripbatch fuel required [lb]", "tripbatch fuel aboard [lb]",
            "tripbatch takeoff weight [lb]"], Enumerable.Range(14, 5).Select(i => legs.Cell(3, i).GetString()));
        Assert.Equal(["pass", "fail", "pass"], Enumerable.Range(4, 3).Select(i => legs.Cell(i, 14).GetString()));
        Assert.Equal("[h]:mm", legs.Cell(4, 15).Style.NumberFormat.Format);
        Assert.Contains("<v>0.057638888888888",
            new Parts(Checked.Make(FixtureBooks.Bytes("desktop"), [], columns: true).Bytes).Text("xl/worksheets/sheet1.xml"), StringComparison.Ordinal);
        Assert.Equal((1463.0, 1100.0, 9876.0), (legs.Cell(4, 16).GetDouble(), legs.Cell(4, 17).GetDouble(), legs.Cell(4, 18).GetDouble()));
    }

    [Fact]
    public void Computed_columns_name_the_unit_of_the_operator()
    {
        using var folder = new TempFolder();
        var path = folder.File("week.xlsx");
        File.WriteAllBytes(path, FixtureBooks.Bytes("desktop"));
        var result = Checked.Of(path, Checked.Content([], columns: true) with { WeightUnit = WeightUnit.Kilograms });
        using var book = Checked.Open([.. result.Files[0].Content]);
        Assert.Equal(["tripbatch fuel required [kg]", "tripbatch fuel aboard [kg]", "tripbatch takeoff weight [kg]"],
            Enumerable.Range(16, 3).Select(i => book.Worksheet("Legs").Cell(3, i).GetString()));
    }

    [Fact]
    public void A_sheet_of_the_users_own_called_Findings_is_left_alone()
    {
        using var folder = new TempFolder();
        var path = GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"), book => book.AddWorksheet("Findings").Cell("A1").SetValue("mushrooms"));
        var bytes = Checked.Make(File.ReadAllBytes(path), [Checked.Line(State.Fail, "week.xlsx/Legs/G3")]).Bytes;
        using var book = Checked.Open(bytes);
        Assert.Equal("mushrooms", book.Worksheet("Findings").Cell("A1").GetString());
        Assert.Equal("tripbatch findings", book.Worksheet("Findings (tripbatch)").Cell("A1").GetString());
        Assert.Equal(bytes, Checked.Make(bytes, [Checked.Line(State.Fail, "week.xlsx/Legs/G3")]).Bytes);
    }

    [Fact]
    public void A_cell_with_a_conversation_is_coloured_and_the_missing_comment_is_said()
    {
        var book = Parts.Changed(FixtureBooks.Bytes("desktop"), (name, text) => name == "xl/comments1.xml" ? text.Replace("<author>Dana</author>",
            "<author>tc={4A0A7C0B-0000-4000-8000-000000000001}</author>", StringComparison.Ordinal) : text);
        var (bytes, notes) = Checked.Make(book, [Checked.Line(State.Fail, "week.xlsx/Legs/G5")]);
        Assert.Contains("week.xlsx/Legs/G5 is coloured, but its comment could not be written", Assert.Single(notes), StringComparison.Ordinal);
        using var marked = Checked.Open(bytes);
        Assert.Equal(XLColor.FromArgb(0xEF, 0x53, 0x50), marked.Worksheet("Legs").Cell("G5").Style.Fill.BackgroundColor);
    }

    [Fact]
    public void A_signed_book_is_marked_and_the_lost_signature_is_said()
    {
        var book = Parts.Changed(FixtureBooks.Bytes("desktop"), (_, text) => text, ("_xmlsignatures/sig1.xml", "<Signature/>"));
        Assert.Contains("signed", Assert.Single(Checked.Make(book, []).Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Csv_files_come_back_as_a_workbook_with_the_same_texts_in_the_same_cells()
    {
        using var folder = new TempFolder();
        var path = GoodBooks.Week().Set("Legs", 1, "Remarks", "=1+1").SaveCsv(folder.File("week"));
        var week = BookReader.Read([path, GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx"))]);
        var content = Checked.Content([Checked.Line(State.Fail, "week/Legs/G3")]) with { Legs = [new LegResult { Row = "week/Legs/3", State = "pass" }] };
        var file = Assert.Single(CheckedBook.Make([path], week.Inputs, content).Files);
        Assert.Equal("checked.xlsx", file.Name);
        Assert.Contains("xl/styles.xml", new Parts([.. file.Content]).Names);
        using var book = Checked.Open([.. file.Content]);
        Assert.Equal(week.Legs[1].To, book.Worksheet("Legs").Cell("G3").GetString());
        Assert.Equal(XLColor.FromArgb(0xEF, 0x53, 0x50), book.Worksheet("Legs").Cell("G3").Style.Fill.BackgroundColor);
        var remark = book.Worksheet("Legs").CellsUsed().Single(cell => cell.GetString() == "=1+1");
        Assert.False(remark.HasFormula);
    }

    [Fact]
    public void A_thousand_legs_with_two_marks_each_are_marked()
    {
        using var folder = new TempFolder();
        var week = GoodBooks.Week();
        var leg = week["Legs"][1];
        for (var i = 0; i < 1000; i++) week.Add("Legs", [.. leg]);
        var lines = Enumerable.Range(0, 1000).SelectMany(i => new[] { "G", "S" }
            .Select(letter => Checked.Line(State.Fail, FormattableString.Invariant($"week.xlsx/Legs/{letter}{i + 5}")))).ToArray();
        var once = Checked.Make(File.ReadAllBytes(week.SaveXlsx(folder.File("week.xlsx"))), lines).Bytes;
        Assert.Equal(2000, Regex.Count(new Parts(once).Text("xl/comments1.xml"), "<comment "));
        Assert.Equal(once, Checked.Make(once, lines).Bytes);
    }

    [Fact]
    public void A_book_that_was_changed_meanwhile_is_not_marked_and_that_is_said()
    {
        using var folder = new TempFolder();
        var path = folder.File("week.xlsx");
        File.WriteAllBytes(path, FixtureBooks.Bytes("desktop"));
        var result = CheckedBook.Make([path], [new Flight.Week.InputBook("week.xlsx", "0000")], Checked.Content([]));
        Assert.Empty(result.Files);
        Assert.Contains("changed while it was checked", Assert.Single(result.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void A_doubtful_cell_of_the_operator_book_is_marked_in_a_copy_of_that_book()
    {
        using var folder = new TempFolder();
        var paths = new[] { GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx")), folder.File("week.xlsx") };
        File.WriteAllBytes(paths[1], FixtureBooks.Bytes("desktop"));
        var inputs = BookReader.Read(paths).Inputs;
        var line = Checked.Line(State.Fail, "operator.xlsx/Types/D2") with { Leg = "" };
        Assert.Equal(["checked.xlsx", "checked-operator.xlsx"], CheckedBook.Make(paths, inputs, Checked.Content([line])).Files.Select(file => file.Name));
        Assert.Equal(["checked.xlsx"], CheckedBook.Make(paths, inputs, Checked.Content([line with { Leg = "R1/1" }])).Files.Select(file => file.Name));
    }

    [Fact]
    public void A_book_with_macros_keeps_its_ending()
    {
        using var folder = new TempFolder();
        var path = folder.File("week.xlsm");
        File.WriteAllBytes(path, FixtureBooks.Bytes("desktop"));
        var content = Checked.Content([]);
        Assert.Equal("checked.xlsm", Assert.Single(Checked.Of(path, content with { Legs = [content.Legs[0] with { Row = "week.xlsm/Legs/4" }] }).Files).Name);
    }

    [Fact]
    public void A_part_that_unpacks_beyond_measure_costs_the_checked_copy_only()
    {
        var bomb = Parts.Changed(FixtureBooks.Bytes("desktop"), (_, text) => text, ("xl/media/huge.bin", new string('0', 140 * 1024 * 1024)));
        Assert.InRange(bomb.Length, 0, 1024 * 1024);
        var (bytes, notes) = Checked.Make(bomb, []);
        Assert.Empty(bytes);
        Assert.Contains("too large", Assert.Single(notes), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("xl/comments1.xml")]
    [InlineData("xl/styles.xml")]
    [InlineData("xl/worksheets/_rels/sheet1.xml.rels")]
    public void A_part_with_a_document_type_is_refused(string part)
    {
        var book = Parts.Changed(FixtureBooks.Bytes("desktop"), (name, text) =>
            name == part ? Regex.Replace(text, "^(?<d><\\?xml[^>]*>)", "${d}<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/passwd\">]>",
                RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(1)) : text);
        using var folder = new TempFolder();
        var path = folder.File("week.xlsx");
        File.WriteAllBytes(path, book);
        var result = Checked.Of(path, Checked.Content([Checked.Line(State.Fail, "week.xlsx/Legs/G5")]));
        Assert.Empty(result.Files);
        Assert.Single(result.Notes);
    }

    private static IXLWorksheet Findings(byte[] bytes, out XLWorkbook book)
    {
        book = Checked.Open(bytes);
        return book.Worksheet("Findings");
    }
}
