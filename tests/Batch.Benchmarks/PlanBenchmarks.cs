using Batch.Flight.Air;
using Batch.Testing;
using BenchmarkDotNet.Attributes;

namespace Batch.Benchmarks;

/// <summary>
/// One leg of some 180 NM planned on one core: fuel and weight to rest, alternate, runway, load, navigation log and five options (four levels and the backup
/// route), in the air of twenty places with nine levels each.
/// </summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private const int Legs = 20;

    private WeekPlanner _planner = Planner(hasOptions: true);
    private WeekPlanner _calm = Planner(hasOptions: true);
    private WeekPlanner _auto = Planner(hasOptions: true);

    [GlobalSetup]
    public void Prepare()
    {
        _planner = Planner(hasOptions: true, winds: true);
        _calm = Planner(hasOptions: true);
        _auto = Planner(hasOptions: true, winds: true, isAuto: true);
        var plan = (LegPlan.Planned)Planner(hasOptions: true, winds: true).PlanChain("ABCDE", static (_, plan) => plan())[0];
        if (plan.Options.Count(option => !option.IsPlan) != 6)
            throw new InvalidOperationException($"The leg has {plan.Options.Length} options, not the plan and six more");
    }

    /// <summary>The level is written, the air known at twenty places.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = Legs)]
    public int Leg() => Plan(_planner);

    /// <summary>The same in still air.</summary>
    [Benchmark(OperationsPerInvoke = Legs)]
    public int LegInStillAir() => Plan(_calm);

    /// <summary>The same with the level left to the planner.</summary>
    [Benchmark(OperationsPerInvoke = Legs)]
    public int LegWithAutomaticLevel() => Plan(_auto);

    // A planner keeps what it has planned by the very row: it is given rows that it has not seen.
    private static int Plan(WeekPlanner planner) => planner.With(planner.Week with { Legs = [.. planner.Week.Legs.Select(leg => leg with { })] })
        .PlanChain("ABCDE", static (_, plan) => plan()).Length;

    private static WeekPlanner Planner(bool hasOptions, bool winds = false, bool isAuto = false)
    {
        var legs = Enumerable.Range(1, Legs).Select(number => Some.Leg(number, number % 2 == 1 ? "XAND" : "XBEL", number % 2 == 1 ? "XBEL" : "XAND",
            Some.Noon + Duration.FromHours(3 * number), aboardLb: 300, alternate: "XDUN") with
        {
            Level = isAuto ? null : new Feet(17_000),
            IsLevelAuto = isAuto,
            BackupRoute = hasOptions ? "4130N03800W" : "",
        });
        var week = Some.Week([.. legs], [.. Enumerable.Repeat(Some.Passenger(PersonCategory.Adult, 180), 4)], winds ? Winds() : null);
        return new WeekPlanner(week with
        {
            Types = week.Types.SetItem("Skua 9", Some.WeekType with
            {
                Corrections = Some.RunwayType.Corrections,
                Tables = Some.WeekType.Tables with
                {
                    Takeoff = Some.RunwayType.Tables.Takeoff,
                    Landing = Some.RunwayType.Tables.Landing,
                    Speeds = Some.RunwayType.Tables.Speeds
                },
            }),
            Airports = week.Airports
                .SetItem("XAND", week.Airports["XAND"] with { Runways = [Some.Runway("09", 90, 4000), Some.Runway("27", 270, 4000)] })
                .SetItem("XBEL", week.Airports["XBEL"] with { Runways = [Some.Runway("09", 90, 4000), Some.Runway("27", 270, 4000)] }),
        }, static (_, _) => SomePlans.Rules);
    }

    private static IEnumerable<AirReport> Winds()
    {
        var random = new Random(20260714);
        for (var station = 0; station < 20; station++)
        {
            var place = Flight.Earth.GeoPoint.Of(36 + (8 * random.NextDouble()), -42 + (8 * random.NextDouble()));
            for (var level = 1; level <= 9; level++)
            {
                yield return new AirReport
                {
                    Place = place,
                    Altitude = new Feet(3000 * level),
                    WindFrom = TrueDegrees.Of(360 * random.NextDouble()),
                    WindSpeed = new Knots(40 * random.NextDouble()),
                    Temperature = new Celsius(12 - (5.5 * level)),
                };
            }
        }
    }
}
