using Batch.Flight.Air;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Week;

/// <summary>A scenario gives the numbers of a week in which it is written down.</summary>
public sealed class ScenarioTests
{
    private static readonly ImmutableArray<ManifestLine> People =
        [Some.Passenger(PersonCategory.Adult, 180), Some.Passenger(PersonCategory.Adult, 200)];

    [Fact]
    public void Hot_is_what_every_report_ten_degrees_warmer_gives()
    {
        AirReport[] winds = [.. Some.Reports(250, 30)
            .Select(report => report with { Temperature = new Celsius(StandardAtmosphere.TemperatureAt(report.Altitude).Value - 5) })];
        var hot = Under("hot", winds);
        Same(Planned(Week([.. winds.Select(report => report with { Temperature = new Celsius((report.Temperature?.Value ?? 0) + 10) })])), hot);
    }

    [Fact]
    public void Hot_without_reports_is_the_standard_atmosphere_ten_degrees_warmer_so_that_takeoff_takes_longer()
    {
        var plain = Planned(Week([]))[0];
        var hot = Under("hot", [])[0];
        var (before, after) = (Use(plain), Use(hot));
        Assert.Equal(before.Temperature.Value + 10, after.Temperature.Value, 9);
        Assert.Equal(before.PressureAltitude, after.PressureAltitude);
        Assert.True(StandardAtmosphere.DensityAltitude(after.PressureAltitude, after.Temperature) > StandardAtmosphere.DensityAltitude(
            before.PressureAltitude, before.Temperature));
        Assert.True(after.CorrectedDistance > before.CorrectedDistance, $"{after.CorrectedDistance} after {before.CorrectedDistance}");
        Assert.True(after.Margin < before.Margin);
    }

    [Fact]
    public void Headwind_in_still_air_is_what_a_wind_along_the_course_gives()
    {
        // XAND and XBEL lie on one parallel: an east wind blows along the course to within two degrees. To the alternate it would not.
        static OperatorWeek Alone(IEnumerable<AirReport> winds) => Week(winds) with { Legs = [Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 0)] };
        var plain = Planned(Alone([]));
        var against = Planned(Alone([]), "headwind");
        var east = Planned(Alone(Some.Reports(90, 20)))[0];
        Assert.Equal(east.Profile.TripFuel.Value, against[0].Profile.TripFuel.Value, 0.05);
        Assert.Equal(east.Profile.Time.TotalMinutes, against[0].Profile.Time.TotalMinutes, 0.01);
        Assert.All(plain.Zip(against), pair => Assert.True(pair.Second.Profile.Time > pair.First.Profile.Time));
        Assert.Equal(Use(plain[0]).Headwind, Use(against[0]).Headwind);
    }

    [Fact]
    public void Heavy_is_what_typed_and_standard_weights_ten_per_cent_heavier_give()
    {
        ImmutableArray<ManifestLine> people = [.. People, Some.Passenger(PersonCategory.Woman, null)];
        var week = Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 0, alternate: "XDUN")], people);
        var typed = week with
        {
            Manifest = [.. people.Select(line => line with { Weight = line.Weight * 1.1 })],
            Crew = week.Crew.SetItems(week.Crew.Select(pair => KeyValuePair.Create(pair.Key, pair.Value with { Weight = pair.Value.Weight * 1.1 }))),
        };
        var rules = SomePlans.Rules with { Weights = SomePlans.Rules.Weights with { Woman = SomePlans.Rules.Weights.Woman * 1.1 } };
        var heavy = Planned(week, "heavy");
        Same(Planned(typed, null, rules), heavy);
        Assert.Equal(Planned(week)[0].Load.Baggage, heavy[0].Load.Baggage);
    }

    [Fact]
    public void Late_moves_every_leg_by_an_hour_by_the_clock_of_its_airport_and_over_the_change_of_the_clock()
    {
        var zone = DateTimeZoneProviders.Tzdb["Europe/Lisbon"];
        var before = Instant.FromUtc(2026, 3, 29, 0, 30);
        var leg = Some.Leg(1, "XAND", "XBEL", before, aboardLb: 0) with { OffBlocksLocal = before.InZone(zone).LocalDateTime };
        var week = Some.Week([leg, Some.Leg(2, "XBEL", "XAND", before + Duration.FromHours(4))]);
        week = week with { Airports = week.Airports.SetItem("XAND", week.Airports["XAND"] with { Zone = zone }) };
        var late = Scenario.BuiltIn.Single(scenario => scenario.Name == "late").ApplyTo(week).Legs;
        Assert.Equal(before + Duration.FromHours(1), late[0].OffBlocks);
        Assert.Equal(new LocalDateTime(2026, 3, 29, 2, 30), late[0].OffBlocksLocal);
        Assert.Equal(late[1].OffBlocks.InUtc().LocalDateTime, late[1].OffBlocksLocal);
    }

    [Fact]
    public void As_planned_changes_nothing()
    {
        var week = Week(Some.Reports(250, 30));
        Assert.Same(week, Scenario.AsPlanned.ApplyTo(week));
        Same(Planned(week), Planned(week, Scenario.AsPlanned.Name));
    }

    private static OperatorWeek Week(IEnumerable<AirReport> winds)
    {
        var week = Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 0, alternate: "XDUN"),
            Some.Leg(2, "XBEL", "XAND", Some.Noon + Duration.FromHours(4))], People, winds);
        var type = Some.WeekType;
        return week with
        {
            Types = week.Types.SetItem(type.Name,
                type with { Tables = type.Tables with { Takeoff = Some.RunwayType.Tables.Takeoff, Landing = Some.RunwayType.Tables.Landing } }),
            Airports = week.Airports.SetItems(
                week.Airports.Select(pair => KeyValuePair.Create(pair.Key, pair.Value with { Runways = [Some.Runway("09", 90, 4000)] }))),
        };
    }

    private static LegPlan.Planned[] Under(string scenario, IEnumerable<AirReport> winds) => Planned(Week(winds), scenario);

    private static LegPlan.Planned[] Planned(OperatorWeek week, string? scenario = null, PlanningRules? rules = null) =>
    [
        .. new WeekPlanner(week, (_, _) => rules ?? SomePlans.Rules, Scenario.BuiltIn.Add(Scenario.AsPlanned).FirstOrDefault(one => one.Name == scenario))
            .Plan().Legs.Select(Assert.IsType<LegPlan.Planned>),
    ];

    private static RunwayUse Use(LegPlan.Planned plan) => Assert.IsType<RunwayResult.Computed>(plan.Departure).Use;

    private static void Same(LegPlan.Planned[] expected, LegPlan.Planned[] actual)
    {
        Assert.Equal(expected.Length, actual.Length);
        foreach (var (one, other) in expected.Zip(actual))
        {
            Assert.Equal(one.Times, other.Times);
            Assert.Equal(one.Fuel.Aboard.Value, other.Fuel.Aboard.Value, 1e-6);
            Assert.Equal(one.Profile.TripFuel.Value, other.Profile.TripFuel.Value, 1e-6);
            Assert.Equal(one.Load.Takeoff.Weight.Value, other.Load.Takeoff.Weight.Value, 1e-6);
            Assert.Equal(one.Load.ZeroFuel.CentreOfGravity.Value, other.Load.ZeroFuel.CentreOfGravity.Value, 1e-6);
            Assert.Equal(one.Log.Select(line => Math.Round(line.Burn.Value, 6)), other.Log.Select(line => Math.Round(line.Burn.Value, 6)));
        }
    }
}
