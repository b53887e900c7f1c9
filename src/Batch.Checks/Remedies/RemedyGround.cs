using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies;

/// <summary>The checked week in which remedies are looked for: made once, shared by all threads.</summary>
internal sealed class RemedyGround
{
    private readonly Dictionary<LegKey, CheckedLeg> _legs;
    private readonly ILookup<string, CheckedLeg> _aircraft;
    private readonly HashSet<LegPlan> _plans;
    private readonly RuleSet _rules;
    private readonly Forecasts _forecasts;
    private readonly Footprint _seen = new();

    /// <summary>Makes it.</summary>
    /// <param name="planner">The planner that planned the week.</param>
    /// <param name="week">The week.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="forecasts">Forecasts known.</param>
    /// <param name="guard">Runs the planning of one leg.</param>
    public RemedyGround(WeekPlanner planner, CheckedWeek week, RuleSet rules, Forecasts forecasts, Func<Leg, Func<LegPlan>, LegPlan> guard)
    {
        Planner = planner;
        Week = week;
        Guard = guard;
        UnderCheck = new WeekUnderCheck(week.Plan);
        _rules = rules;
        _forecasts = forecasts;
        _aircraft = week.Legs.ToLookup(leg => Who.Aircraft(leg.Plan), StringComparer.OrdinalIgnoreCase);
        _plans = new HashSet<LegPlan>(week.Plan.Legs, ReferenceEqualityComparer.Instance);
        _legs = [];
        foreach (var leg in week.Legs)
        {
            _legs.TryAdd(leg.Plan.Key, leg);
        }
    }

    private RemedyGround(RemedyGround like, Footprint seen)
    {
        (Planner, Week, Guard, _rules, _forecasts, _aircraft, _plans, _legs) =
            (like.Planner, like.Week, like.Guard, like._rules, like._forecasts, like._aircraft, like._plans, like._legs);
        (_seen, UnderCheck) = (seen, like.UnderCheck.Noting(seen));
    }

    /// <summary>The same week, noting what is looked at in it.</summary>
    /// <param name="seen">Takes the notes.</param>
    public RemedyGround Noting(Footprint seen) => new(this, seen);

    /// <summary>What was looked at; whoever reads <see cref="Input"/> or <see cref="Week"/> directly notes here whatever legs and loads it saw.</summary>
    public Footprint Seen => _seen;

    /// <summary>The planner that planned the week.</summary>
    public WeekPlanner Planner { get; }

    /// <summary>The week.</summary>
    public CheckedWeek Week { get; }

    /// <summary>What was read.</summary>
    public OperatorWeek Input => Week.Plan.Input;

    /// <summary>The unit in which weights are typed.</summary>
    public WeightUnit WeightUnit => Input.Operator.WeightUnit;

    /// <summary>Runs the planning of one leg.</summary>
    public Func<Leg, Func<LegPlan>, LegPlan> Guard { get; }

    /// <summary>The week as the checks look at it.</summary>
    public WeekUnderCheck UnderCheck { get; }

    /// <summary>The legs of an aircraft.</summary>
    /// <param name="registration">Registration.</param>
    public IEnumerable<CheckedLeg> Aircraft(string registration)
    {
        _seen.Aircraft(registration);
        return _aircraft[registration];
    }

    /// <summary>A leg before any change; null where the week has none.</summary>
    /// <param name="key">Its key.</param>
    public CheckedLeg? Leg(LegKey key)
    {
        _seen.Trip(key.Trip);
        return _legs.GetValueOrDefault(key);
    }

    /// <summary>Whether a plan is one of the week before any change.</summary>
    /// <param name="plan">The plan.</param>
    public bool Has(LegPlan plan) => _plans.Contains(plan);

    /// <summary>Checks on a leg.</summary>
    /// <param name="plan">The leg.</param>
    /// <param name="week">The week it stands in.</param>
    /// <param name="asked">Which checks; null for all.</param>
    public CheckedLeg Check(LegPlan plan, WeekUnderCheck week, Func<ICheck, bool>? asked = null) => WeekChecker.Check(plan, week, _rules, _forecasts, asked);
}
