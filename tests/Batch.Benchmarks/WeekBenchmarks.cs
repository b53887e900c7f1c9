using Batch.Checks;
using BenchmarkDotNet.Attributes;

namespace Batch.Benchmarks;

/// <summary>Whole random weeks of the sample's fleet, airports, airways, altitude grid and weather, planned and checked on one core.</summary>
[MemoryDiagnoser]
public class WeekBenchmarks
{
    private readonly RuleSet _rules = RuleSet.Load("us-charter");
    private OperatorWeek _week = Testing.Some.Week([]);

    /// <summary>Number of legs.</summary>
    [Params(10, 100, 1000)]
    public int Legs { get; set; }

    [GlobalSetup]
    public void Prepare()
    {
        _week = RandomBooks.Week(Legs, seed: 7);
        var planned = Plan().Legs.Count(leg => leg is LegPlan.Planned);
        if (_week.Legs.Length != Legs || planned < Legs * 9 / 10)
            throw new InvalidOperationException(FormattableString.Invariant($"{_week.Legs.Length} legs were read and {planned} planned of {Legs}"));
    }

    /// <summary>Planned only.</summary>
    [Benchmark(Baseline = true)]
    public PlannedWeek Plan() => new WeekPlanner(_week, (leg, type) => _rules.For(leg, type, _week.Operator)).Plan();

    /// <summary>Planned and held against every rule.</summary>
    [Benchmark]
    public CheckedWeek PlanAndCheck()
    {
        var planner = new WeekPlanner(_week, (leg, type) => _rules.For(leg, type, _week.Operator));
        var planned = planner.Gather(planner.Registrations.SelectMany(registration => planner.PlanChain(registration, static (_, plan) => plan())));
        return WeekChecker.Check(planned, _rules, Checks.ForecastReading.Of(planner.Weather.Forecasts));
    }
}
