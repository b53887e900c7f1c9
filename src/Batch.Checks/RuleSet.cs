using System.Collections.Concurrent;
using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks;

/// <summary>A set of rules under which an operator flies: amounts, conditions and citations, read from a file of the program.</summary>
public sealed class RuleSet
{
    private readonly ConcurrentDictionary<LegFacts, HeldRules> _held = [];
    private readonly ConcurrentDictionary<(LegFacts Facts, Operator Operator), PlanningRules> _planning = new(PlannedAlike.Instance);

    private RuleSet(RuleFile file)
    {
        Name = file.Name;
        Date = file.Date;
        About = file.About;
        FlightLevelsFrom = file.FlightLevelsFrom is { } feet ? new Feet(feet) : null;
        FlightLevelsCite = file.FlightLevelsCite;
        Rules = [.. file.Rules.Select(entry => entry.ToRule())];
        ByCheck = Rules.ToLookup(rule => rule.Check, StringComparer.Ordinal);
    }

    /// <summary>Names of the rule sets there are.</summary>
    public static ImmutableArray<string> Names { get; } = ["us-charter", "us-general", "icao-annex-6", "eu-commercial"];

    /// <summary>Name, such as <c>us-charter</c>.</summary>
    public string Name { get; }

    /// <summary>Year and month of the rule texts, such as <c>2026-09</c>.</summary>
    public string Date { get; }

    /// <summary>What it is for, one or two sentences.</summary>
    public string About { get; }

    /// <summary>Name and date as printed on every sheet, such as <c>us-charter 2026-09</c>.</summary>
    public string Title => Name + " " + Date;

    /// <summary>
    /// Height from which a filed level is a flight level [ft]: 14 CFR 91.121(a), from memory; null where each airport has its own transition.
    /// </summary>
    public Feet? FlightLevelsFrom { get; }

    /// <summary>Paragraph that gives it; empty where there is none.</summary>
    internal string FlightLevelsCite { get; }

    /// <summary>
    /// Whether it asks for additional fuel for a failure at the critical point: ICAO Annex 6 Part I, 4.3.6.3 f) and CAT.OP.MPA.181(c), from memory.
    /// </summary>
    public bool AsksForAdditional => Name is "icao-annex-6" or "eu-commercial";

    /// <summary>Every rule, in file order.</summary>
    internal ImmutableArray<Rule> Rules { get; }

    /// <summary>The rules by check id.</summary>
    internal ILookup<string, Rule> ByCheck { get; }

    /// <summary>Every entry for a reader, in the order of the checks.</summary>
    public ImmutableArray<RuleText> Texts => [.. AllChecks.List.SelectMany(check => ByCheck[check.Id].Select(rule => new RuleText
    {
        Check = check.Id,
        Title = check.Title,
        Part = rule.Part,
        Value = rule.Value,
        IsLeast = rule.IsLeast,
        Unit = rule.Unit,
        When = rule.When.InWords,
        State = Ruling.StateOf([rule]),
        Citation = rule.Citation,
        Basis = rule.Mark switch
        {
            RuleMark.Verified => "the rule's text was read",
            RuleMark.Secondary => "seen in a copy only, to be confirmed",
            RuleMark.FromMemory => "from memory, to be confirmed",
            RuleMark.OperatorBook => "the operator's own",
        },
        IsBasisUnconfirmed = !rule.IsConfirmed,
        Says = rule.Says,
    }))];

    /// <summary>The rule set of a name, case ignored.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    /// <exception cref="UnknownRuleSetException">There is none of this name.</exception>
    public static RuleSet Load(string name)
    {
        var known = Names.FirstOrDefault(candidate => string.Equals(candidate, name.Trim(), StringComparison.OrdinalIgnoreCase))
            ?? throw new UnknownRuleSetException(name, [.. Names.OrderBy(candidate => NearWords.Distance(candidate, name.Trim().ToLowerInvariant()))
                .ThenBy(candidate => candidate, StringComparer.Ordinal)]);
        using var json = typeof(RuleSet).Assembly.GetManifestResourceStream(known + ".json")
            ?? throw new InvalidOperationException($"The program was built without its rule file {known}.json");
        return new RuleSet(RuleFileReader.Read(json));
    }

    /// <summary>What the planner needs to know for one leg: the strictest of the amounts that hold, the operator's own where stricter.</summary>
    /// <param name="leg">The leg; an empty rules cell counts as IFR and an empty purpose cell as charter.</param>
    /// <param name="type">Its type; where a fact that a rule depends on is not given, the rule is taken to hold.</param>
    /// <param name="op">The operator.</param>
    public PlanningRules For(Leg leg, AircraftType type, Operator op) =>
        _planning.GetOrAdd((LegFacts.Of(leg, type), op), static (asked, rules) => rules.PlanningOf(asked.Facts, asked.Operator), this);

    private PlanningRules PlanningOf(LegFacts facts, Operator op)
    {
        var held = Rules.Where(rule => rule.When.HoldsFor(facts) != Holds.No).ToImmutableArray();
        var planning = new PlanningRules
        {
            Name = Title,
            Fuel = FuelOf(held, facts.Rules, op) with { AsksForAdditional = AsksForAdditional },
            Runway = RunwayOf(held),
            Weights = WeightsOf(held, op),
            OxygenFrom = facts.Pressurised == false && Demanded(held, "ENR-05", "crew from") is { } from ? new Feet(from.Value) : null,
        };
        return FlightLevelsFrom is { } levels ? planning with { FlightLevelsFrom = levels } : planning;
    }

    /// <summary>The rules sorted for legs with some facts.</summary>
    /// <param name="facts">Facts of the legs.</param>
    internal HeldRules For(LegFacts facts) => _held.GetOrAdd(facts, static (asked, rules) => new HeldRules(rules, asked), this);

    /// <summary>What is demanded of a check on a leg; null where nothing is.</summary>
    /// <param name="check">The check.</param>
    /// <param name="leg">The leg.</param>
    internal Ruling? RulingFor(ICheck check, LegUnderCheck leg)
    {
        var asked = For(leg.Facts)[check.Id];
        return asked.Held.IsEmpty ? null : new Ruling(check, asked.Taken, new OwnSetting(leg.Week.Setting(check.Id)));
    }

    private static FuelRules FuelOf(ImmutableArray<Rule> held, FlightRules rules, Operator op)
    {
        var day = Reserve(held, rules == FlightRules.Ifr ? "FUEL-03" : "FUEL-01");
        var night = Reserve(held, rules == FlightRules.Ifr ? "FUEL-03" : "FUEL-02");
        var contingency = RuleAmount.Strictest(held.Where(rule => rule.Check == "FUEL-04"), "share of trip fuel");
        var floor = RuleAmount.Strictest(held.Where(rule => rule.Check == "FUEL-04"), "holding time");
        var hold = RuleAmount.Strictest(held.Where(rule => rule.Check == "FUEL-05"), "holding time");
        var fromRules = (contingency?.Value ?? 0) / 100;
        var own = op.Contingency is { } wanted && wanted > fromRules;
        return new FuelRules
        {
            FinalReserveDay = Duration.FromMinutes(day.Value),
            FinalReserveNight = Duration.FromMinutes(Math.Max(day.Value, night.Value)),
            FinalReserveBasis = day.Basis,
            FinalReserveCitation = string.Join("; ", day.Rules.Concat(night.Rules).Select(rule => rule.Citation).Distinct(StringComparer.Ordinal)),
            ContingencyFraction = own ? op.Contingency ?? 0 : fromRules,
            ContingencyFloor = Duration.FromMinutes(floor?.Value ?? 0),
            ContingencyCitation = own ? "operator's contingency" : contingency?.Citation ?? "",
            WithoutAlternateHold = Duration.FromMinutes(hold?.Value ?? 0),
            WithoutAlternateCitation = hold?.Citation ?? "",
            AlternateCitation = RuleAmount.Cited(held.Where(rule => rule.Check == "ALT-02")),
        };
    }

    private static RuleAmount Reserve(ImmutableArray<Rule> held, string check) => RuleAmount.Strictest(held.Where(rule => rule.Check == check), "final reserve")
        ?? throw new InvalidOperationException($"The rule file has no final reserve under {check} for this leg");

    private static RunwayRules RunwayOf(ImmutableArray<Rule> held)
    {
        var takeoff = Demanded(held, "PERF-02", "factor on takeoff run available");
        var landing = Demanded(held, "PERF-04", "share of landing distance available");
        return new RunwayRules
        {
            TakeoffFactor = takeoff?.Value ?? 1,
            LandingFactor = landing is null ? 1 : 100 / landing.Value,
            TakeoffCitation = takeoff?.Citation ?? RuleAmount.Cited(held.Where(rule => rule.Check == "PERF-01")),
            LandingCitation = landing?.Citation ?? RuleAmount.Cited(held.Where(rule => rule.Check == "PERF-03")),
        };
    }

    /// <summary>An amount that is a duty (a fail when not met), not a caution.</summary>
    private static RuleAmount? Demanded(ImmutableArray<Rule> held, string check, string amount) =>
        RuleAmount.Strictest(held.Where(rule => rule.Check == check && rule.State == State.Fail), amount);

    private static StandardWeights WeightsOf(ImmutableArray<Rule> held, Operator op)
    {
        var weights = held.Where(rule => rule.Check == "WB-08").ToImmutableArray();
        var sources = new List<string>();
        return new StandardWeights
        {
            Adult = Weight("adult"),
            Man = Weight("man"),
            Woman = Weight("woman"),
            Child = Weight("child"),
            Infant = Weight("infant"),
            Pilot = Weight("pilot"),
            Bag = Weight("bag"),
            Source = string.Join("; ", sources.Distinct(StringComparer.Ordinal)),
        };

        Pounds Weight(string category)
        {
            if (op.StandardWeights.TryGetValue(category, out var own))
            {
                sources.Add("operator's own standard weights");
                return own;
            }

            var amount = RuleAmount.Strictest(weights, category)
                ?? throw new InvalidOperationException($"The rule file has no standard weight for '{category}'");
            sources.Add(amount.Citation + (amount.IsConfirmed ? "" : " (basis to be confirmed)"));
            return amount.Unit == "kg" ? Pounds.FromKilograms(amount.Value) : new Pounds(amount.Value);
        }
    }
}
