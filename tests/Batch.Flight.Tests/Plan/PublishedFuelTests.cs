using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

/// <summary>Fuel against worked cases that were published.</summary>
public sealed class PublishedFuelTests
{
    private static CheckFile Cases { get; } = CheckFile.Read("fuel-published.csv");

    // Taxi 600 + trip 60,000 + 5 % 3,000 + alternate 10,200 + 30 minutes of 8,000 kg/h 4,000 = 77,800 kg. The reserves are those of the planner, from rules
    // that give times and shares; trip and alternate are the printed ones.
    [Fact]
    public void Least_block_fuel_of_a_jet_is_the_printed_one()
    {
        var row = Cases["PF01"];
        var flow = Pounds.FromKilograms(row.Number("holding at the alternate")).Value;
        var week = Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, alternate: "XDUN")]);
        var rules = SomePlans.Rules with
        {
            Fuel = SomePlans.Rules.Fuel with
            {
                FinalReserveDay = Duration.FromMinutes(30),
                FinalReserveNight = Duration.FromMinutes(30),
                FinalReserveBasis = ReserveBasis.Holding,
                ContingencyFraction = row.Number("contingency") / 100,
                ContingencyFloor = Duration.FromMinutes(5),
            },
        };
        var setup = Assert.IsType<SetupResult.Ready>(
            LegPreparation.Prepare(new PlanningContext(week, (_, _) => rules, Scenario.AsPlanned), week.Legs[0])).Setup;
        setup = setup with { Type = Jet(setup.Type, flow) };
        var plan = Assert.IsType<LegPlan.Planned>(Some.Planned(week).Legs[0]);
        var alternate = Assert.Single(plan.Alternates) with { Fuel = Pounds.FromKilograms(row.Number("alternate")) };
        var reserves = new FuelReserves(setup)
            .Of(plan.Profile with { TripFuel = Pounds.FromKilograms(row.Number("trip")) }, [alternate], plan.Times.Landing, plan.Load.Landing.Weight);
        var ladder = plan.Fuel with
        {
            Taxi = Pounds.FromKilograms(row.Number("taxi")),
            Trip = Pounds.FromKilograms(row.Number("trip")),
            Contingency = reserves.Contingency,
            Alternate = alternate.Fuel,
            FinalReserve = reserves.FinalReserve,
            Additional = Pounds.Zero,
        };
        Assert.Equal(row.Number("answer"), ladder.Required.Kilograms, 0.5);
        Assert.Equal((3000, 4000), (Math.Round(reserves.Contingency.Kilograms), Math.Round(reserves.FinalReserve.Kilograms)));
    }

    // Landing 51,300 + trip 3,000 = 54,300 kg at takeoff, less 40,800 zero fuel and the 5,765 of the ladder.
    [Fact]
    public void Most_extra_fuel_is_the_printed_one_and_bound_by_the_printed_limit()
    {
        var row = Cases["PF02"];
        Pounds Kilograms(string column) => Pounds.FromKilograms(row.Number(column));
        var type = Some.WeekType with
        {
            UsableFuel = null,
            MaximumRamp = null,
            MaximumZeroFuel = null,
            MaximumTakeoff = Kilograms("maximum takeoff"),
            MaximumLanding = Kilograms("maximum landing")
        };
        var most = LoadLimits.MostFuel(type, Kilograms("zero fuel"), Kilograms("taxi"), Kilograms("trip"), null, null);
        var ladder = Kilograms("taxi") + Kilograms("trip") + Pounds.FromKilograms(215) + Kilograms("final reserve") + Kilograms("alternate");
        Assert.Equal(row["bound by"], most.BoundBy);
        Assert.Equal(row.Number("answer"), (most.Most!.Value - ladder).Kilograms, 0.5);
    }

    private static AircraftType Jet(AircraftType type, double holdingLbPerHour) => type with
    {
        Tables = type.Tables with
        {
            Holding = Some.Table("Holding", ["weight [lb]", "pressure altitude [ft]"], ["fuel flow [lb/h]"],
                [Row(0, holdingLbPerHour), Row(20_000, holdingLbPerHour)]),
        },
    };

    private static TableRow Row(double feet, double lbPerHour) => new([double.NaN, feet], [lbPerHour], Origin.None);
}
