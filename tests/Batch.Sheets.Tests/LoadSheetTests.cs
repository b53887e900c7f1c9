using Batch.Checks;
using Batch.Flight.Plan;

namespace Batch.Sheets.Tests;

public class LoadSheetTests
{
    private static readonly SheetRenderer Renderer = new(TemplateFolder.Shipped);

    private static string Sheet(string airport, int day, CheckedWeek? week = null)
    {
        var result = Renderer.Render(SheetModels.LoadSheet,
            SheetModels.Load(week ?? SampleWeek.Made, SampleWeek.Facts, (airport, new LocalDate(2026, 12, day)), PaperSize.A4));
        Assert.Empty(result.Problems);
        return result.Html;
    }

    [Fact]
    public void The_load_sheet_is_the_one_that_was_looked_through() => Golden.Matches("loads-XAND.html", Sheet("XAND", 8));

    [Fact]
    public void Every_departure_stands_on_the_sheet_of_its_airport_and_local_day()
    {
        Assert.Equal([("XAND", 7), ("XBEL", 7), ("XAND", 8), ("XAND", 9)],
            SheetModels.Departures(SampleWeek.Made).Select(place => (place.Airport, place.Day.Day)));
        Assert.All(["T102/1", "T103/1"], key => Assert.Contains(key, Sheet("XAND", 8), StringComparison.Ordinal));
        Assert.DoesNotContain("T101", Sheet("XAND", 8), StringComparison.Ordinal);
    }

    [Fact]
    public void No_person_is_named_and_no_pilots_weight_stands_on_it() =>
        Assert.All(SheetModels.Departures(SampleWeek.Made), place =>
        {
            var html = Sheet(place.Airport, place.Day.Day);
            Assert.All(["Quist", "Orlo", "Mia", "Tarn", "Olaf", "Voss", "ANA", "BEN", "Cockpit"],
                name => Assert.DoesNotContain(name, html, StringComparison.Ordinal));
        });

    [Fact]
    public void Fuel_is_ordered_by_weight_and_by_volume_with_its_density()
    {
        var plan = SampleWeek.Made.Legs[0].Plan as LegPlan.Planned ?? throw new InvalidOperationException("planned");
        var html = Sheet("XAND", 7);
        var pounds = Math.Ceiling(plan.Fuel.Uplift.Value - 1e-6);
        var gallons = Math.Ceiling((plan.Fuel.Uplift.Value / 6.7) - 1e-6);
        var litres = Math.Ceiling((plan.Fuel.Uplift.Value / 6.7 * 3.785411784) - 1e-6);
        Assert.Contains(FormattableString.Invariant($"<td class=\"n big\" data-label=\"Load lb\">{pounds:#,0}</td><td class=\"n big\" data-label=\"Load USG\">{gallons:#,0}</td><td class=\"n big\" data-label=\"Load L\">{litres:#,0}</td>"), html, StringComparison.Ordinal);
        Assert.Contains("6.70 lb/USG", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_and_holds_have_persons_bags_weights_and_room()
    {
        var html = Sheet("XAND", 7);
        Assert.Contains("<td>Row 1°</td><td class=\"n\" data-label=\"Persons\">2 of 2</td>", html, StringComparison.Ordinal);
        Assert.Contains("Pump parts 120 lb in Aft hold", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_leg_that_fails_or_could_not_be_planned_is_not_to_be_loaded_yet()
    {
        var html = Sheet("XAND", 8);
        Assert.Contains("the leg fails a check. Ask the dispatcher.", html, StringComparison.Ordinal);
        Assert.Contains("the leg could not be planned. Ask the dispatcher.", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_leg_that_is_flown_although_it_fails_is_loaded_and_the_reason_stays_in_the_office()
    {
        var agreed = SampleWeek.Made with
        {
            Legs = [.. SampleWeek.Made.Legs.Select(leg => leg.Plan is LegPlan.Planned plan && leg.State == LegState.Fail
            ? leg with { Plan = plan with { Leg = plan.Leg with { Override = "Ana Quist agreed" } } }
            : leg)]
        };
        var html = Sheet("XAND", 8, agreed);
        Assert.DoesNotContain("fails a check. Ask", html, StringComparison.Ordinal);
        Assert.Contains("has decided to fly it all the same", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Quist", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_that_lacks_departures_of_its_day_says_so()
    {
        var part = SampleWeek.Made with { Legs = [.. SampleWeek.Made.Legs.Where(leg => leg.Plan.Key.Trip != "T103")] };
        Assert.Contains("1 other departure of this day is not on this sheet", Sheet("XAND", 8, part), StringComparison.Ordinal);
        Assert.DoesNotContain("not on this sheet", Sheet("XAND", 8), StringComparison.Ordinal);
    }

    [Fact]
    public void An_airport_that_is_not_in_the_book_still_has_its_sheet()
    {
        var input = SampleWeek.Made.Plan.Input;
        var unknown = SampleWeek.Made with { Plan = SampleWeek.Made.Plan with { Input = input with { Airports = input.Airports.Remove("XAND") } } };
        Assert.Contains("T103/1", Sheet("XAND", 8, unknown), StringComparison.Ordinal);
    }

    [Fact]
    public void A_place_without_departures_has_no_sheet() => Assert.Throws<ArgumentException>(() => Sheet("XCOR", 8));
}
