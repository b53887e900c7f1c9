using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Plan;

/// <summary>Fuel and weight together, chains, carried fuel.</summary>
public sealed class WeekPlannerTests
{
    private static readonly Instant Later = Some.Noon + Duration.FromHours(4);

    private static LegPlan.Planned Only(OperatorWeek week, PlanningRules? rules = null) =>
        Assert.IsType<LegPlan.Planned>(Assert.Single(Some.Planned(week, rules).Legs));

    private static LegPlan.Planned[] All(OperatorWeek week) => [.. Some.Planned(week).Legs.Select(Assert.IsType<LegPlan.Planned>)];

    [Fact]
    public void The_fuel_aboard_and_the_weight_flown_with_belong_together_within_one_pound()
    {
        var plan = Only(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 0, alternate: "XDUN")]));
        Assert.True(plan.Fuel.IsConverged);
        Assert.InRange(plan.Fuel.Rounds, 2, 6);
        Assert.Equal(plan.Load.Takeoff.Weight.Value, plan.Profile.TakeoffWeight.Value, 1.0);
        Assert.Equal(plan.Fuel.Required, plan.Fuel.Aboard);
        Assert.Equal(0.75 * plan.Profile.CruiseFlow.Value, plan.Fuel.FinalReserve.Value, 6);
        Assert.Equal(plan.Alternates[0].Fuel, plan.Fuel.Alternate);
    }

    [Fact]
    public void Fuel_that_cannot_be_in_the_tanks_is_not_carried_to_the_next_leg()
    {
        var week = Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, new FuelPlan.Minimum(Pounds.Zero), 3200), Some.Leg(2, "XBEL", "XAND", Later)],
            [Some.Passenger(PersonCategory.Adult, 180)], Some.Reports(0, 0));
        var legs = All(week);
        Assert.Equal(3200, legs[0].Fuel.Before.Value, 9);
        Assert.True(legs[0].Fuel.Landing > legs[0].Type.UsableFuel);
        Assert.Equal(legs[0].Type.UsableFuel, legs[1].Fuel.Before);
    }

    [Fact]
    public void Fuel_loaded_is_fuel_burned_and_left()
    {
        Gen.Select(Gen.Int[0, 6], Gen.Double[0, 360], Gen.Double[0, 80], Gen.Int[0, 3]).Sample((people, windFrom, windKt, plan) =>
        {
            FuelPlan fuelPlan = plan switch
            {
                0 => new FuelPlan.Minimum(new Pounds(150)),
                1 => new FuelPlan.Full(),
                2 => new FuelPlan.Amount(new Pounds(1700)),
                _ => new FuelPlan.Carry(),
            };
            var week = Some.Week(
                [Some.Leg(1, "XAND", "XBEL", Some.Noon, fuelPlan, 300), Some.Leg(2, "XBEL", "XAND", Later)],
                [.. Enumerable.Repeat(Some.Passenger(PersonCategory.Adult, 180), people)],
                Some.Reports(windFrom, windKt));
            var legs = All(week);
            var loaded = 300 + legs.Sum(leg => leg.Fuel.Uplift.Value);
            var burned = legs.Sum(leg => (leg.Fuel.Taxi + leg.Fuel.Trip).Value);
            Assert.Equal(loaded, burned + legs[^1].Fuel.Landing.Value, 6);
            Assert.Equal(legs[0].Fuel.Landing.Value, legs[1].Fuel.Before.Value, 9);
            foreach (var leg in legs)
            {
                Assert.Equal(leg.Profile.TripFuel.Value, leg.Log.Sum(line => line.Burn.Value), 6);
                Assert.Equal(leg.Route.Length.Value, leg.Log.Sum(line => line.Distance.Value), 6);
                Assert.Equal(leg.Fuel.Landing.Value, leg.Log[^1].Remaining.Value, 6);
                var byStations = leg.Load.BasicEmpty.Moment + leg.Load.Items.Aggregate(PoundInches.Zero, (sum, item) => sum + item.Moment);
                Assert.Equal(byStations.Value / leg.Load.ZeroFuel.Weight.Value, leg.Load.ZeroFuel.CentreOfGravity.Value, 9);
            }
        }, iter: 60);
    }

    [Fact]
    public void A_heavier_leg_never_burns_less_and_never_needs_less()
    {
        LegPlan.Planned With(int people) =>
            Only(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon)], [.. Enumerable.Repeat(Some.Passenger(PersonCategory.Adult, 180), people)]));
        var plans = Enumerable.Range(0, 7).Select(With).ToArray();
        foreach (var (lighter, heavier) in plans.Zip(plans.Skip(1)))
        {
            Assert.True(heavier.Fuel.Trip > lighter.Fuel.Trip);
            Assert.True(heavier.Fuel.Required > lighter.Fuel.Required);
        }
    }

    [Fact]
    public void More_headwind_never_needs_less_fuel()
    {
        double Required(double knots) => Only(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon)], winds: Some.Reports(90, knots))).Fuel.Required.Value;
        var required = new double[] { 0, 10, 20, 40, 60, 80 }.Select(Required).ToArray();
        Assert.Equal(required.Order(), required);
        Assert.Equal(required.Length, required.Distinct().Count());
    }

    [Fact]
    public void Pounds_in_a_note_have_their_thousands_parted()
    {
        var plan = Only(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 1200) with { FuelPlan = new FuelPlan.Amount(new Pounds(1000)) }]));
        Assert.Contains("More fuel is aboard than planned: 1,200 lb stand in the tanks, 1,000 lb were asked for.", plan.Notes);
    }

    [Fact]
    public void A_departure_without_fuel_is_served_from_the_leg_before()
    {
        var legs = All(Some.Week([Some.Leg(1, "XBEL", "XDUN", Some.Noon, aboardLb: 200), Some.Leg(2, "XDUN", "XAND", Later)]));
        Assert.Equal(Pounds.Zero, legs[1].Fuel.Uplift);
        Assert.False(legs[1].Fuel.IsSoldHere);
        Assert.InRange(legs[1].Fuel.Margin.Value, 0, 60);
        Assert.True(legs[0].Fuel.Aboard > legs[0].Fuel.Required);
        Assert.Contains(legs[0].Notes, note => note.Contains("needed after landing", StringComparison.Ordinal));
    }

    [Fact]
    public void An_amount_that_no_tank_holds_is_not_asked_of_the_leg_before()
    {
        LegPlan.Planned Before(FuelPlan plan) =>
            All(Some.Week([Some.Leg(1, "XBEL", "XDUN", Some.Noon, aboardLb: 200), Some.Leg(2, "XDUN", "XAND", Later, plan)]))[0];
        Assert.Equal(Before(new FuelPlan.Minimum(Pounds.Zero)).Fuel.Aboard.Value, Before(new FuelPlan.Amount(new Pounds(9000))).Fuel.Aboard.Value, 1.0);
        Assert.True(Before(new FuelPlan.Amount(new Pounds(1500))).Fuel.Landing.Value >= 1500);
    }

    [Fact]
    public void A_fixed_amount_is_taken_as_written_even_when_it_is_short()
    {
        var plan = Only(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, new FuelPlan.Amount(new Pounds(500)), 100)]));
        Assert.Equal(500, plan.Fuel.Aboard.Value);
        Assert.Equal(400, plan.Fuel.Uplift.Value);
        Assert.True(plan.Fuel.Margin.Value < 0);
    }

    [Fact]
    public void The_second_pilot_of_an_aircraft_flown_by_one_is_an_occupant_and_weighs()
    {
        var alone = Only(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon)]));
        var two = Only(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon) with { SecondPilot = "P2" }]));
        Assert.Equal(alone.Load.Occupants + 1, two.Load.Occupants);
        Assert.Equal(180, (two.Load.ZeroFuel.Weight - alone.Load.ZeroFuel.Weight).Value, 6);
    }

    [Fact]
    public void The_options_hold_the_plan_with_its_own_figures_and_a_lower_level_that_burns_more()
    {
        var plan = Only(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon) with { BackupRoute = "4130N03800W" }]));
        var own = Assert.Single(plan.Options, option => option.IsPlan);
        Assert.Equal(plan.Fuel.Trip, own.Trip);
        Assert.Equal(plan.Profile.Time, own.Time);
        Assert.Equal(plan.Fuel.Landing, own.Landing);
        Assert.All(plan.Options.Where(option => option.Level < plan.Profile.Level), option => Assert.True(option.Trip > own.Trip));
        var backup = Assert.Single(plan.Options, option => option.IsBackupRoute);
        Assert.True(backup.Trip > own.Trip);
    }

    [Fact]
    public void Whatever_the_leg_its_options_hold_the_plan_with_its_own_figures() =>
        Gen.Select(Gen.Int[4, 27], Gen.Double[0, 360], Gen.Double[0, 90], Gen.Int[0, 6], Gen.Bool).Sample((level, from, knots, people, isAuto) =>
        {
            var leg = Some.Leg(1, "XAND", "XBEL", Some.Noon, alternate: "XDUN") with
            {
                Level = isAuto ? null : new Feet(level * 1000),
                IsLevelAuto = isAuto,
                BackupRoute = "4200N03800W"
            };
            var plan =
                Only(Some.Week([leg], [.. Enumerable.Range(0, people).Select(_ => Some.Passenger(PersonCategory.Adult, 180))], Some.Reports(from, knots)));
            var own = Assert.Single(plan.Options, option => option.IsPlan);
            Assert.Equal((plan.Profile.Level, plan.Profile.TripFuel, plan.Profile.Time, plan.Fuel.Landing), (own.Level, own.Trip, own.Time, own.Landing));
            Assert.Equal(plan.Fuel.Landing - plan.Fuel.RequiredOnLanding, own.Margin);
            Assert.Equal(plan.Options.Length, plan.Options.Select(option => (option.Level, option.IsBackupRoute)).Distinct().Count());
        }, iter: 40);

    [Fact]
    public void Buying_ahead_is_done_only_where_it_saves_money_and_fits()
    {
        OperatorWeek Week(FuelPlan plan, double priceThere)
        {
            var week = Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, plan, 0), Some.Leg(2, "XBEL", "XAND", Later)]);
            return week with { Airports = week.Airports.SetItem("XBEL", week.Airports["XBEL"] with { FuelPrice = priceThere }) };
        }

        var plain = All(Week(new FuelPlan.Minimum(Pounds.Zero), 9));
        var carried = All(Week(new FuelPlan.Carry(), 9));
        var dear = All(Week(new FuelPlan.Carry(), 5));
        Assert.True(carried[0].Fuel.Uplift > plain[0].Fuel.Uplift);
        Assert.True(Cost(carried, 9) < Cost(plain, 9));
        Assert.Equal(plain[0].Fuel.Uplift, dear[0].Fuel.Uplift);

        static double Cost(LegPlan.Planned[] legs, double priceThere) => (legs[0].Fuel.Uplift.Value * 5) + (legs[1].Fuel.Uplift.Value * priceThere);
    }

    [Fact]
    public void A_leg_whose_aircraft_is_not_known_is_unplanned_at_its_cell_and_the_rest_is_planned()
    {
        var week = Some.Planned(
            Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon) with { Aircraft = "ABCDF" }, Some.Leg(2, "XBEL", "XAND", Later, aboardLb: 900)]));
        var unplanned = Assert.IsType<LegPlan.Unplanned>(week.Legs[0]);
        Assert.Equal("ABCDE", unplanned.Expected);
        Assert.IsType<LegPlan.Planned>(week.Legs[1]);
    }

    [Fact]
    public void A_breakdown_in_one_leg_costs_that_leg_only()
    {
        var input = Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon), Some.Leg(2, "XBEL", "XAND", Later)]);
        var planner = new WeekPlanner(input, (_, _) => SomePlans.Rules);
        var plans = planner.PlanChain(
            "ABCDE", (leg, plan) => leg.Key.Number == 1 ? new LegPlan.Unplanned { Leg = leg, Why = "broke down", IsFault = true } : plan());
        Assert.IsType<LegPlan.Unplanned>(plans[0]);
        Assert.False(Assert.IsType<LegPlan.Planned>(plans[1]).Fuel.IsBeforeKnown);
    }

    [Fact]
    public void A_week_of_an_aircraft_and_a_pilot_adds_up_its_legs()
    {
        var week = Some.Planned(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon), Some.Leg(2, "XBEL", "XAND", Later)]));
        var aircraft = Assert.Single(week.Aircraft);
        Assert.Equal(2, aircraft.Landings);
        Assert.Equal("XBEL", aircraft.Steps[1].StandsAt);
        var crew = Assert.Single(week.Crew);
        var duty = Assert.Single(crew.Duties);
        Assert.Equal(week.Legs.OfType<LegPlan.Planned>().Aggregate(Duration.Zero, (sum, leg) => sum + leg.Times.Block), duty.FlightTime);
    }

    [Fact]
    public void A_duty_of_legs_that_overlap_ends_after_the_one_that_lands_last()
    {
        var week = Some.Planned(Some.Week(
            [Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 1500), Some.Leg(2, "XAND", "XCOR", Some.Noon + Duration.FromMinutes(5), aboardLb: 1500)]));
        var legs = week.Legs.Select(Assert.IsType<LegPlan.Planned>).ToArray();
        Assert.True(legs[0].Times.OnBlocks > legs[1].Times.OnBlocks);
        var duty = Assert.Single(Assert.Single(week.Crew).Duties);
        Assert.Equal(legs[0].Times.OnBlocks + (week.Input.Operator.Release ?? Duration.Zero), duty.Release);
    }

    [Fact]
    public void The_working_ends_at_the_figures_of_the_plan()
    {
        var plan = Only(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, alternate: "XDUN")]));
        var steps = LegWorking.Of(plan);
        double Value(string name) => steps.Single(step => step.Name == name).Value;
        Assert.Equal(plan.Fuel.Required.Value, Value("fuel required"));
        Assert.Equal(plan.Load.Takeoff.CentreOfGravity.Value, Value("centre of gravity at takeoff"));
        Assert.Equal(plan.Fuel.Required.Value, steps.Single(step => step.Name == "fuel required").Inputs.Sum(input => input.Value), 6);
        Assert.Equal(plan.Fuel.Trip.Value, steps.Single(step => step.Name == "trip fuel").Inputs.Sum(input => input.Value), 6);
    }
}
