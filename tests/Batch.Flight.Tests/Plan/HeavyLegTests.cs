using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

/// <summary>Legs heavier or lighter than the tables: the reason names the weight and the table's end, the cells are those that decide the weight.</summary>
public sealed class HeavyLegTests
{
    private static Leg Leg(double blockLb) =>
        Some.Leg(1, "XAND", "XBEL", Some.Noon, new FuelPlan.Amount(new Pounds(blockLb))) with { Origin = Row("Legs", 2, "FuelPlan", "K") };

    private static Origin Row(string sheet, int row, string field, string column) =>
        new($"week.xlsx/{sheet}", row, ImmutableDictionary<string, string>.Empty.Add(field, column));

    // Empty 6,000 lb with a pilot of 190 lb and a passenger of 250 lb; 4,000 lb of fuel, no taxi fuel: 10,440 lb where the climb table ends at 10,000 lb.
    [Fact]
    public void A_leg_too_heavy_for_the_climb_table_names_the_weight_and_marks_fuel_and_load()
    {
        var passenger = Some.Passenger(PersonCategory.Adult, 250) with { Trip = "T1", Origin = Row("Manifest", 5, nameof(ManifestLine.Weight), "E") };
        var week = Some.Week([Leg(4000)], [passenger]);
        week = week with { Types = week.Types.SetItem("Skua 9", week.Types["Skua 9"] with { TaxiFuel = Pounds.Zero }) };
        var plan = Assert.IsType<LegPlan.Unplanned>(Some.Planned(week).Legs[0]);
        Assert.Equal(
            "The weight of 10,440 lb is 440 lb more than Climb of Skua 9 goes up to (10,000 lb): take load or fuel off, or give the table heavier rows.",
            plan.Why);
        Assert.Equal("week.xlsx/Legs/K2 week.xlsx/Manifest/E5", string.Join(" ", plan.Cells));
    }

    // Without a load and with little fuel the empty weight of 5,500 lb lies under the 6,000 lb at which the tables begin.
    [Fact]
    public void A_leg_too_light_for_it_says_so()
    {
        var week = Some.Week([Leg(300)]);
        week = week with { Fleet = week.Fleet.SetItem("ABCDE", week.Fleet["ABCDE"] with { BasicEmptyWeight = new Pounds(5000) }) };
        var plan = Assert.IsType<LegPlan.Unplanned>(Some.Planned(week).Legs[0]);
        Assert.Matches("^The weight of 5,[0-9]{3} lb is [0-9]{3} lb less than Climb of Skua 9 begins at \\(6,000 lb\\): give the table lighter rows\\.$",
            plan.Why);
        Assert.Contains("week.xlsx/Legs/K2", plan.Cells);
    }
}
