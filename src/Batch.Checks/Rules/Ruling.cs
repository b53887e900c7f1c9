namespace Batch.Checks.Rules;

/// <summary>
/// What the rule set and the operator demand of one check on one leg; every finding of the check is made here, so that its state, citation and mark follow from
/// the rules.
/// </summary>
internal sealed class Ruling
{
    private readonly ICheck _check;
    private readonly RuleGroup _rules;
    private readonly OwnSetting _own;

    /// <summary>Makes it.</summary>
    /// <param name="check">The check.</param>
    /// <param name="rules">Rules that hold.</param>
    /// <param name="own">The operator's setting.</param>
    public Ruling(ICheck check, RuleGroup rules, OwnSetting own)
    {
        _check = check;
        _rules = rules;
        _own = own;
    }

    /// <summary>The part of a check that its rules name and the program does not look at: every answer that judges the leg says so.</summary>
    public const string NotLookedAt = "not looked at";

    /// <summary>A weight, distance or time this far beyond a limit is still rounding of the computation.</summary>
    public const double Noise = 1e-6;

    /// <summary>An amount that the rules name for this leg, the operator's own where accepted.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="InvalidOperationException">The rules that hold name none.</exception>
    public RuleAmount Amount(string name) =>
        AmountOrNone(name) ?? throw new InvalidOperationException($"The rule file names no '{name}' for {_check.Id} on this leg");

    /// <summary>An amount that the rules name for this leg; null where they name none.</summary>
    /// <param name="name">Its name.</param>
    public RuleAmount? AmountOrNone(string name) =>
        _rules.Strictest(name) is { } amount ? _own.Applied(_check, amount, name) : _own.Given(_check, _rules.Rules, name);

    /// <summary>Names of the parts that begin with some words, in the order of the rule file.</summary>
    /// <param name="words">The words.</param>
    public IEnumerable<string> Parts(string words) => _rules.Rules.Select(rule => rule.Part).Where(part => part.StartsWith(words, StringComparison.Ordinal))
        .Distinct(StringComparer.Ordinal);

    /// <summary>A limit that the rules leave to the State of the operator, and that the Checks sheet does not give.</summary>
    /// <param name="what">The limit, as the subject of a sentence.</param>
    /// <param name="value">How the value is written.</param>
    public Finding LeftToOperator(string what, string value) => NotChecked(
        $"{what} is for the State of the operator to set, and no number is given; write it as the value of {_check.Id} in the Checks sheet ({value})");

    /// <summary>A part of the check that is a condition without a number; null where the rules that hold name none.</summary>
    /// <param name="name">Its name.</param>
    public RuleAmount? Condition(string name) => _rules.Condition(name);

    /// <summary>The condition is met.</summary>
    /// <param name="text">One sentence.</param>
    /// <param name="by">The amount it is held against; null for the check as a whole.</param>
    /// <param name="cells">Cells that the answer rests on.</param>
    public Finding Pass(string text, RuleAmount? by = null, params string[] cells) => Answer(Verdict.Pass, text, by, cells);

    /// <summary>The rule does not apply to this leg.</summary>
    /// <param name="why">One sentence.</param>
    public Finding NotApplicable(string why) => Answer(Verdict.NotApplicable, why, null);

    /// <summary>An input is missing.</summary>
    /// <param name="missing">What is missing, as the object of a sentence: <c>the maximum landing weight of Skua 9</c>.</param>
    /// <param name="cells">Cells where it would stand.</param>
    public Finding NotChecked(string missing, params string[] cells) => Answer(Verdict.NotChecked, $"Not checked: {missing}.", null, cells);

    /// <summary>An input of one amount is missing.</summary>
    /// <param name="by">The amount.</param>
    /// <param name="missing">What is missing, as the object of a sentence.</param>
    /// <param name="cells">Cells where it would stand.</param>
    public Finding NotChecked(RuleAmount by, string missing, params string[] cells) => Answer(Verdict.NotChecked, $"Not checked: {missing}.", by, cells);

    /// <summary>Worth knowing.</summary>
    /// <param name="text">One sentence.</param>
    /// <param name="cells">Cells.</param>
    public Finding Note(string text, params string[] cells) => Answer(Verdict.Note, text, null, cells);

    /// <summary>The condition is not met; how serious that is follows from the rules and the operator's setting.</summary>
    /// <param name="text">One sentence.</param>
    /// <param name="cells">Cells to look at.</param>
    public Finding Trips(string text, params string[] cells) => Trips(null, text, cells);

    /// <summary>An amount is not kept.</summary>
    /// <param name="by">The amount; null for the check as a whole.</param>
    /// <param name="text">One sentence.</param>
    /// <param name="cells">Cells to look at.</param>
    public Finding Trips(RuleAmount? by, string text, params string[] cells)
    {
        var rules = by?.Rules ?? _rules.Whole;
        var state = StateOf(rules);
        var answer = Answer(VerdictOf(_own.Applied(state)), text + _own.Milder(state), by, cells);
        return _own.Loosened(state) is { Length: > 0 } reason ? answer with { Loosened = reason } : answer;
    }

    /// <summary>A figure that must not be more than a limit.</summary>
    /// <param name="what">The figure, as the subject of a sentence: <c>Ramp weight</c>.</param>
    /// <param name="actual">Its value.</param>
    /// <param name="limit">The limit; at the limit is met.</param>
    /// <param name="unit">Unit of both.</param>
    /// <param name="limitName">The limit in words, such as <c>maximum ramp weight</c>.</param>
    /// <param name="by">The amount that the limit comes from; null for the check as a whole.</param>
    /// <param name="cells">Cells to look at.</param>
    public Finding AtMost(string what, double actual, double limit, string unit, string limitName, RuleAmount? by, params string[] cells)
    {
        var margin = limit - actual;
        var printed = PrintedTrio.Of(limit, actual, isLeast: false, margin >= -Noise, PrintedTrio.StepsPer(unit, Math.Max(Math.Abs(limit), Math.Abs(actual))));
        var finding = margin >= -Noise
            ? Pass($"{what} is {Words.Amount(printed.Actual, unit)}, within the {limitName} ({Words.Amount(printed.Limit, unit)}), {Words.Amount(printed.Margin, unit)} to spare.", by, cells)
            : Trips(by, $"{what} is {Words.Amount(printed.Actual, unit)}, {Words.Amount(-printed.Margin, unit)} over the {limitName} ({Words.Amount(printed.Limit, unit)}).", cells);
        return finding with { Required = limit, Actual = actual, Margin = margin, Unit = unit };
    }

    /// <summary>A figure that must not be less than a limit.</summary>
    /// <param name="what">The figure, as the subject of a sentence.</param>
    /// <param name="actual">Its value.</param>
    /// <param name="limit">The limit; at the limit is met.</param>
    /// <param name="unit">Unit of both.</param>
    /// <param name="limitName">What the limit is, as the end of a sentence: <c>required for ...</c>.</param>
    /// <param name="by">The amount that the limit comes from; null for the check as a whole.</param>
    /// <param name="cells">Cells to look at.</param>
    public Finding AtLeast(string what, double actual, double limit, string unit, string limitName, RuleAmount? by, params string[] cells)
    {
        var margin = actual - limit;
        var printed = PrintedTrio.Of(limit, actual, isLeast: true, margin >= -Noise, PrintedTrio.StepsPer(unit, Math.Max(Math.Abs(limit), Math.Abs(actual))));
        var finding = margin >= -Noise
            ? Pass($"{what} is {Words.Amount(printed.Actual, unit)}, {(printed.Margin > 0 ? Words.Amount(printed.Margin, unit) + " more than" : "just")} the {Words.Amount(printed.Limit, unit)} {limitName}.", by, cells)
            : Trips(by, $"{what} is {Words.Amount(printed.Actual, unit)}, {Words.Amount(-printed.Margin, unit)} short of the {Words.Amount(printed.Limit, unit)} {limitName}.", cells);
        return finding with { Required = limit, Actual = actual, Margin = margin, Unit = unit };
    }

    /// <summary>A figure against a limit in a sentence of its own; what the Checks sheet makes of it is said after it.</summary>
    /// <param name="text">One sentence, true whether the limit is kept or not.</param>
    /// <param name="actual">The figure.</param>
    /// <param name="limit">The limit, a greatest value; at the limit is met.</param>
    /// <param name="unit">Unit of both.</param>
    /// <param name="by">The amount that the limit comes from; null for the check as a whole.</param>
    /// <param name="cells">Cells to look at.</param>
    public Finding AtMostSaid(string text, double actual, double limit, string unit, RuleAmount? by, params string[] cells) =>
        (limit - actual >= -Noise
            ? Pass(text, by, cells)
            : Trips(by, text, cells)) with
        { Required = limit, Actual = actual, Margin = limit - actual, Unit = unit };

    /// <summary>The state that the rules alone give: the worst of them, at most a caution for one whose basis is not confirmed.</summary>
    /// <param name="rules">The rules.</param>
    public static State StateOf(IEnumerable<Rule> rules) => rules.Max(rule => rule.IsConfirmed || rule.State < State.Caution ? rule.State : State.Caution);

    private Finding Answer(Verdict verdict, string text, RuleAmount? by, params string[] cells)
    {
        var rules = by?.Rules ?? _rules.Whole;
        return new Finding
        {
            Check = _check.Id,
            Title = _check.Title,
            Verdict = verdict,
            Text = _rules.NotLookedAt.Length == 0 || verdict is Verdict.NotApplicable
                or Verdict.NotChecked ? text : $"{text} Not looked at: {_rules.NotLookedAt}.",
            Citation = by?.Citation ?? _rules.Citation,
            IsBasisUnconfirmed = !rules.Any(rule => rule.IsConfirmed),
            Cells = Filled(cells),
            Actor = _check.Actor,
            Loosened = by?.Loosened is { Length: > 0 } reason ? reason : _own.Loosened(null),
        };
    }

    private static Verdict VerdictOf(State state) => state switch
    {
        State.Note => Verdict.Note,
        State.Caution => Verdict.Caution,
        State.Fail => Verdict.Fail,
    };

    // A finding has a few cells: no set is needed to keep each once.
    private static ImmutableArray<string> Filled(string[] cells)
    {
        if (cells.Length == 0) return [];
        var filled = ImmutableArray.CreateBuilder<string>(cells.Length);
        foreach (var cell in cells)
        {
            if (cell.Length > 0 && !filled.Contains(cell)) filled.Add(cell);
        }

        return filled.DrainToImmutable();
    }
}
