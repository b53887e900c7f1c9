using Batch.Books.Tests.Support;
using Batch.Flight.Week;

namespace Batch.Books.Tests;

public sealed class UnitsInBooksTests
{
    [Fact]
    public void A_unit_of_the_header_holds_for_its_column_and_a_cell_may_carry_its_own()
    {
        var week = GoodBooks.Read((operatorBook, book) =>
        {
            book["Manifest"][0][4] = "Weight [kg]";
            book.Set("Manifest", 1, "Weight", 90).Set("Manifest", 3, "Weight", "70 lb");
            operatorBook["Runways"][0][3] = "TORA (m)";
            operatorBook.Set("Runways", 1, "TORA (m)", 1500).Set("Runways", 2, "TORA (m)", 1500).Set("Runways", 3, "TORA (m)", 1200)
                .Set("Runways", 4, "TORA (m)", "4000 ft");
        });
        Assert.Equal(90 / 0.45359237, week.Manifest[0].Weight.GetValueOrDefault().Value, 1e-9);
        Assert.Equal(70, week.Manifest[2].Weight.GetValueOrDefault().Value);
        Assert.Equal(1500 / 0.3048, week.Airports["XAND"].Runways[0].TakeoffRun.Value, 1e-9);
        Assert.Equal(4000, week.Airports["XCOR"].Runways[0].TakeoffRun.Value);
        Assert.DoesNotContain(week.Problems, problem => problem.State == State.Fail);
    }

    [Theory]
    [InlineData("kg", "kg")]
    [InlineData("Kilograms", "kg")]
    [InlineData("lbs", "lb")]
    public void The_weight_unit_is_the_unit_in_which_the_operator_reads(string written, string unit) =>
        Assert.Equal(unit, GoodBooks.Read((operatorBook, _) => operatorBook.Add("Operator", "Weight unit", written)).Operator.WeightUnit.Name);

    [Fact]
    public void Without_a_weight_unit_or_with_an_unknown_one_weights_are_in_pounds()
    {
        Assert.Equal(WeightUnit.Pounds, GoodBooks.Read().Operator.WeightUnit);
        var week = GoodBooks.Read((operatorBook, _) => operatorBook.Add("Operator", "Weight unit", "stone"));
        Assert.Equal(WeightUnit.Pounds, week.Operator.WeightUnit);
        Assert.Contains(week.Problems, problem => problem.Text.Contains("Weight unit is not a unit known", StringComparison.Ordinal));
    }

    [Fact]
    public void Fuel_by_volume_becomes_weight_by_the_density_of_the_type()
    {
        var week = GoodBooks.Read((operatorBook, book) =>
        {
            book.Set("Legs", 1, "Fuel aboard", "100 USG").Set("Legs", 3, "Fuel aboard", "100 L");
            operatorBook.Set("Types", 1, "Usable fuel", "400 USG").Set("Holding", 1, "Fuel flow", "50 gph").Set("Holding", 2, "Fuel flow", "150 kg/h");
        });
        Assert.Equal(670, week.Legs[0].FuelAboard.GetValueOrDefault().Value, 1e-9);
        Assert.Equal(100 / 3.785411784 * 6.0, week.Legs[2].FuelAboard.GetValueOrDefault().Value, 1e-9);
        Assert.Equal(2680, week.Types["Skua 9"].UsableFuel.GetValueOrDefault().Value, 1e-9);
        Assert.NotNull(week.Types["Skua 9"].Tables.Holding);
    }

    [Fact]
    public void Fuel_by_volume_without_a_density_is_complained_of()
    {
        var week = GoodBooks.Read((operatorBook, book) =>
        {
            operatorBook.Set("Types", 2, "Density", null);
            book.Set("Legs", 3, "Fuel aboard", "100 USG");
        });
        Assert.Contains("no density for Plover", ProblemsTests.Only(week, State.Fail, "week.xlsx/Legs/S4").Text, StringComparison.Ordinal);
        Assert.Null(week.Legs[2].FuelAboard);
        Assert.Single(week.Legs[2].Doubts);
    }

    [Fact]
    public void The_default_units_of_the_Operator_sheet_hold_where_a_header_names_none()
    {
        var week = GoodBooks.Read((operatorBook, book) =>
        {
            operatorBook.Add("Operator", "Weight unit", "kg").Add("Operator", "Fuel unit", "USG").Add("Operator", "Temperature unit", "°F")
                .Add("Operator", "Speed unit", "km/h").Add("Operator", "Altitude unit", "m");
            book["Manifest"][0][4] = "Weight";
            book.Set("Manifest", 1, "Weight", 90).Set("Manifest", 3, "Weight", 30);
            book["Legs"][0][18] = "Fuel aboard";
            book.Set("Legs", 1, "Fuel aboard", 100).Set("Legs", 1, "Fuel plan", "minimum+20").Set("Legs", 3, "Level", 2000).Set("Legs", 3, "Fuel aboard", 90);
            book["Winds"][0][6] = "Temperature";
            book["Winds"][0][5] = "Speed";
            book.Set("Winds", 1, "Temperature", 50).Set("Winds", 1, "Speed", 100);
        });
        Assert.Equal(90 / 0.45359237, week.Manifest[0].Weight.GetValueOrDefault().Value, 1e-9);
        Assert.Equal(670, week.Legs[0].FuelAboard.GetValueOrDefault().Value, 1e-9);
        Assert.Equal(new FuelPlan.Minimum(new Pounds(20 * 6.7)), week.Legs[0].FuelPlan);
        Assert.Equal(2000 / 0.3048, week.Legs[2].Level.GetValueOrDefault().Value, 1e-9);
        Assert.Equal(10, week.Winds[0].Temperature.GetValueOrDefault().Value, 1e-9);
        Assert.Equal(100 / 1.852, week.Winds[0].WindSpeed.Value, 1e-9);
    }

    [Fact]
    public void A_unit_that_is_not_known_blocks_its_column_and_is_complained_of_once()
    {
        var week = GoodBooks.Read((_, book) => book["Manifest"][0][4] = "Weight [stone]");
        var problem = ProblemsTests.Only(week, State.Fail, "week.xlsx/Manifest/E1");
        Assert.Contains("lb, kg", problem.Expected, StringComparison.Ordinal);
        Assert.Null(week.Manifest[0].Weight);
        Assert.Equal([problem], week.Legs[0].Doubts.ToArray());
    }

    [Fact]
    public void A_cell_with_a_unit_of_another_kind_is_complained_of()
    {
        var week = GoodBooks.Read((_, book) => book.Set("Manifest", 1, "Weight", "45 km"));
        Assert.Contains("unit that is not known for weight", ProblemsTests.Only(week, State.Fail, "week.xlsx/Manifest/E2").Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_header_may_say_that_times_are_UTC()
    {
        var week = GoodBooks.Read((_, book) => book["Legs"][0][3] = "Off blocks [UTC]");
        Assert.Equal(Instant.FromUtc(2026, 12, 7, 7, 30), week.Legs[0].OffBlocks);
    }
}
