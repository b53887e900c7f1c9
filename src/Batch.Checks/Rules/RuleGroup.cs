using System.Collections.Concurrent;

namespace Batch.Checks.Rules;

/// <summary>The rules that one check goes by on legs of one kind, with what follows from them alone; made once for many legs.</summary>
internal sealed class RuleGroup
{
    private readonly ConcurrentDictionary<string, RuleAmount?> _amounts = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, RuleAmount?> _conditions = new(StringComparer.Ordinal);

    /// <summary>Makes it.</summary>
    /// <param name="rules">Rules that hold, at least one.</param>
    public RuleGroup(ImmutableArray<Rule> rules)
    {
        Rules = [.. rules.Where(rule => rule.Part != Ruling.NotLookedAt)];
        NotLookedAt = string.Join("; ", rules.Where(rule => rule.Part == Ruling.NotLookedAt).Select(rule => $"{rule.Says} ({rule.Citation})"));
        Whole = Rules.Any(rule => rule.Part.Length == 0) ? [.. Rules.Where(rule => rule.Part.Length == 0)] : Rules;
        Citation = RuleAmount.Cited(Whole);
    }

    /// <summary>The rules that the program looks at.</summary>
    public ImmutableArray<Rule> Rules { get; }

    /// <summary>What the others say, with their citations; empty where there are none.</summary>
    public string NotLookedAt { get; }

    /// <summary>The rules of the check as a whole: those that name no part, or all where every rule names one.</summary>
    public ImmutableArray<Rule> Whole { get; }

    /// <summary>Citations of <see cref="Whole"/>.</summary>
    public string Citation { get; }

    /// <summary>The strictest amount of a name; null where no rule names such an amount.</summary>
    /// <param name="name">Name of the amount.</param>
    public RuleAmount? Strictest(string name) => _amounts.GetOrAdd(name, static (asked, rules) => RuleAmount.Strictest(rules, asked), Rules);

    /// <summary>A part that is a condition without a number; null where no rule names such a part.</summary>
    /// <param name="name">Name of the part.</param>
    public RuleAmount? Condition(string name) => _conditions.GetOrAdd(name, static (asked, rules) => RuleAmount.Condition(rules, asked), Rules);
}
