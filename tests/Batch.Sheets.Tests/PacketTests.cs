using Batch.Checks;
using Batch.Flight.Plan;

namespace Batch.Sheets.Tests;

public class PacketTests
{
    private static readonly SheetRenderer Renderer = new(TemplateFolder.Shipped);

    private static readonly SheetModel Ana = Model("ANA");

    /// <summary>The week in which somebody gave a reason to fly the leg that fails.</summary>
    private static CheckedWeek Agreed { get; } = SampleWeek.Made with
    {
        Legs = [.. SampleWeek.Made.Legs.Select(leg => leg is { State: LegState.Fail, Plan: LegPlan.Planned plan }
            ? leg with { Plan = plan with { Leg = plan.Leg with { Override = "agreed <by phone>" } } }
            : leg)],
    };

    private static SheetModel Model(string code, CheckedWeek? week = null) => SheetModels.Packet(week ?? SampleWeek.Made, SampleWeek.Facts, code, PaperSize.A4);

    private static string Rendered(SheetModel model)
    {
        var result = Renderer.Render(SheetModels.CrewPacket, model);
        Assert.Empty(result.Problems);
        return result.Html;
    }

    private static int Count(string text, string part) => text.Split(part).Length - 1;

    [Fact]
    public void The_packet_is_the_one_that_was_looked_through() =>
        Golden.Matches("packet-ANA.html",
            Rendered(SheetModels.WithPages(Ana, new Dictionary<string, int> { ["trip-1"] = 3, ["trip-1-leg-1"] = 4, ["trip-1-leg-2"] = 7 })));

    [Fact]
    public void Everybody_with_a_leg_has_a_packet_also_when_no_leg_could_be_planned()
    {
        Assert.Equal<IEnumerable<string>>(["ANA", "BEN"], SheetModels.People(SampleWeek.Made));
        var unplanned = SampleWeek.Made with { Legs = [.. SampleWeek.Made.Legs.Where(leg => leg.State == LegState.Unplanned)], DutyTables = [] };
        Assert.All(SheetModels.People(unplanned), code => Assert.Contains("Held back: trip", Rendered(Model(code, unplanned)), StringComparison.Ordinal));
    }

    [Fact]
    public void A_word_that_is_no_code_of_the_crew_sheet_has_no_packet()
    {
        var input = SampleWeek.Made.Plan.Input;
        var misspelled = SampleWeek.Made with { Plan = SampleWeek.Made.Plan with { Input = input with { Crew = input.Crew.Remove("BEN") } } };
        Assert.Equal<IEnumerable<string>>(["ANA"], SheetModels.People(misspelled));
    }

    [Fact]
    public void Without_a_crew_sheet_every_code_has_a_packet()
    {
        var input = SampleWeek.Made.Plan.Input;
        var strangers = SampleWeek.Made with { DutyTables = [], Plan = SampleWeek.Made.Plan with { Input = input with { Crew = input.Crew.Clear() } } };
        Assert.Equal<IEnumerable<string>>(["ANA", "BEN"], SheetModels.People(strangers));
        Assert.Contains("<h1>Crew packet: ANA</h1>", Rendered(Model("ANA", strangers)), StringComparison.Ordinal);
    }

    [Fact]
    public void Trips_stand_in_order_of_time_each_as_its_own_sheet()
    {
        var html = Rendered(Model("ANA", Agreed));
        Assert.DoesNotContain("<h1>Trip T103", html, StringComparison.Ordinal);
        string[] trips = ["T101", "T102"];
        var places = trips.Select(trip => html.IndexOf($"<h1>Trip {trip}</h1>", StringComparison.Ordinal)).ToArray();
        Assert.All(places, place => Assert.True(place > 0));
        Assert.Equal(places.Order(), places);
        var alone = Renderer.Render(SheetModels.TripSheet, SheetModels.Trip(SampleWeek.Made, SampleWeek.Facts, "T101", PaperSize.A4)).Html;
        var body = alone[alone.IndexOf("<header", StringComparison.Ordinal)..alone.IndexOf("</body>", StringComparison.Ordinal)]
            .Replace("id=\"trip-", "id=\"trip-1-", StringComparison.Ordinal);
        Assert.Contains(body.Trim(), html, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_link_of_the_contents_leads_to_a_place_that_stands_once()
    {
        var html = Rendered(Ana);
        Assert.DoesNotContain("href=\"#\"", html, StringComparison.Ordinal);
        var links = html.Split("href=\"#").Skip(1).Select(rest => rest[..rest.IndexOf('"', StringComparison.Ordinal)]).Distinct(StringComparer.Ordinal)
            .ToArray();
        Assert.Equal(3, links.Length);
        Assert.All(links, link => Assert.Equal(1, Count(html, $"id=\"{link}\"")));
    }

    [Fact]
    public void Page_numbers_stand_in_the_contents_when_they_are_known_and_their_column_is_missing_when_not()
    {
        var pages = new Dictionary<string, int> { ["trip-1"] = 3, ["trip-1-leg-1"] = 44 };
        var numbered = SheetModels.WithPages(Ana, pages);
        Assert.Contains("<a href=\"#trip-1-leg-1\">44</a>", Rendered(numbered), StringComparison.Ordinal);
        Assert.DoesNotContain(">Page<", Rendered(Ana), StringComparison.Ordinal);
        Assert.True(SheetModels.HasPages(numbered, pages));
        Assert.False(SheetModels.HasPages(numbered, new Dictionary<string, int> { ["trip-1"] = 4 }));
    }

    [Fact]
    public void Expected_pages_follow_one_trip_after_the_other()
    {
        var expected = SheetModels.ExpectedPages(Model("ANA", Agreed), 2,
            _ => (4, new Dictionary<string, int> { ["trip"] = 1, ["trip-leg-1"] = 2, ["elsewhere"] = 3 }));
        Assert.Empty(SheetModels.ExpectedPages(Ana, 2, _ => null));
        Assert.Equal(
            new Dictionary<string, int> { ["trip-1"] = 3, ["trip-1-leg-1"] = 4, ["trip-2"] = 7, ["trip-2-leg-1"] = 8 }
                .OrderBy(pair => pair.Key, StringComparer.Ordinal),
            expected.OrderBy(pair => pair.Key, StringComparer.Ordinal));
    }

    [Fact]
    public void The_cover_alone_holds_no_trip_sheet() => Assert.DoesNotContain("<h1>Trip", Rendered(SheetModels.Cover(Ana)), StringComparison.Ordinal);

    [Fact]
    public void The_duty_table_says_what_is_used_and_left_and_what_is_not_known()
    {
        var html = Rendered(Ana);
        Assert.Contains(
            "<td class=\"n\" data-label=\"Used\">2:23</td><td class=\"n\" data-label=\"Limit\">8:00</td><td class=\"n strong\" data-label=\"Left\">5:37</td>",
            html, StringComparison.Ordinal);
        Assert.Contains("<td class=\"n\" data-label=\"Used\">9:30</td><td class=\"n\" data-label=\"Limit\">at least 10:00</td><td class=\"n strong\" data-label=\"Left\"><span class=\"fail-text\">−0:30</span></td>", html, StringComparison.Ordinal);
        Assert.Contains("Nothing is logged before this week.", html, StringComparison.Ordinal);
        Assert.Contains("basis to be confirmed", html, StringComparison.Ordinal);
        Assert.Equal(2, Count(html, "class=\"dutybar\""));
    }

    [Fact]
    public void Trips_with_a_leg_that_fails_are_held_back_unless_somebody_gave_a_reason_to_fly_it()
    {
        Assert.Contains("Held back: trips T102, T103, row 17.</span> T102/1, T103/1, row 17 fail", Rendered(Ana), StringComparison.Ordinal);
        var html = Rendered(Model("ANA", Agreed));
        Assert.Contains("Held back: trips T103, row 17.", html, StringComparison.Ordinal);
        Assert.Contains("agreed &lt;by phone&gt;", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_flies_along_is_named_with_mail_address()
    {
        var html = Rendered(Model("BEN"));
        Assert.Contains("<span class=\"strong\">Ana Quist</span> (ANA) · ana@skerry.example", html, StringComparison.Ordinal);
        Assert.Contains("second pilot", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Someone_who_does_not_fly_has_no_packet() => Assert.Throws<ArgumentException>(() => Model("ZOE"));
}
