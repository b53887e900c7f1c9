using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Plan;

/// <summary>Additional fuel for a failure at the critical point.</summary>
public sealed class AdditionalFuelTests
{
    private static readonly Airport West = Some.Airport("XWES", 0, -40, 0) with { FuelsSold = [FuelKind.JetA1] };
    private static readonly Airport East = Some.Airport("XEAS", 0, -30, 0) with { FuelsSold = [FuelKind.JetA1] };
    private static readonly PlanningRules Asked = SomePlans.Rules with { Fuel = SomePlans.Rules.Fuel with { AsksForAdditional = true } };

    /// <summary>
    /// Climb 10 lb and 4 NM, descent 3 lb and 4 NM for every 1,000 ft; 200 kt at 400 lb/h above, 800 lb/h at 10,000 ft; holding 360 lb/h; approach 30 lb.
    /// </summary>
    private static readonly AircraftType Plain = Some.WeekType with
    {
        Tables = Some.PlainType().Tables with { Cruise = Some.Settings(("cruise", Cruise("cruise", 20_000, 400))), Holding = SomePlans.HoldingTable },
    };

    private static PerformanceTable Cruise(string setting, double highestFt, double highestFlow) => Some.Table(
        $"Cruise ({setting}) of Plank 1",
        ["weight [lb]", "ISA deviation [K]", "pressure altitude [ft]"],
        ["true airspeed [kt]", "fuel flow [lb/h]"],
        [Some.Row([double.NaN, double.NaN, 0], 200, 800), Some.Row([double.NaN, double.NaN, 10_000], 200, 800),
            Some.Row([double.NaN, double.NaN, highestFt], 200, highestFlow)]);

    private static AircraftType WithOneEngine(AircraftType type) =>
        type with { Tables = type.Tables with { Cruise = type.Tables.Cruise.Add("one engine", Cruise("one engine", 15_000, 700)) } };

    private static OperatorWeek Week(AircraftType type, params Airport[] others)
    {
        var week = Some.Week([Some.Leg(1, "XWES", "XEAS", Some.Noon, aboardLb: 0)]);
        return week with
        {
            Types = week.Types.SetItem("Skua 9", type),
            Airports = others.Append(West).Append(East)
                .ToImmutableSortedDictionary(airport => airport.Ident, airport => airport, StringComparer.OrdinalIgnoreCase),
        };
    }

    private static LegPlan.Planned Planned(OperatorWeek week, PlanningRules rules) =>
        Assert.IsType<LegPlan.Planned>(Assert.Single(Some.Planned(week, rules).Legs));

    [Fact]
    public void Halfway_over_water_the_thick_air_at_ten_thousand_feet_asks_for_what_a_hand_reckons()
    {
        var plan = Planned(Week(Plain), Asked);
        var lengthNm = plan.Route.Length.Value;
        Assert.Equal(601.08, lengthNm, 0.01);

        // Cruise from 80 NM on in steps of 25: the worst point is 305 NM out, just past the middle; the nearest airport is the destination.
        // Down to 10,000 ft: 30 lb, 40 NM. Level: all but 80 NM at 4 lb a mile. Down: 30 lb, 40 NM. Approach 30 lb. Holding: 90 lb.
        var point = Assert.Single(plan.Fuel.CriticalPoints);
        Assert.Equal((CriticalFailure.CabinPressure, "XEAS"), (point.Failure, point.Airport));
        Assert.Equal(305, point.Distance.Value, 1e-6);
        Assert.Equal(10_000, point.Level.Value);
        Assert.Equal(30, point.Descent.Value, 1e-6);
        Assert.Equal(4 * (lengthNm - 305 - 80), point.Cruise.Value, 1e-3);
        Assert.Equal(60, point.Approach.Value, 1e-6);
        Assert.Equal(90, point.Holding.Value, 1e-6);

        // Left there: 45 minutes of reserve, 2 lb for each mile of cruise still to go, descent and approach.
        Assert.Equal(300 + (2 * (lengthNm - 305 - 80)) + 60 + 30, point.Left.Value, 1e-3);
        Assert.Equal(222.15, plan.Fuel.Additional.Value, 0.05);
        Assert.Equal(point.Shortfall, plan.Fuel.Additional);
        Assert.Equal(plan.Fuel.Taxi + plan.Fuel.Trip + plan.Fuel.FinalReserve + plan.Fuel.Additional, plan.Fuel.Aboard);
        Assert.True(plan.Fuel.IsConverged);
        Assert.Contains("Additional fuel for an engine failure is not computed: the Cruise sheet has no setting 'one engine' for Skua 9.", plan.Assumptions);
    }

    [Fact]
    public void With_figures_for_one_engine_the_flight_goes_on_as_high_as_they_reach()
    {
        var plan = Planned(Week(WithOneEngine(Plain)), Asked);
        var lengthNm = plan.Route.Length.Value;
        Assert.Equal([CriticalFailure.CabinPressure, CriticalFailure.Engine], plan.Fuel.CriticalPoints.Select(point => point.Failure));
        var engine = plan.Fuel.CriticalPoints[1];
        Assert.Equal(15_000, engine.Level.Value);
        Assert.Equal(15, engine.Descent.Value, 1e-6);
        Assert.Equal(3.5 * (lengthNm - 305 - 80), engine.Cruise.Value, 1e-3);
        Assert.Equal(45 + 30, engine.Approach.Value, 1e-6);
        Assert.Equal(plan.Fuel.CriticalPoints[0].Shortfall, plan.Fuel.Additional);
        Assert.DoesNotContain(plan.Assumptions, sentence => sentence.StartsWith("Additional", StringComparison.Ordinal));
    }

    [Fact]
    public void A_headwind_on_the_way_to_the_nearest_airport_counts()
    {
        // 50 kt from the east: 250 kt back west, 150 kt on east; from 305 NM the west is now the nearer in time.
        var week = Week(Plain);
        var plan = Planned(week with { Winds = [.. Some.Reports(90, 50)] }, Asked);
        var point = Assert.Single(plan.Fuel.CriticalPoints);
        var (groundKt, nm) = point.Airport == "XEAS" ? (150, plan.Route.Length.Value - point.Distance.Value) : (250, point.Distance.Value);
        Assert.Equal(nm, point.AirportDistance.Value, 1e-3);
        // Two descents of 10 minutes each at an airspeed of 240 kt, 40 kt more than in the cruise.
        Assert.Equal(800 * (nm - ((groundKt + 40) * 20.0 / 60)) / groundKt, point.Cruise.Value, 0.01);
    }

    [Fact]
    public void Where_the_rules_do_not_ask_there_is_none_and_nothing_is_said()
    {
        var plan = Planned(Week(WithOneEngine(Plain)), SomePlans.Rules);
        Assert.Equal(Pounds.Zero, plan.Fuel.Additional);
        Assert.Empty(plan.Fuel.CriticalPoints);
        Assert.DoesNotContain(plan.Assumptions.Concat(plan.Notes), sentence => sentence.Contains("dditional fuel", StringComparison.Ordinal));
    }

    [Fact]
    public void An_aircraft_with_one_engine_and_no_pressure_needs_none_and_says_why()
    {
        var plan = Planned(Week(WithOneEngine(Plain) with { Engines = 1, Pressurised = false }), Asked);
        Assert.Equal(Pounds.Zero, plan.Fuel.Additional);
        Assert.Empty(plan.Fuel.CriticalPoints);
        Assert.Contains("No additional fuel for a loss of cabin pressure: Skua 9 is not pressurised.", plan.Notes);
        Assert.Contains("No additional fuel for an engine failure: Skua 9 has one engine.", plan.Notes);
    }

    [Fact]
    public void At_ten_thousand_feet_the_cabin_has_nothing_to_lose()
    {
        var week = Week(Plain with { Engines = 1 });
        var plan = Planned(week with { Legs = [week.Legs[0] with { Level = new Feet(10_000) }] }, Asked);
        Assert.Equal(Pounds.Zero, plan.Fuel.Additional);
        Assert.Contains("No additional fuel for a loss of cabin pressure: the cruise lies no higher than 10,000 ft.", plan.Notes);
    }

    [Fact]
    public void An_airport_in_the_middle_helps_only_where_its_runway_is_long_enough()
    {
        var type = Plain with { Tables = Plain.Tables with { Landing = Some.Flaps(("30", Some.DistanceTable("Landing of Skua 9"))) } };
        var middle = Some.Airport("XMID", 0.5, -35, 0);
        var none = Planned(Week(type), Asked);
        var short1 = Planned(Week(type, middle with { Runways = [Some.Runway("09", 90, 900)] }), Asked);
        var long1 = Planned(Week(type, middle with { Runways = [Some.Runway("09", 90, 9000)] }), Asked);
        var unknown = Planned(Week(type, middle), Asked);
        Assert.Equal(none.Fuel.Additional.Value, short1.Fuel.Additional.Value, 6);
        Assert.True(long1.Fuel.Additional < none.Fuel.Additional);
        Assert.Equal(long1.Fuel.Additional.Value, unknown.Fuel.Additional.Value, 6);
    }

    [Fact]
    public void The_working_names_the_point_the_airport_and_every_part()
    {
        var plan = Planned(Week(Plain), Asked);
        var steps = LegWorking.Of(plan).ToList();
        var step = Assert.Single(steps, step => step.Name == "additional for loss of cabin pressure");
        double Input(string name) => Assert.Single(step.Inputs, input => input.Name == name).Value;
        Assert.Equal(step.Value, Input("descent") + Input("level flight") + Input("descent and approach") + Input("holding") - Input("left there"), 6);
        Assert.Equal(305, Input("point after departure"), 1e-6);
        Assert.Equal(plan.Fuel.Additional.Value, Assert.Single(steps, step => step.Name == "additional").Value);
    }

    [Fact]
    public void It_is_never_negative_converges_and_more_airports_never_raise_it()
    {
        var rules = Asked with { Fuel = Asked.Fuel with { FinalReserveDay = Duration.FromMinutes(10), FinalReserveNight = Duration.FromMinutes(10) } };
        var smooth = WithOneEngine(Some.WeekType);
        var asked = 0;
        Gen.Select(Gen.Double[0, 360], Gen.Double[0, 90], Gen.Int[0, 3], Gen.Select(Gen.Double[-3, 3], Gen.Double[-41, -29]).List[0, 5])
            .Sample((windFrom, windKt, people, places) =>
        {
            Airport[] airports = [.. places.Select((place, index) => Some.Airport("XP" + index, place.Item1, place.Item2, index * 700))];
            double last = double.PositiveInfinity;
            for (var count = 0; count <= airports.Length; count++)
            {
                var week = Week(smooth, airports[..count]);
                var plan = Planned(
                    week with
                    {
                        Winds = [.. Some.Reports(windFrom, windKt)],
                        Manifest = [.. Enumerable.Repeat(Some.Passenger(PersonCategory.Adult, 180), people)]
                    }, rules);
                Assert.True(plan.Fuel.IsConverged);
                Assert.True(plan.Fuel.Additional >= Pounds.Zero);
                Assert.True(plan.Fuel.CriticalPoints.Length == 2, string.Join('\n', plan.Assumptions));
                Assert.All(plan.Fuel.CriticalPoints, point => Assert.True(plan.Fuel.Additional >= point.Shortfall));
                // The iteration stops within 1 lb, so that two runs may differ by as much in weight.
                Assert.True(plan.Fuel.Additional.Value <= last + 0.5);
                last = plan.Fuel.Additional.Value;
                if (last > 0) Interlocked.Increment(ref asked);
            }
        }, iter: 40);
        Assert.True(asked > 0);
    }
}
