namespace Batch.Sheets.Tests;

public class SheetTests
{
    private static readonly SheetRenderer Renderer = new(TemplateFolder.Shipped);

    private static string Trip(string trip, PaperSize paper = PaperSize.A4) =>
        Rendered(Renderer.Render(SheetModels.TripSheet, SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, trip, paper)));

    private static string Rendered(RenderResult result)
    {
        Assert.Empty(result.Problems);
        return result.Html;
    }

    [Fact]
    public void Every_trip_of_the_week_has_a_sheet() =>
        Assert.All(SheetModels.Trips(SampleWeek.Made), trip => Assert.Contains("</html>", Trip(trip), StringComparison.Ordinal));

    [Fact]
    public void The_trip_sheet_is_the_one_that_was_looked_through() => Golden.Matches("T101.html", Trip("T101"));

    [Fact]
    public void The_week_board_is_the_one_that_was_looked_through() => Golden.Matches("index.html", Board());

    [Fact]
    public void Markup_in_a_name_is_text()
    {
        var html = Trip("T101");
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Olaf &lt;script&gt;alert(1)&lt;/script&gt; Reed", html, StringComparison.Ordinal);
    }

    [Fact]
    public void An_ampersand_in_remarks_is_text() => Assert.Contains("Meet &amp; greet at the north gate", Trip("T101"), StringComparison.Ordinal);

    [Fact]
    public void Names_of_passengers_stand_in_the_manifest_alone()
    {
        var html = Trip("T101");
        var manifest = html.IndexOf("Manifest</h2>", StringComparison.Ordinal);
        Assert.True(manifest > 0);
        Assert.All(["Mia Tarn", "Ida Voss", "Olaf"], name => Assert.True(html.IndexOf(name, StringComparison.Ordinal) > manifest, name));
    }

    [Fact]
    public void The_week_board_names_no_person()
    {
        var html = Board();
        Assert.All(["Quist", "Orlo", "Mia", "Olaf", "Voss"], name => Assert.DoesNotContain(name, html, StringComparison.Ordinal));
    }

    [Fact]
    public void The_paper_size_is_the_one_asked_for()
    {
        Assert.Contains("size: Letter;", Trip("T101", PaperSize.Letter), StringComparison.Ordinal);
        Assert.Contains("size: A4;", Trip("T101"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_trip_that_could_not_be_planned_has_a_sheet_that_says_why()
    {
        var html = Trip("T103");
        Assert.Contains("The route element NORRO is not known.", html, StringComparison.Ordinal);
        Assert.Contains("Did you mean NORRA?", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Problems_of_the_books_stand_on_the_board_with_their_cells() =>
        Assert.All(SampleWeek.Made.Plan.Input.Problems, problem => Assert.Contains(problem.Cell, Board(), StringComparison.Ordinal));

    [Fact]
    public void The_board_allows_its_own_script_and_nothing_else()
    {
        var html = Board();
        var script = html.Split("<script>")[1].Split("</script>")[0];
        var hash = Convert.ToBase64String(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(script)));
        Assert.Contains(
            $"content=\"default-src 'none'; style-src 'unsafe-inline'; font-src data:; script-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'\"", html,
            StringComparison.Ordinal);
        Assert.Equal(2, html.Split("<script").Length);
        Assert.DoesNotContain("http:", html.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotContain("https:", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Markup_in_the_books_is_text_on_the_board()
    {
        const string Bad = "\"><script>alert(1)</script><img src=x onerror=alert(1)>";
        var legs = SampleWeek.Made.Legs;
        var leg = legs[2] with { Findings = [SampleFindings.Fail with { Text = Bad, Title = Bad, Citation = Bad, Cells = [Bad], Actor = Bad, Check = Bad }] };
        var read = SampleWeek.Made.Plan.Input;
        var week = SampleWeek.Made with
        {
            Legs = [leg with { Plan = ((Batch.Flight.Plan.LegPlan.Planned)leg.Plan) with { Leg =
                ((Batch.Flight.Plan.LegPlan.Planned)leg.Plan).Leg with { Key = new(Bad, 1), Aircraft = Bad, Captain = Bad, From = Bad } } }],
            Plan = SampleWeek.Made.Plan with { Input = read with { Operator = read.Operator with { Name = Bad, Contact = Bad, Language = Bad } } },
        };
        var html = Rendered(Renderer.Render(SheetModels.WeekBoard, SheetModels.Board(week, SampleWeek.Facts, PaperSize.A4)));
        Assert.Equal(2, html.Split("<script").Length);
        Assert.DoesNotContain("<img", html, StringComparison.Ordinal);
        Assert.DoesNotContain(Bad, html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_notice_that_says_the_same_of_both_directions_of_a_runway_stands_once()
    {
        var input = SampleWeek.Made.Plan.Input;
        var notice = input.Notices[0];
        var week = SampleWeek.Made with
        {
            Plan = SampleWeek.Made.Plan with
            {
                Input =
            input with { Notices = [notice, notice with { Subject = "XBEL 27" }, notice with { Subject = "XBEL", Text = "No ramp staff" }] }
            }
        };
        var html = Rendered(Renderer.Render(SheetModels.TripSheet, SheetModels.Trip(week, SampleWeek.Facts, "T101", PaperSize.A4)));
        Assert.Contains("XBEL 09, XBEL 27: ", html, StringComparison.Ordinal);
        Assert.Contains("XBEL: ", html, StringComparison.Ordinal);
        Assert.DoesNotContain(">XBEL 27: ", html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_week_gives_the_same_sheet() => Assert.Equal(Trip("T101"), Trip("T101"));

    [Fact]
    public void A_week_without_legs_has_a_board()
    {
        var input = SampleWeek.Made.Plan.Input with { Legs = [], BrokenLegs = [], Problems = [] };
        var week = SampleWeek.Made with { Legs = [], Plan = SampleWeek.Made.Plan with { Input = input, Legs = [], Crew = [], Aircraft = [] } };
        Assert.Contains("Week board", Rendered(Renderer.Render(SheetModels.WeekBoard, SheetModels.Board(week, SampleWeek.Facts, PaperSize.A4))),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("T101", "T101")]
    [InlineData("row 17", "row~002017")]
    [InlineData("A/B", "A~002fB")]
    [InlineData("..", "~002e~002e")]
    [InlineData("", "~")]
    [InlineData("../../etc/passwd", "~002e~002e~002f~002e~002e~002fetc~002fpasswd")]
    [InlineData("АНЯ", "~0410~041d~042f")]
    [InlineData("con", "con~")]
    [InlineData("LPT1", "LPT1~")]
    [InlineData("CONNIE", "CONNIE")]
    public void A_name_becomes_a_file_name_that_no_system_refuses(string name, string file) => Assert.Equal(file, SheetName.Of(name));

    [Fact]
    public void Long_names_stay_short_enough_for_a_file_and_do_not_meet()
    {
        var (one, other) = (SheetName.Of(new string('я', 60) + "1"), SheetName.Of(new string('я', 60) + "2"));
        Assert.InRange(one.Length, 1, 100);
        Assert.NotEqual(one, other);
    }

    [Fact]
    public void Sheets_stand_in_the_folders_of_the_run() =>
        Assert.Equal(["sheets/T101", "packets/ANA", "loads/XAND-2026-12-07"],
            [SheetPaths.Trip("T101"), SheetPaths.Packet("ANA"), SheetPaths.Load("XAND", new LocalDate(2026, 12, 7))]);

    private static string Board() => Rendered(Renderer.Render(SheetModels.WeekBoard, SheetModels.Board(SampleWeek.Made, SampleWeek.Facts, PaperSize.A4)));
}
