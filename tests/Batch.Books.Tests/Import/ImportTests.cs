using Batch.Books.Tests.Support;
using Batch.Flight.Fleet;

namespace Batch.Books.Tests.Import;

public sealed class ImportTests
{
    private const string AirportHeaders =
        "\"id\",\"ident\",\"type\",\"name\",\"latitude_deg\",\"longitude_deg\",\"elevation_ft\",\"continent\",\"iso_country\"\n";
    private const string RunwayHeaders = "\"id\",\"airport_ref\",\"airport_ident\",\"length_ft\",\"width_ft\",\"surface\",\"lighted\",\"closed\",\"le_ident\",\"le_latitude_deg\",\"le_longitude_deg\",\"le_elevation_ft\",\"le_heading_degT\",\"le_displaced_threshold_ft\",\"he_ident\",\"he_latitude_deg\",\"he_longitude_deg\",\"he_elevation_ft\",\"he_heading_degT\",\"he_displaced_threshold_ft\"\n";

    private const string Airports = AirportHeaders
        + "1,\"XAAA\",\"small_airport\",\"Ash Field (invented)\",40.75,-38.9,95,\"\",\"\"\n"
        + "2,\"XBBB\",\"medium_airport\",\"Birch, \"\"north\"\" =1+1\",42.5,-37.1,,\"\",\"\"\n"
        + "3,\"XHEL\",\"heliport\",\"Roof\",40.76,-38.91,200,\"\",\"\"\n"
        + "4,\"XBAD\",\"small_airport\",\"Bad\",abc,-38.9,10,\"\",\"\"\n"
        + "5,\"XFAR\",\"small_airport\",\"Far\",55,10,10,\"\",\"\"\n";

    private const string Runways = RunwayHeaders
        + "1,1,\"XAAA\",4000,75,\"ASPH-G\",1,0,\"09\",40.75,-38.91,90,88.5,300,\"27\",40.7501,-38.895,100,268.5,\n"
        + "2,1,\"XAAA\",2000,60,\"Turf\",0,0,\"4\",40.75,-38.91,,,,\"22\",40.754,-38.906,,,\n"
        + "3,1,\"XAAA\",40,40,\"CONC\",0,0,\"H1\",,,,,,\"\",,,,,\n"
        + "4,1,\"XAAA\",3000,60,\"GRVL\",0,1,\"15\",,,,,,\"33\",,,,,\n"
        + "5,2,\"XBBB\",5000,100,\"PSP\",1,0,\"18\",,,,,,\"36\",,,,,\n"
        + "6,2,\"XBBB\",,100,\"ASP\",1,0,\"01\",,,,,,\"19\",,,,,\n";

    [Fact]
    public void Airports_and_runways_come_in_and_are_read_without_a_complaint()
    {
        using var folder = new TempFolder();
        var book = Starter(folder);
        var report = Run(folder, request => request with { Only = ["XAAA"], TimeZone = "Atlantic/Azores" });
        Assert.Equal(["XAAA"], report.Sheets[0].Added.ToArray());
        Assert.Equal(["XAAA 09", "XAAA 27", "XAAA 04", "XAAA 22"], report.Sheets[1].Added.ToArray());
        var week = BookReader.Read([book, folder.File("week.xlsx")]);
        Assert.Empty(week.Problems);
        var airport = week.Airports["XAAA"];
        Assert.Equal(("Ash Field (invented)", 40.75, -38.9, 95.0, "Atlantic/Azores"),
            (airport.Name, airport.Position.LatitudeDeg, airport.Position.LongitudeDeg, airport.Elevation.Value, airport.Zone.Id));
        var (nine, four) = (airport.Runways.Single(runway => runway.Ident == "09"), airport.Runways.Single(runway => runway.Ident == "04"));
        Assert.Equal((88.5, 4000.0, 3700.0, 90.0, RunwaySurface.Paved, true),
            (nine.TrueBearing.Value, nine.TakeoffRun.Value, nine.LandingDistance.Value, nine.ThresholdElevation?.Value, nine.Surface, nine.Lighted));
        Assert.Equal((RunwaySurface.Grass, false), (four.Surface, four.Lighted));
        Assert.InRange(four.TrueBearing.Value, 36, 38);
    }

    [Fact]
    public void What_is_left_out_is_named_with_file_and_line_and_what_is_missing_is_said()
    {
        using var folder = new TempFolder();
        Starter(folder);
        var report = Run(folder, request => request with { Only = ["XAAA", "XBBB", "XBAD", "XAAB"] });
        Assert.Contains("airports.csv line 5: XBAD: latitude_deg \"abc\" and longitude_deg \"-38.9\" are not a position", report.LeftOut);
        Assert.Contains("runways.csv line 4: XAAA: le_ident H1 is not a runway designator", report.LeftOut);
        Assert.Contains("runways.csv line 5: the runway 15/33 of XAAA is closed", report.LeftOut);
        Assert.Contains("runways.csv line 7: XBBB: length_ft \"\" is not a length", report.LeftOut);
        Assert.Contains(report.Notes, note => note.StartsWith("XAAB is not in airports.csv; did you mean ", StringComparison.Ordinal));
        Assert.Contains(report.Notes, note => note.StartsWith("XBBB has no elevation in the list (airports.csv line 3)", StringComparison.Ordinal));
        Assert.Contains(report.Notes, note => note.StartsWith("XBBB 18 has neither a true heading nor two thresholds", StringComparison.Ordinal));
        Assert.Contains(report.Notes, note => note.StartsWith("XBBB 18 has the surface PSP", StringComparison.Ordinal));
        Assert.Contains(report.Notes, note => note.StartsWith(
            "the list has no time zones, and an airport cannot be used without one: XAAA (XONE, 20 NM away, has Atlantic/Azores), XBBB (",
            StringComparison.Ordinal));
    }

    [Fact]
    public void A_text_of_the_list_stays_text()
    {
        using var folder = new TempFolder();
        var book = Starter(folder);
        Run(folder, request => request with { Only = ["XBBB"], Runways = null });
        using var read = new ClosedXML.Excel.XLWorkbook(book);
        var cell = read.Worksheet("Airports").CellsUsed().Single(cell => cell.GetString().StartsWith("Birch", StringComparison.Ordinal));
        Assert.Equal(("Birch, \"north\" =1+1", false), (cell.GetString(), cell.HasFormula));
    }

    [Fact]
    public void Within_a_distance_takes_what_lies_there_and_an_aeroplane_can_use()
    {
        using var folder = new TempFolder();
        Starter(folder);
        Assert.Equal(["XAAA"], Run(folder, request => request with { Within = new NauticalMiles(60), Around = "XONE" }).Sheets[0].Added.ToArray());
        Assert.Equal(["XBBB"], Run(folder, request => request with { Within = new NauticalMiles(300), Around = "XAAA" }).Sheets[0].Added.ToArray());
        Assert.Equal(["XHEL"], Run(folder, request => request with { Only = ["XHEL"] }).Sheets[0].Added.ToArray());
    }

    [Fact]
    public void What_is_there_is_compared_and_changed_only_when_asked()
    {
        using var folder = new TempFolder();
        var book = Starter(folder);
        Run(folder, request => request with { Only = ["XAAA"], TimeZone = "Atlantic/Azores" });
        Assert.Equal((1, 4),
            (Run(folder, request => request with { Only = ["XAAA"] }).Sheets[0].Same, Run(folder, request => request with { Only = ["XAAA"] }).Sheets[1].Same));
        File.WriteAllText(folder.File("airports.csv"), Airports.Replace(",95,", ",123,", StringComparison.Ordinal));
        var before = File.ReadAllBytes(book);
        var shown = Run(folder, request => request with { Only = ["XAAA"] });
        Assert.Equal("operator.xlsx/Airports/E6  XAAA Elevation: the book has 95, the list 123", Assert.Single(shown.Sheets[0].Differences));
        Assert.Equal("", shown.Written);
        Assert.Equal(before, File.ReadAllBytes(book));
        Assert.Equal("", Run(folder, request => request with { Only = ["XAAA"], Updates = true, IsPreview = true }).Written);
        Assert.Equal(before, File.ReadAllBytes(book));
        var updated = Run(folder, request => request with { Only = ["XAAA"], Updates = true });
        Assert.Equal(1, updated.Sheets[0].Updated);
        Assert.Equal(before, File.ReadAllBytes(updated.Backup));
        Assert.Equal(123, BookReader.Read([book, folder.File("week.xlsx")]).Airports["XAAA"].Elevation.Value);
        Assert.Equal(["airports.csv", "operator.xlsx", "operator.xlsx.bak", "runways.csv", "week.xlsx"],
            Directory.GetFiles(folder.File("")).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_rest_of_the_book_keeps_its_bytes()
    {
        using var folder = new TempFolder();
        var book = Starter(folder);
        var before = new Parts(File.ReadAllBytes(book));
        Run(folder, request => request with { Only = ["XAAA"] });
        var after = new Parts(File.ReadAllBytes(book));
        Assert.Equal(before.Names, after.Names);
        var changed = before.Names.Where(name => !before.Bytes(name).AsSpan().SequenceEqual(after.Bytes(name))).ToArray();
        Assert.Equal(2, changed.Length);
        Assert.All(changed, name => Assert.StartsWith("xl/worksheets/sheet", name, StringComparison.Ordinal));
        foreach (var name in changed)
        {
            var (was, now) = (before.Text(name), after.Text(name));
            var cut = was.IndexOf("</x:sheetData>", StringComparison.Ordinal);
            Assert.StartsWith(was[..cut], now, StringComparison.Ordinal);
            Assert.EndsWith(was[cut..], now, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_row_is_named_by_the_line_an_editor_shows()
    {
        using var folder = new TempFolder();
        Starter(folder);
        File.WriteAllText(folder.File("airports.csv"),
            AirportHeaders + "1,\"XAAA\",\"small_airport\",\"Ash\n\"\"upper\"\"\nField\",40.75,-38.9,95,\"\",\"\"\n\n4,\"XBAD\",\"small_airport\",\"Bad\",abc,-38.9,10,\"\",\"\"\n");
        var report = Run(folder, request => request with { Only = ["XAAA", "XBAD"], Runways = null });
        Assert.Equal(["XAAA"], report.Sheets[0].Added.ToArray());
        Assert.StartsWith("airports.csv line 6: XBAD", Assert.Single(report.LeftOut), StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_and_a_filter_that_end_at_the_last_row_take_the_new_rows_in()
    {
        using var folder = new TempFolder();
        var path = Starter(folder);
        using (var book = new ClosedXML.Excel.XLWorkbook(path))
        {
            book.Worksheet("Airports").Range("A2:U5").CreateTable("Places");
            book.Worksheet("Runways").Range("A2:K8").SetAutoFilter();
            book.Save();
        }

        var last = new Parts(File.ReadAllBytes(path));
        Assert.Contains("ref=\"A2:U5\"", last.Text("xl/tables/table1.xml"), StringComparison.Ordinal);
        Run(folder, request => request with { Only = ["XAAA"], TimeZone = "Atlantic/Azores" });
        var parts = new Parts(File.ReadAllBytes(path));
        Assert.Equal(2, parts.Text("xl/tables/table1.xml").Split("ref=\"A2:U6\"").Length - 1);
        Assert.DoesNotContain("U5", parts.Text("xl/tables/table1.xml"), StringComparison.Ordinal);
        Assert.Contains(parts.Names, name => name.StartsWith("xl/worksheets/",
            StringComparison.Ordinal) && parts.Text(name).Contains("autoFilter ref=\"A2:K12\"", StringComparison.Ordinal));
        Assert.DoesNotContain("$K$8", parts.Text("xl/workbook.xml"), StringComparison.Ordinal);
        using var again = new ClosedXML.Excel.XLWorkbook(path);
        Assert.Equal("A2:U6", again.Worksheet("Airports").Table("Places").RangeAddress.ToString());
    }

    [Theory]
    [InlineData(',', false, "\r\n")]
    [InlineData(';', true, "\n")]
    public void Csv_books_take_rows_in_their_own_way_of_writing(char delimiter, bool decimalComma, string newLine)
    {
        using var folder = new TempFolder();
        GoodBooks.Operator().SaveCsv(folder.File("operator"), delimiter, System.Text.Encoding.Latin1, decimalComma, newLine);
        File.WriteAllText(folder.File("airports.csv"), Airports);
        File.WriteAllText(folder.File("runways.csv"), Runways);
        var file = Path.Combine(folder.File("operator"), "Airports.csv");
        var before = File.ReadAllText(file, System.Text.Encoding.Latin1);
        var report = Run(folder, request => request with { Book = folder.File("operator"), Only = ["XAAA", "XBBB"], TimeZone = "Atlantic/Azores" });
        Assert.Equal(["XAAA", "XBBB"], report.Sheets[0].Added.ToArray());
        Assert.Equal(before, File.ReadAllText(file + ".bak", System.Text.Encoding.Latin1));
        var after = File.ReadAllText(file, System.Text.Encoding.Latin1);
        Assert.StartsWith(before.TrimEnd(), after, StringComparison.Ordinal);
        Assert.Contains(decimalComma ? "40,75" : "40.75", after[before.TrimEnd().Length..], StringComparison.Ordinal);
        Assert.Contains("\"Birch, \"\"north\"\" =1+1\"", after, StringComparison.Ordinal);
        var week = BookReader.Read([folder.File("operator"), GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"))]);
        Assert.Equal(("Ash Field (invented)", 95.0, 4),
            (week.Airports["XAAA"].Name, week.Airports["XAAA"].Elevation.Value, week.Airports["XAAA"].Runways.Length));
        File.WriteAllText(folder.File("airports.csv"), Airports.Replace(",95,", ",123,", StringComparison.Ordinal));
        Run(folder, request => request with { Book = folder.File("operator"), Only = ["XAAA"], Runways = null, Updates = true });
        Assert.Equal(123, BookReader.Read([folder.File("operator"), folder.File("week.xlsx")]).Airports["XAAA"].Elevation.Value);
    }

    [Fact]
    public void The_units_of_the_book_hold()
    {
        using var folder = new TempFolder();
        var book = GoodBooks.Operator();
        var headers = book["Airports"][0];
        headers[Array.FindIndex(headers, header => header is string text && text.StartsWith("Elevation", StringComparison.Ordinal))] = "Elevation [m]";
        book.SaveXlsx(folder.File("operator.xlsx"));
        File.WriteAllText(folder.File("airports.csv"), Airports);
        Assert.Equal(["XAAA"],
            Run(folder, request => request with { Only = ["XAAA"], Runways = null, TimeZone = "Atlantic/Azores" }).Sheets[0].Added.ToArray());
        var week = BookReader.Read([folder.File("operator.xlsx"), GoodBooks.Week().SaveXlsx(folder.File("week.xlsx"))]);
        Assert.Equal(95, week.Airports["XAAA"].Elevation.Value, 0.05);
    }

    [Theory]
    [InlineData("~$operator.xlsx")]
    [InlineData(".~lock.operator.xlsx#")]
    public void A_book_that_is_open_in_another_program_is_not_written(string mark)
    {
        using var folder = new TempFolder();
        Starter(folder);
        File.WriteAllText(folder.File(mark), "");
        Assert.Contains("is open in a spreadsheet program",
            Assert.Throws<BookException>(() => Run(folder, request => request with { Only = ["XAAA"] })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_world_is_not_taken_whole_but_a_short_list_is_and_a_list_of_another_kind_is_named()
    {
        using var folder = new TempFolder();
        Starter(folder);
        Assert.Equal(["XAAA", "XBBB", "XFAR"], Run(folder, request => request).Sheets[0].Added.ToArray());
        File.AppendAllText(folder.File("airports.csv"), string.Concat(Enumerable.Repeat("6,\"\",\"\",\"\",,,,\"\",\"\"\n", 500)));
        Assert.Contains("--only", Assert.Throws<BookException>(() => Run(folder, request => request)).Message, StringComparison.Ordinal);
        File.WriteAllText(folder.File("airports.csv"), "ident,lat,lon\nXAAA,1,2\n");
        Assert.Contains("airports.csv has no column latitude_deg",
            Assert.Throws<BookException>(() => Run(folder, request => request with { Only = ["XAAA"] })).Message, StringComparison.Ordinal);
        Assert.Contains("does not exist",
            Assert.Throws<BookException>(() => Run(folder, request => request with { Only = ["XAAA"], Book = folder.File("none.xlsx") })).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Fixes_come_from_columns_of_any_name_and_one_ident_may_stand_at_two_places()
    {
        using var folder = new TempFolder();
        var book = Starter(folder);
        File.WriteAllText(folder.File("points.csv"), "ID;Y;X;NOTE\nALFIN;4130N;03915W;a\nONE;40,62;-39,28;same\nONE;43,5;-30;other\nBROKE;99;0;b\n");
        var request = new ImportRequest
        {
            Kind = ImportKind.Fixes,
            File = folder.File("points.csv"),
            Book = book,
            Columns = ImmutableDictionary<string, string>.Empty.Add("Ident", "ID").Add("Latitude", "Y").Add("Longitude", "X"),
        };
        var report = BookImport.Run(request);
        Assert.Equal(["ALFIN", "ONE"], report.Sheets[0].Added.ToArray());
        Assert.Equal(1, report.Sheets[0].Same);
        Assert.Equal("points.csv line 5: Latitude \"99\" cannot be read", Assert.Single(report.LeftOut));
        var fixes = BookReader.Read([book, folder.File("week.xlsx")]).Fixes;
        Assert.Equal((41.5, -39.25),
            (fixes.Single(fix => fix.Ident == "ALFIN").Position.LatitudeDeg, fixes.Single(fix => fix.Ident == "ALFIN").Position.LongitudeDeg));
        Assert.Equal(2, fixes.Count(fix => fix.Ident == "ONE"));
        Assert.Contains("--columns",
            Assert.Throws<BookException>(() => BookImport.Run(request with { Columns = ImmutableDictionary<string, string>.Empty })).Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Airways_come_with_units_and_are_named_by_way_and_place()
    {
        using var folder = new TempFolder();
        var book = Starter(folder);
        File.WriteAllText(folder.File("ways.csv"),
            "Airway,Sequence,Fix,Minimum altitude [m],Direction\nV1,10,ONE,914.4,both\nV9,10,TWO,2000,both\nV9,20,ONE,2000,forward\n");
        var report = BookImport.Run(new ImportRequest { Kind = ImportKind.Airways, File = folder.File("ways.csv"), Book = book, Only = ["V1", "V9"] });
        Assert.Equal(["V9 10", "V9 20"], report.Sheets[0].Added.ToArray());
        Assert.Equal((1, 0), (report.Sheets[0].Same, report.Sheets[0].Differences.Length));
        var way = BookReader.Read([book, folder.File("week.xlsx")]).Airways["V9"];
        Assert.Equal(6561.68, way.Points[0].MinimumAltitude?.Value ?? 0, 0.01);
    }

    private static string Starter(TempFolder folder)
    {
        foreach (var book in StarterBooks.Make(new LocalDate(2026, 12, 3))) File.WriteAllBytes(folder.File(book.Name), [.. book.Content]);
        File.WriteAllText(folder.File("airports.csv"), Airports);
        File.WriteAllText(folder.File("runways.csv"), Runways);
        return folder.File("operator.xlsx");
    }

    private static ImportReport Run(TempFolder folder, Func<ImportRequest, ImportRequest> change) => BookImport.Run(change(new ImportRequest
    {
        Kind = ImportKind.Airports,
        File = folder.File("airports.csv"),
        Runways = folder.File("runways.csv"),
        Book = folder.File("operator.xlsx"),
    }));
}
