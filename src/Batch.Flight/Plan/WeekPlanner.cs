using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>Plans a week: every aircraft's legs in order of time, the fuel that one leg leaves being what the next one finds.</summary>
public sealed class WeekPlanner
{
    private static readonly Duration NoTime = Duration.Zero;

    private readonly PlanningContext _context;
    private readonly OperatorWeek _week;

    /// <summary>Makes a planner.</summary>
    /// <param name="week">The books.</param>
    /// <param name="rules">The planning rules of a leg flown by a type.</param>
    public WeekPlanner(OperatorWeek week, Func<Leg, AircraftType, PlanningRules> rules)
    {
        _week = week;
        _context = new PlanningContext(week, rules);
        Registrations =
        [
            .. week.Legs.Select(leg => leg.Aircraft).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal),
        ];
    }

    /// <summary>The weather of the week, decoded.</summary>
    public WeekWeather Weather => _context.Weather;

    /// <summary>The aircraft that fly in the week, in order; each one's chain can be planned by itself.</summary>
    public ImmutableArray<string> Registrations { get; }

    /// <summary>Plans the legs of one aircraft. Safe to call for several aircraft at once.</summary>
    /// <param name="registration">One of <see cref="Registrations"/>.</param>
    /// <param name="guard">Called for each leg with the leg and its planning; gives the plan, or an unplanned leg where planning broke down.</param>
    public ImmutableArray<LegPlan> PlanChain(string registration, Func<Leg, Func<LegPlan>, LegPlan> guard)
    {
        var legs = _week.Legs
            .Where(leg => string.Equals(leg.Aircraft, registration, StringComparison.OrdinalIgnoreCase))
            .OrderBy(leg => leg.OffBlocks).ThenBy(leg => leg.Key)
            .ToImmutableArray();
        return new ChainPlanner(_context, legs, guard).Plan();
    }

    /// <summary>Puts the planned chains together into a week.</summary>
    /// <param name="plans">The plans of every aircraft, in any order.</param>
    public PlannedWeek Gather(IEnumerable<LegPlan> plans)
    {
        var legs = plans
            .Concat(_week.BrokenLegs.Select(Unplanned))
            .OrderBy(plan => plan.Key)
            .ToImmutableArray();
        var company = _week.Operator;
        return new PlannedWeek
        {
            Input = _week,
            Legs = legs,
            Aircraft =
            [
                .. legs.Where(plan => CrewChain.Registration(plan).Length > 0)
                    .GroupBy(plan => CrewChain.Registration(plan), StringComparer.OrdinalIgnoreCase)
                    .OrderBy(group => group.Key, StringComparer.Ordinal)
                    .Select(group => AircraftChain.Of(group.Key, _week.Fleet.GetValueOrDefault(group.Key), group)),
            ],
            Crew =
            [
                .. legs.SelectMany(plan => CrewChain.Codes(plan).Select(code => (Code: code, Plan: plan)))
                    .GroupBy(pair => pair.Code, pair => pair.Plan, StringComparer.OrdinalIgnoreCase)
                    .OrderBy(group => group.Key, StringComparer.Ordinal)
                    .Select(group => CrewChain.Of(
                        group.Key,
                        _week.Crew.GetValueOrDefault(group.Key),
                        [.. group],
                        _week.Logged.Where(logged => string.Equals(logged.Crew, group.Key, StringComparison.OrdinalIgnoreCase)),
                        company.Report ?? NoTime,
                        company.Release ?? NoTime)),
            ],
        };
    }

    /// <summary>Plans the whole week on this thread; a leg whose planning breaks down throws.</summary>
    public PlannedWeek Plan() => Gather(Registrations.SelectMany(registration => PlanChain(registration, static (_, plan) => plan())));

    private static LegPlan.Unplanned Unplanned(BrokenLeg broken)
    {
        var worst = broken.Problems.OrderByDescending(problem => problem.State).First();
        return new LegPlan.Unplanned
        {
            Broken = broken,
            Why = worst.Text,
            Cells = [.. broken.Problems.Where(problem => problem.State == State.Fail).Select(problem => problem.Cell)],
            Expected = worst.Expected,
        };
    }
}
