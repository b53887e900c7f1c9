using Batch.Books.Tests.Support;
using ClosedXML.Excel;

namespace Batch.Books.Tests.Excel;

public sealed class WorkbookTests
{
    [Fact]
    public void The_1904_date_system_gives_the_same_days()
    {
        var week = Read(book => { }, Put1904);
        Assert.Equal(Instant.FromUtc(2026, 12, 7, 12, 30), week.Legs[0].OffBlocks);
        Assert.Equal(Instant.FromUtc(2026, 12, 7, 6, 0), week.Winds[1].From);

        static void Put1904(string path)
        {
            // The library that writes books knows the 1900 system only: the flag is set and every date moved by hand.
            using var document = DocumentFormat.OpenXml.Packaging.SpreadsheetDocument.Open(path, isEditable: true);
            var workbook = document.WorkbookPart ?? throw new InvalidOperationException();
            workbook.Workbook.WorkbookProperties ??= new DocumentFormat.OpenXml.Spreadsheet.WorkbookProperties();
            workbook.Workbook.WorkbookProperties.Date1904 = true;
            foreach (var cell in workbook.WorksheetParts.SelectMany(part => part.Worksheet.Descendants<DocumentFormat.OpenXml.Spreadsheet.Cell>()))
            {
                if (cell.DataType is null || cell.DataType.Value == DocumentFormat.OpenXml.Spreadsheet.CellValues.Number)
                {
                    if (double.TryParse(cell.CellValue?.Text, System.Globalization.CultureInfo.InvariantCulture, out var number) && number > 40000)
                        cell.CellValue = new DocumentFormat.OpenXml.Spreadsheet.CellValue((number - 1462)
                            .ToString("R", System.Globalization.CultureInfo.InvariantCulture));
                }
            }

            workbook.Workbook.Save();
            foreach (var part in workbook.WorksheetParts) part.Worksheet.Save();
        }
    }

    [Fact]
    public void Formulas_are_read_by_their_stored_values()
    {
        var week = Read(book => { }, path =>
        {
            Change(path, "B3", cell =>
            {
                cell.CellFormula = new DocumentFormat.OpenXml.Spreadsheet.CellFormula("B2+1");
                cell.CellValue = new DocumentFormat.OpenXml.Spreadsheet.CellValue("2");
            });
            Change(path, "F3", cell =>
            {
                cell.CellFormula = new DocumentFormat.OpenXml.Spreadsheet.CellFormula("G2");
                cell.DataType = DocumentFormat.OpenXml.Spreadsheet.CellValues.String;
                cell.CellValue = new DocumentFormat.OpenXml.Spreadsheet.CellValue("XBEL");
            });
        });
        Assert.Equal((2, "XBEL"), (week.Legs[1].Key.Number, week.Legs[1].From));
    }

    [Fact]
    public void A_formula_that_no_program_has_computed_is_complained_of()
    {
        var week = Read(book => { }, path => Change(path, "S2", cell =>
        {
            cell.CellFormula = new DocumentFormat.OpenXml.Spreadsheet.CellFormula("400+400");
            cell.CellValue = null;
        }));
        Assert.Contains("save it", ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/S2").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_error_value_names_its_cell()
    {
        var week = Read(book => { }, path => Change(path, "S2", cell =>
        {
            cell.DataType = DocumentFormat.OpenXml.Spreadsheet.CellValues.Error;
            cell.CellValue = new DocumentFormat.OpenXml.Spreadsheet.CellValue("#DIV/0!");
        }));
        var problem = ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/S2");
        Assert.Equal(("Fuel aboard holds the error value #DIV/0!", "#DIV/0!"), (problem.Text, problem.Read));
        Assert.Equal([problem], week.Legs[0].Doubts.ToArray());
    }

    [Fact]
    public void Title_rows_merged_cells_and_moved_columns_do_not_matter()
    {
        var week = Read(book =>
        {
            var legs = book.Worksheet("Legs");
            legs.Row(1).InsertRowsAbove(3);
            legs.Cell("A1").SetValue("Week 50");
            legs.Range("A1:H2").Merge();
            legs.Column(1).InsertColumnsBefore(2);
        });
        Assert.Equal(3, week.Legs.Length);
        Assert.Equal("week.xlsx/Legs/F5", week.Legs[0].Origin.Cell(nameof(Flight.Week.Leg.OffBlocks)));
    }

    [Fact]
    public void Hidden_and_filtered_rows_are_read_and_said()
    {
        var week = Read(book =>
        {
            book.Worksheet("Legs").Row(3).Hide();
            var manifest = book.Worksheet("Manifest");
            manifest.Range("A1:I4").SetAutoFilter().Column(1).EqualTo("T999");
        });
        Assert.Equal((3, 3), (week.Legs.Length, week.Manifest.Length));
        Assert.Equal("hidden or filtered rows were read: 3", ProblemsTests.Only(week, State.Note, "week.xlsx/Legs").Text);
        Assert.Equal("hidden or filtered rows were read: 2-4", ProblemsTests.Only(week, State.Note, "week.xlsx/Manifest").Text);
    }

    [Fact]
    public void A_hidden_sheet_is_read_and_said()
    {
        var week = Read(book => book.Worksheet("Cargo").Hide());
        Assert.Single(week.Cargo);
        Assert.Equal(State.Note, ProblemsTests.Only(week, State.Note, "week.xlsx/Cargo").State);
    }

    [Fact]
    public void Numbers_kept_as_text_percentages_and_trailing_blanks_are_understood()
    {
        using var folder = new TempFolder();
        var (operatorBook, week) = (GoodBooks.Operator(), GoodBooks.Week());
        week.Set("Legs", 1, "Fuel aboard", " 800 ").Set("Legs", 1, "Leg", "1").Set("Legs", 1, "Captain", "mor\u00A0").Set("Manifest", 1, "Weight", "190");
        operatorBook["Aircraft"][0][7] = "Fuel burn bias";
        var path = operatorBook.SaveXlsx(folder.File("operator.xlsx"), book =>
        {
            var bias = book.Worksheet("Aircraft").Cell("H2");
            bias.SetValue(0.02);
            bias.Style.NumberFormat.Format = "0.0%";
            book.Worksheet("Aircraft").Cell("H200").SetValue("   ");
        });
        var read = BookReader.Read([path, week.SaveXlsx(folder.File("week.xlsx"))]);
        Assert.Equal((new Pounds(800), "MOR", new Pounds(190)), (read.Legs[0].FuelAboard, read.Legs[0].Captain, read.Manifest[0].Weight));
        Assert.Equal(0.02, read.Fleet["X-SKUA"].BurnBias, 1e-12);
        Assert.Equal(2, read.Fleet.Count);
    }

    [Fact]
    public void A_choice_of_legs_that_became_a_date_is_complained_of()
    {
        var week = Read(book =>
        {
            var cell = book.Worksheet("Manifest").Cell("B2");
            cell.SetValue(new DateTime(2026, 1, 3));
            cell.Style.NumberFormat.Format = "d-mmm";
        });
        Assert.Contains("turned into a date", ProblemsTests.Only(week, State.Fail, "week.xlsx/Manifest/B2").Text, StringComparison.Ordinal);
        Assert.Equal([1, 1], week.Legs.Take(2).Select(leg => leg.Doubts.Length));
    }

    [Fact]
    public void A_book_is_read_while_another_program_has_it_open()
    {
        using var folder = new TempFolder();
        var path = GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"));
        using var open = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        Assert.Equal(3, BookReader.Read([path, GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx"))]).Legs.Length);
    }

    [Fact]
    public void A_hyperlink_with_a_slip_does_not_cost_the_book()
    {
        var week = Read(book => { }, path =>
        {
            using var zip = System.IO.Compression.ZipFile.Open(path, System.IO.Compression.ZipArchiveMode.Update);
            using var entry = new StreamWriter(zip.CreateEntry("xl/worksheets/_rels/sheet2.xml.rels").Open());
            entry.Write("<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"><Relationship Id=\"rId1\" TargetMode=\"External\" Target=\"mailto:ops@@greywater example\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/hyperlink\"/></Relationships>");
        });
        Assert.Equal((3, 3), (week.Legs.Length, week.Manifest.Length));
    }

    [Theory]
    [InlineData("yyyy-mm-dd", 1)]
    [InlineData("[$-409]d-mmm-yy;@", 1)]
    [InlineData("hh:mm", 2)]
    [InlineData("[h]:mm:ss", 2)]
    [InlineData("dd/mm/yyyy hh:mm", 3)]
    [InlineData("0.0%", 4)]
    [InlineData("General", 0)]
    [InlineData("#,##0.00 \"days\"", 0)]
    [InlineData("[Red]0.00", 0)]
    [InlineData("0\\d", 0)]
    [InlineData("\"unclosed", 0)]
    public void Formats_say_what_a_number_is(string code, int look) => Assert.Equal(look, (int)Books.Excel.NumberFormats.Look(code));

    private static Flight.Week.OperatorWeek Read(Action<XLWorkbook> change, Action<string>? after = null)
    {
        using var folder = new TempFolder();
        var path = GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"), change);
        after?.Invoke(path);
        return BookReader.Read([GoodBooks.Operator().SaveXlsx(folder.File("operator.xlsx")), path]);
    }

    private static void Change(string path, string reference, Action<DocumentFormat.OpenXml.Spreadsheet.Cell> change)
    {
        using var document = DocumentFormat.OpenXml.Packaging.SpreadsheetDocument.Open(path, isEditable: true);
        var workbook = document.WorkbookPart ?? throw new InvalidOperationException();
        var legs = workbook.Workbook.Descendants<DocumentFormat.OpenXml.Spreadsheet.Sheet>().Single(sheet => sheet.Name == "Legs");
        var part = (DocumentFormat.OpenXml.Packaging.WorksheetPart)workbook.GetPartById(legs.Id?.Value ?? "");
        change(part.Worksheet.Descendants<DocumentFormat.OpenXml.Spreadsheet.Cell>().Single(cell => cell.CellReference == reference));
        part.Worksheet.Save();
    }
}
