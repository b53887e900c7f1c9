using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

/// <summary>Amounts of the ladder that depend on a setting: rounding of the uplift, several alternates, burn bias, runway limits.</summary>
public sealed class FuelAmountTests
{
    private static readonly Leg Plain = Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 137);

    private static LegPlan.Planned Planned(OperatorWeek week) => Assert.IsType<LegPlan.Planned>(Assert.Single(Some.Planned(week).Legs));

    [Theory]
    [InlineData(50)]
    [InlineData(67)]
    [InlineData(200)]
    public void The_uplift_is_rounded_up_to_what_the_truck_delivers(double stepLb)
    {
        var week = Some.Week([Plain]);
        var exact = Planned(week);
        var rounded = Planned(week with { Operator = week.Operator with { UpliftRounding = new Pounds(stepLb) } });
        Assert.Equal(0, rounded.Fuel.Uplift.Value % stepLb, 6);
        Assert.True(rounded.Fuel.Uplift >= exact.Fuel.Uplift);
        Assert.InRange((rounded.Fuel.Uplift - exact.Fuel.Uplift).Value, 0, stepLb * 1.05);
        Assert.Equal(137 + rounded.Fuel.Uplift.Value, rounded.Fuel.Aboard.Value, 9);
        Assert.InRange(rounded.Fuel.Margin.Value, -1, stepLb);
    }

    [Fact]
    public void Rounding_does_not_overfill_the_tanks()
    {
        var week = Some.Week([Plain with { FuelPlan = new FuelPlan.Full() }]);
        var plan = Planned(week with { Operator = week.Operator with { UpliftRounding = new Pounds(500) } });
        Assert.Equal(Some.WeekType.UsableFuel, plan.Fuel.Aboard);
    }

    [Fact]
    public void A_destination_filed_as_its_own_alternate_is_said()
    {
        var plan = Assert.IsType<LegPlan.Unplanned>(Assert.Single(Some.Planned(Some.Week([Plain with { Alternate = "XBEL" }])).Legs));
        Assert.Equal("The alternate XBEL is the destination itself.", plan.Why);
    }

    [Fact]
    public void Of_two_alternates_the_one_that_needs_most_fuel_counts_whichever_is_named_first()
    {
        var one = Planned(Some.Week([Plain with { Alternate = "XCOR", SecondAlternate = "XDUN" }]));
        var other = Planned(Some.Week([Plain with { Alternate = "XDUN", SecondAlternate = "XCOR" }]));
        foreach (var plan in new[] { one, other })
        {
            Assert.Equal(2, plan.Alternates.Length);
            var farthest = Assert.Single(plan.Alternates, alternate => alternate.IsFarthest);
            Assert.Equal(plan.Alternates.Max(alternate => alternate.Fuel), farthest.Fuel);
            Assert.Equal(farthest.Fuel, plan.Fuel.Alternate);
        }

        Assert.Equal(one.Fuel.Required.Value, other.Fuel.Required.Value, 1.5);
    }

    // The approach allowance counts at the destination as a missed approach and at the alternate as the approach: its minutes as its fuel.
    [Fact]
    public void The_time_to_an_alternate_includes_the_missed_approach()
    {
        var week = Some.Week([Plain with { Alternate = "XDUN" }]);
        AlternatePlan With(int minutes) =>
            Planned(week with { Types = week.Types.SetItem("Skua 9", Some.WeekType with { ApproachTime = Duration.FromMinutes(minutes) }) }).Alternates[0];
        Assert.Equal(14, (With(7).Time - With(0).Time).TotalMinutes, 0.01);
    }

    [Theory]
    [InlineData(0.03)]
    [InlineData(-0.02)]
    public void The_burn_bias_of_the_aircraft_holds_for_every_pound_burned_in_the_air(double bias)
    {
        var week = Some.Week([Plain with { Alternate = "XDUN", FuelPlan = new FuelPlan.Amount(new Pounds(1500)) }]);
        var plain = Planned(week);
        var biased = Planned(week with { Fleet = week.Fleet.SetItem("ABCDE", week.Fleet["ABCDE"] with { BurnBias = bias }) });
        // The same block fuel: only the weight burned off on the way differs a little.
        Assert.Equal(plain.Fuel.Trip.Value * (1 + bias), biased.Fuel.Trip.Value, plain.Fuel.Trip.Value * 0.001);
        Assert.Equal(plain.Fuel.FinalReserveFlow.Value * (1 + bias), biased.Fuel.FinalReserveFlow.Value, plain.Fuel.FinalReserveFlow.Value * 0.001);
        Assert.Equal(plain.Fuel.Alternate.Value * (1 + bias), biased.Fuel.Alternate.Value, plain.Fuel.Alternate.Value * 0.001);
        Assert.Equal(plain.Fuel.Taxi, biased.Fuel.Taxi);
    }

    [Fact]
    public void A_runway_on_which_no_weight_of_the_table_fits_leaves_no_fuel_and_is_named()
    {
        var week = Some.Week([Plain]);
        OperatorWeek On(double lengthFt) => week with
        {
            Types = week.Types.SetItem("Skua 9",
                Some.WeekType with { Tables = Some.WeekType.Tables with { Takeoff = Some.Flaps(("10", Some.DistanceTable("Takeoff of Skua 9"))) } }),
            Airports = week.Airports.SetItem("XAND", week.Airports["XAND"] with { Runways = [Some.Runway("09", 90, lengthFt)] }),
        };
        var shortest = Planned(On(500));
        Assert.Equal((0, "departure runway"), (shortest.Fuel.Most.Value, shortest.Fuel.MostBoundBy));
        Assert.Equal((-shortest.Load.Payload.Value, "departure runway"), (Assert.NotNull(shortest.PayloadSpare).Value, shortest.PayloadSpareBoundBy));

        // So long that the table ends before the runway does: the runway is no limit.
        var longest = Planned(On(9000));
        Assert.NotEqual("departure runway", longest.Fuel.MostBoundBy);
        Assert.NotEqual("departure runway", longest.PayloadSpareBoundBy);
        Assert.True(Assert.IsType<RunwayResult.Computed>(longest.Departure).Use.IsGreatestWeightTableEnd);
    }
}
