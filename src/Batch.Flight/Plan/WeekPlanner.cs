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
    /// <param name="scenario">What is made worse; null for nothing.</param>
    public WeekPlanner(OperatorWeek week, Func<Leg, AircraftType, PlanningRules> rules, Scenario? scenario = null)
        : this(Context(week, rules, scenario ?? Scenario.AsPlanned))
    {
    }

    private WeekPlanner(PlanningContext context)
    {
        _week = context.Week;
        _context = context;
        Registrations = [.. _week.Legs.CountBy(leg => leg.Aircraft, StringComparer.OrdinalIgnoreCase).OrderByDescending(aircraft => aircraft.Value)
            .ThenBy(aircraft => aircraft.Key, StringComparer.Ordinal).Select(aircraft => aircraft.Key)];
    }

    /// <summary>The week as it is planned: the books, with the scenario's weights and times.</summary>
    public OperatorWeek Week => _week;

    /// <summary>The weather of the week, decoded.</summary>
    public WeekWeather Weather => _context.Weather;

    /// <summary>What is doubtful about the input as far as planning sees it: bulletins, and days for which the magnetic model is not made.</summary>
    public ImmutableArray<Problem> Problems =>
    [
        .. Weather.Problems,
        .. _week.Legs.Where(leg => !Earth.MagneticModel.IsValidOn(leg.OffBlocks.InUtc().Date))
            .Select(leg => new Problem { State = State.Caution, Cell = leg.Origin.Cell(nameof(Leg.OffBlocks)),
                Text = Route.CompassCaution.Outside(leg.OffBlocks.InUtc().Date) }),
    ];

    /// <summary>
    /// The aircraft that fly in the week, the busiest first, so that what is planned last is short; each one's chain can be planned by itself.
    /// </summary>
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

    /// <summary>
    /// A planner of the same week with some legs or loads changed. What this one has planned is taken over for every row that is still the same object.
    /// </summary>
    /// <param name="edited">The week; apart from legs, manifest and cargo it holds the same objects.</param>
    public WeekPlanner With(OperatorWeek edited) => new(_context.With(edited));

    /// <summary>
    /// A planner of the same week read again: what this one has planned is taken over for every leg whose row, load, aircraft, type and pilots are still the
    /// same objects.
    /// </summary>
    /// <param name="read">The week; what says the same as before is the same object. The scenario is this planner's, its changes already in the week.</param>
    /// <returns>The planner; null where what every leg is planned with has changed, so that nothing can be taken over.</returns>
    public WeekPlanner? After(OperatorWeek read) => _context.After(read) is { } context ? new(context) : null;

    /// <summary>
    /// Plans one leg by itself, starting from the fuel that another plan of it started from: quicker than its chain, and good for a first look.
    /// </summary>
    /// <param name="leg">The leg.</param>
    /// <param name="start">The fuel of the other plan.</param>
    public LegPlan PlanAlone(Leg leg, FuelLadder start) => LegPreparation.Prepare(_context, leg) switch
    {
        SetupResult.NotReady notReady => notReady.Plan,
        SetupResult.Ready { Setup: var setup } => LegPlanner.Plan(_context, setup,
            new FuelSource(start.IsBeforeKnown ? start.Before : Pounds.Zero, start.IsBeforeKnown, start.IsSoldHere, start.NeededAfterLanding, IsTrial: false)),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The week again after some aircraft's legs have changed: their chains planned anew, the rest taken over.</summary>
    /// <param name="before">The week before the change.</param>
    /// <param name="registrations">The aircraft whose legs or loads changed, those that lost a leg included.</param>
    /// <param name="guard">As for <see cref="PlanChain"/>.</param>
    public PlannedWeek Replan(PlannedWeek before, IReadOnlySet<string> registrations, Func<Leg, Func<LegPlan>, LegPlan> guard)
    {
        var plans = registrations.SelectMany(registration => PlanChain(registration, guard)).ToImmutableArray();
        var taken = before.Legs.Where(plan => !registrations.Contains(CrewChain.Registration(plan)) || plan is LegPlan.Unplanned { Broken: not null });
        var legs = taken.Concat(plans).OrderBy(plan => plan.Key).ToImmutableArray();
        var codes = before.Legs.Where(plan => registrations.Contains(CrewChain.Registration(plan))).Concat(plans).SelectMany(CrewChain.Codes)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        var aircraft = legs.Where(plan => registrations.Contains(CrewChain.Registration(plan)))
            .GroupBy(CrewChain.Registration, StringComparer.OrdinalIgnoreCase)
            .Select(group => AircraftChain.Of(group.Key, _week.Fleet.GetValueOrDefault(group.Key), group));
        var crew = legs.SelectMany(plan => CrewChain.Codes(plan).Where(codes.Contains).Select(code => (Code: code, Plan: plan)))
            .GroupBy(pair => pair.Code, pair => pair.Plan, StringComparer.OrdinalIgnoreCase)
            .Select(group => Person(group.Key, group));
        return new PlannedWeek
        {
            Input = _week,
            Legs = legs,
            Aircraft = [.. before.Aircraft.Where(other => !registrations.Contains(other.Registration)).Concat(aircraft)
                .OrderBy(one => one.Registration, StringComparer.Ordinal)],
            Crew = [.. before.Crew.Where(other => !codes.Contains(other.Code)).Concat(crew).OrderBy(one => one.Code, StringComparer.Ordinal)],
        };
    }

    /// <summary>Puts the planned chains together into a week.</summary>
    /// <param name="plans">The plans of every aircraft, in any order.</param>
    public PlannedWeek Gather(IEnumerable<LegPlan> plans)
    {
        var legs = plans
            .Concat(_week.BrokenLegs.Select(Unplanned))
            .OrderBy(plan => plan.Key)
            .ToImmutableArray();
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
                    .Select(group => Person(group.Key, group)),
            ],
        };
    }

    private CrewWeek Person(string code, IEnumerable<LegPlan> legs) => CrewChain.Of(
        code,
        _week.Crew.GetValueOrDefault(code),
        [.. legs],
        _week.Logged.Where(logged => string.Equals(logged.Crew, code, StringComparison.OrdinalIgnoreCase)),
        _week.Operator.Report ?? NoTime,
        _week.Operator.Release ?? NoTime);

    private static PlanningContext Context(OperatorWeek week, Func<Leg, AircraftType, PlanningRules> rules, Scenario scenario) => new(
        scenario.ApplyTo(week),
        scenario.PersonFactor == 1 ? rules : (leg, type) => Heavier(rules(leg, type), scenario.PersonFactor),
        scenario);

    private static PlanningRules Heavier(PlanningRules rules, double factor) => rules with { Weights = rules.Weights.ForPersons(factor) };

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
