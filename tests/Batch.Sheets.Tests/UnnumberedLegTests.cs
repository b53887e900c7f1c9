using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Sheets.Tests;

/// <summary>Legs whose number could not be read: their rows tell them apart on a trip sheet too.</summary>
public class UnnumberedLegTests
{
    private static CheckedWeek Week { get; } = Made();

    [Theory]
    [InlineData("", "Trip T7, row 5", "Row 5", ">row 5<")]
    [InlineData("metric", "Trip T7, row 5", "Row 5", ">row 5<")]
    [InlineData("german", "Reise T7, Zeile 5", "Zeile 5", ">Zeile 5<")]
    public void A_trip_sheet_names_the_row_where_the_number_could_not_be_read(string example, string head, string finding, string answer)
    {
        var html = Sheet(example, "T7");
        Assert.Contains(head, html, StringComparison.Ordinal);
        Assert.Contains($"<div class=\"leg\">{finding}</div>", html, StringComparison.Ordinal);
        Assert.Contains(answer, html, StringComparison.Ordinal);
        Assert.DoesNotMatch("(?i)\\b(leg|legs|flug|flüge) 0\\b", html);
    }

    [Theory]
    [InlineData("")]
    [InlineData("metric")]
    [InlineData("german")]
    public void Two_such_legs_are_two_places_of_the_sheet(string example)
    {
        var html = Sheet(example, "T7");
        Assert.Equal(1, Count(html, "id=\"trip-leg-row-5\""));
        Assert.Equal(1, Count(html, "id=\"trip-leg-row-6\""));
    }

    [Theory]
    [InlineData("")]
    [InlineData("german")]
    public void What_could_not_be_checked_of_such_legs_and_of_others_stands_in_one_line(string example) =>
        Assert.Contains(example == "german" ? "<div class=\"leg\">Flug 1, Zeile 5, 6</div>" : "<div class=\"leg\">Leg 1, row 5, 6</div>", Sheet(example, "T7"),
            StringComparison.Ordinal);

    [Fact]
    public void A_row_without_trip_and_number_has_no_leg_0() =>
        Assert.DoesNotMatch("(?i)\\bleg 0\\b|>0</span>", Sheet("", "row 17"));

    [Fact]
    public void The_findings_leave_the_number_empty_and_say_the_row()
    {
        var lines = System.Text.Encoding.UTF8.GetString(FindingsTable.Csv(Week)).Split("\r\n").Where(line => line.StartsWith("T7,,", StringComparison.Ordinal))
            .ToArray();
        Assert.Equal(6, lines.Length);
        Assert.Equal(3, lines.Count(line => line.EndsWith(",5", StringComparison.Ordinal)));
        Assert.Equal(3, lines.Count(line => line.EndsWith(",6", StringComparison.Ordinal)));
        Assert.DoesNotContain("T7,0,", System.Text.Encoding.UTF8.GetString(FindingsTable.Csv(Week)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_register_says_the_row_and_links_each_leg_to_its_own_answers()
    {
        using var stream = new MemoryStream();
        ComplianceRegister.Write(Week, stream);
        using var book = new System.IO.Compression.ZipArchive(new MemoryStream(stream.ToArray()));
        var sheets = book.Entries.Where(entry => entry.FullName.StartsWith("xl/worksheets/sheet", StringComparison.Ordinal)).Select(entry =>
        {
            using var reader = new StreamReader(entry.Open());
            return reader.ReadToEnd();
        }).ToArray();
        var legs = Assert.Single(
            sheets, sheet => sheet.Contains("Second pilot", StringComparison.Ordinal) && sheet.Contains("What fails", StringComparison.Ordinal));
        Assert.Contains("row 5", legs, StringComparison.Ordinal);
        Assert.Contains("row 6", legs, StringComparison.Ordinal);
        var targets = legs.Split("Answers!A").Skip(1).Select(rest => string.Concat(rest.TakeWhile(char.IsAsciiDigit))).ToArray();
        Assert.Equal(targets.Length, targets.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(Week.Legs.Length, targets.Length);
    }

    [Fact]
    public void The_run_record_says_the_row_beside_leg_0()
    {
        var legs = System.Text.Json.Nodes.JsonNode.Parse(RunRecord.Json(Week, SampleWeek.Facts))?["legs"]?.AsArray() ?? [];
        Assert.Equal([("T7", 6), ("T7", 5)], legs.Where(leg => leg?["leg"]?.GetValue<int>() == 0
            && leg["trip"]?.GetValue<string>() == "T7").Select(leg => (leg?["trip"]?.GetValue<string>() ?? "", leg?["row"]?.GetValue<int>() ?? 0)));
        Assert.All(legs.Where(leg => leg?["leg"]?.GetValue<int>() > 0), leg => Assert.Null(leg?["row"]));
    }

    private static string Sheet(string example, string trip)
    {
        var folder = example.Length == 0 ? TemplateFolder.Shipped : TemplateFolder.Over(RepositoryRoot.PathOf("templates", "examples", example));
        var result = new SheetRenderer(folder).Render(SheetModels.TripSheet, SheetModels.Trip(Week, SampleWeek.Facts, trip, PaperSize.A4));
        Assert.Empty(result.Problems);
        return result.Html;
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    private static CheckedWeek Made()
    {
        var numbered = SampleWeek.Made.Legs[0];
        var planned = Assert.IsType<LegPlan.Planned>(numbered.Plan);
        CheckedLeg Unnumbered(int row) => new()
        {
            Plan = new LegPlan.Unplanned
            {
                Broken = new BrokenLeg
                {
                    Key = new LegKey("T7", 0) { Row = row },
                    Aircraft = "XQ-SKA",
                    From = "XAND",
                    Date = new LocalDate(2026, 12, 9),
                    Captain = "ANA",
                    Problems = []
                },
                Why = "Leg is not a number.",
                Cells = [],
            },
            Findings = [SampleFindings.Fail, SampleFindings.NotChecked],
        };
        return SampleWeek.Made with
        {
            Legs = [.. SampleWeek.Made.Legs, Unnumbered(6), Unnumbered(5),
                numbered with { Plan = planned with { Leg = planned.Leg with { Key = new LegKey("T7", 1) } } }],
        };
    }
}
