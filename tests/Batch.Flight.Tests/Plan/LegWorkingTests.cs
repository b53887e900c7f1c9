using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

/// <summary>What the working prints is enough to reckon its figures again, with the tables of the book at hand.</summary>
public sealed class LegWorkingTests
{
    private static LegPlan.Planned Plan { get; } = Planned();

    private static ImmutableArray<WorkingStep> Steps { get; } = [.. LegWorking.Of(Plan)];

    private static LegPlan.Planned Planned()
    {
        var week = Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, alternate: "XDUN")], [Some.Passenger(PersonCategory.Adult, 180)], Some.Reports(250, 30));
        var tables = Some.WeekType.Tables with { Takeoff = Some.RunwayType.Tables.Takeoff, Landing = Some.RunwayType.Tables.Landing };
        week = week with
        {
            Types = week.Types.SetItem("Skua 9", Some.WeekType with { Tables = tables, Corrections = Some.RunwayType.Corrections }),
            Fleet = week.Fleet.SetItems(week.Fleet.Values.Select(aircraft => KeyValuePair.Create(aircraft.Registration, aircraft with { BurnBias = 0.03 }))),
            Airports = week.Airports.SetItems(week.Airports.Values.Select(
                airport => KeyValuePair.Create(airport.Ident, airport with { Runways = [Some.Runway("09", 90, 6000), Some.Runway("27", 270, 6000)] }))),
        };
        return Assert.IsType<LegPlan.Planned>(Some.Planned(week).Legs[0]);
    }

    private static double In(WorkingStep step, string name) => Assert.Single(step.Inputs, input => input.Name == name).Value;

    private static WorkingStep Named(string name) => Assert.Single(Steps, step => step.Name == name);

    private static double Read(PerformanceTable? table, int value, params ReadOnlySpan<double> keys)
    {
        Assert.NotNull(table);
        var values = new double[table.ValueNames.Length];
        Assert.True(table.Read(keys, values).IsInside);
        return values[value];
    }

    [Fact]
    public void The_burn_of_every_cruise_step_follows_from_the_table_at_the_weight_and_deviation_printed()
    {
        var table = Plan.Type.Tables.Cruise[Plan.Profile.Setting];
        var steps = Steps.Where(step => step.Name.StartsWith("cruise ", StringComparison.Ordinal) && step.Name.EndsWith(", burn", StringComparison.Ordinal))
            .ToArray();
        Assert.NotEmpty(steps);
        Assert.All(steps, step =>
        {
            var flow = Read(table, 1, In(step, "weight"), In(step, "deviation from the standard temperature"), In(step, "from altitude"));
            Assert.Equal(flow, In(step, "fuel flow"), 0.01);
            Assert.Equal(step.Value, flow * In(step, "time") / 60 * (1 + In(step, "burn bias")), 0.01);
        });
    }

    [Fact]
    public void The_burn_of_every_climb_slice_follows_from_the_table()
    {
        var steps = Steps.Where(step => step.Name.StartsWith("climb ", StringComparison.Ordinal) && step.Name.EndsWith(", burn", StringComparison.Ordinal))
            .ToArray();
        Assert.NotEmpty(steps);
        Assert.All(steps, step =>
        {
            double At(string altitude) =>
                Read(Plan.Type.Tables.Climb, 1, In(step, "weight"), In(step, "deviation from the standard temperature"), In(step, altitude));
            Assert.Equal(At("to altitude") - At("from altitude"), In(step, "table difference"), 0.05);
            Assert.Equal(step.Value, In(step, "table difference") * (1 + In(step, "burn bias")), 6);
        });
    }

    [Fact]
    public void The_flow_of_the_final_reserve_follows_from_the_table()
    {
        var step = Named("cruise flow");
        var flow =
            Read(Plan.Type.Tables.Cruise[Plan.Profile.Setting], 1, In(step, "weight"), In(step, "deviation from the standard temperature"), In(step, "level"));
        Assert.Equal(flow, In(step, "flow of the table"), 6);
        Assert.Equal(In(Named("final reserve"), "flow"), flow * (1 + In(step, "burn bias")), 6);
    }

    [Theory]
    [InlineData("on the ramp")]
    [InlineData("at takeoff")]
    [InlineData("on landing")]
    public void A_centre_of_gravity_follows_from_the_moments_printed(string when)
    {
        var step = Named("centre of gravity " + when);
        Assert.Equal(step.Value, (In(step, "zero-fuel moment") + In(step, "fuel moment")) / In(step, "weight"), 9);
        Assert.Equal(In(step, "weight"), Plan.Load.ZeroFuel.Weight.Value + In(step, "fuel"), 9);
    }

    [Fact]
    public void The_wind_along_the_runway_follows_from_the_wind_printed()
    {
        var headwind = Assert.Single(Steps, step => step.Name.StartsWith("takeoff headwind", StringComparison.Ordinal));
        var angle = (In(headwind, "wind from") - In(headwind, "runway bearing")) * Math.PI / 180;
        Assert.True(In(headwind, "wind speed") > 5);
        Assert.Equal(headwind.Value, In(headwind, "wind speed") * Math.Cos(angle), 9);
    }

    /// <summary>16 min instead of the usual 10: 60 lb × 16 ÷ 10 = 96 lb. A shorter taxi is not credited.</summary>
    [Theory]
    [InlineData(16, 96, 1, true)]
    [InlineData(16, 96, 1, false)]
    [InlineData(10, 60, 0, true)]
    [InlineData(4, 60, 0, true)]
    public void A_taxi_longer_than_usual_burns_more_in_proportion_and_says_so(int minutes, double lb, int sentences, bool isUsualSaid)
    {
        var leg = Some.Leg(1, "XAND", "XBEL", Some.Noon, alternate: "XDUN") with { Taxi = Duration.FromMinutes(minutes) };
        var week = Some.Week([leg]);
        var plan = Assert.IsType<LegPlan.Planned>(Some.Planned(isUsualSaid ? week : week with { Operator = week.Operator with { TaxiOut = null } }).Legs[0]);
        Assert.Equal(lb, plan.Fuel.Taxi.Value, 9);
        Assert.Equal(lb, plan.Load.Ramp.Weight.Value - plan.Load.Takeoff.Weight.Value, 6);
        Assert.Equal(sentences, plan.Assumptions.Count(text => text == FormattableString.Invariant(
            $"Taxi of {minutes} min instead of the usual 10 min: taxi fuel {lb} lb in proportion, not the 60 lb of Types.")));
    }
}
