using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

/// <summary>A week planned again after a change gives what planning it from the start gives.</summary>
public sealed class ReplanTests
{
    private static readonly Leg Out = Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 300);
    private static readonly Leg On = Some.Leg(2, "XBEL", "XDUN", Some.Noon + Duration.FromHours(4));
    private static readonly Leg Back = Some.Leg(3, "XDUN", "XAND", Some.Noon + Duration.FromHours(8));
    private static readonly ManifestLine Passenger =
        new() { Trip = "T1", Legs = LegSelection.All, Name = "Somebody", Weight = new Pounds(180), Bags = new Pounds(40) };
    private static readonly OperatorWeek Before = Some.Week([Out, On, Back], [Passenger]);

    public static TheoryData<string> Changes => ["level", "fuel", "weight", "passenger gone", "later", "no change"];

    [Theory]
    [MemberData(nameof(Changes))]
    public void Planning_again_gives_what_planning_from_the_start_gives(string change)
    {
        var after = change switch
        {
            "level" => Before with { Legs = [Out with { Level = new Feet(15_000) }, On, Back] },
            "fuel" => Before with { Legs = [Out, On with { FuelPlan = new FuelPlan.Full() }, Back] },
            "weight" => Before with { Manifest = [Passenger with { Weight = new Pounds(250) }] },
            "passenger gone" => Before with { Manifest = [] },
            "later" => Before with { Legs = [Out, On, Back with { OffBlocks = Back.OffBlocks + Duration.FromHours(1) }] },
            _ => Before,
        };
        var planner = Planner(Before);
        var again = planner.With(after).Replan(planner.Plan(), new HashSet<string>(StringComparer.OrdinalIgnoreCase) { "ABCDE" }, (_, plan) => plan());
        var fresh = Planner(after).Plan();
        Assert.Equal(fresh.Legs.Select(Figures), again.Legs.Select(Figures));
        Assert.Equal(fresh.Aircraft.Select(aircraft => (aircraft.Registration, aircraft.Block, aircraft.Uplift)),
            again.Aircraft.Select(aircraft => (aircraft.Registration, aircraft.Block, aircraft.Uplift)));
        Assert.Equal(fresh.Crew.Select(crew => (crew.Code, crew.FlightTime, crew.Duties.Length)),
            again.Crew.Select(crew => (crew.Code, crew.FlightTime, crew.Duties.Length)));
    }

    [Fact]
    public void What_does_not_change_is_not_planned_again()
    {
        var planner = Planner(Before);
        var first = planner.Plan();
        var after = Before with { Legs = [Out, On, Back with { Remarks = "new" }] };
        var again = planner.With(after).Replan(first, new HashSet<string>(StringComparer.OrdinalIgnoreCase) { "ABCDE" }, (_, plan) => plan());
        Assert.Same(first.Legs[0], again.Legs[0]);
        Assert.Same(first.Legs[1], again.Legs[1]);
        Assert.NotSame(first.Legs[2], again.Legs[2]);
    }

    [Fact]
    public void A_leg_planned_alone_is_the_leg_of_its_chain()
    {
        var planner = Planner(Before);
        var plan = Assert.IsType<LegPlan.Planned>(planner.Plan().Legs[1]);
        Assert.Equal(Figures(plan), Figures(planner.PlanAlone(On, plan.Fuel)));
    }

    private static WeekPlanner Planner(OperatorWeek week) => new(week, (_, _) => SomePlans.Rules);

    private static string Figures(LegPlan plan) => plan is LegPlan.Planned planned
        ? $"{planned.Key} {planned.Leg.Remarks} {planned.Fuel} {planned.Times} {planned.Load.Takeoff} {planned.Profile.Level}"
        : plan.ToString();
}
