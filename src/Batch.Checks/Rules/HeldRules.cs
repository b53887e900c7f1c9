using System.Collections.Frozen;

namespace Batch.Checks.Rules;

/// <summary>The rules of a set sorted for legs of one kind: made once for all legs of which the facts are the same.</summary>
internal sealed class HeldRules
{
    private readonly FrozenDictionary<string, OfCheck> _checks;

    /// <summary>Sorts the rules.</summary>
    /// <param name="rules">The rule set.</param>
    /// <param name="facts">Facts of the legs.</param>
    public HeldRules(RuleSet rules, LegFacts facts) =>
        _checks = AllChecks.List.ToFrozenDictionary(check => check.Id, check => Sorted(check, [.. rules.ByCheck[check.Id]], facts, rules.Title),
            StringComparer.Ordinal);

    /// <summary>The rules of a check.</summary>
    /// <param name="check">Check id.</param>
    public OfCheck this[string check] => _checks[check];

    private static OfCheck Sorted(ICheck check, ImmutableArray<Rule> named, LegFacts facts, string title)
    {
        var held = named.Where(rule => rule.When.HoldsFor(facts) == Holds.Yes).ToImmutableArray();
        var unsure = named.Where(rule => rule.When.HoldsFor(facts) == Holds.Unknown).ToImmutableArray();
        var missing = unsure.SelectMany(rule => rule.When.Missing(facts)).Distinct(StringComparer.Ordinal).ToImmutableArray();
        return new OfCheck(held, unsure, missing, held.IsEmpty && unsure.IsEmpty ? Nothing(check, named, facts, title) : null);
    }

    private static Finding Nothing(ICheck check, ImmutableArray<Rule> named, LegFacts facts, string title) => new()
    {
        Check = check.Id,
        Title = check.Title,
        Verdict = Verdict.NotApplicable,
        Text = named.IsEmpty
            ? $"{title} holds no rule for this."
            : $"{title} does not ask this of the leg, going by: {string.Join(", ", Deciding(named, facts))}.",
        Citation = named.IsEmpty ? "no rule" : RuleAmount.Cited(named),
        Actor = check.Actor,
    };

    /// <summary>The facts by which the rules that come nearest to the leg do not hold for it.</summary>
    private static IEnumerable<string> Deciding(ImmutableArray<Rule> named, LegFacts facts)
    {
        var against = named.Select(rule => rule.When.Against(facts).ToImmutableArray()).ToImmutableArray();
        var fewest = against.Min(each => each.Length);
        return against.Where(each => each.Length == fewest).SelectMany(each => each).Distinct(StringComparer.Ordinal);
    }

    /// <summary>The rules of one check.</summary>
    /// <param name="Held">Those that hold.</param>
    /// <param name="Unsure">Those of which it is not known, because a fact is missing.</param>
    /// <param name="Missing">The facts that are missing, in words.</param>
    /// <param name="Nothing">The answer where none holds and none is unsure; null else.</param>
    internal sealed record OfCheck(ImmutableArray<Rule> Held, ImmutableArray<Rule> Unsure, ImmutableArray<string> Missing, Finding? Nothing)
    {
        /// <summary>The rules to go by: those that hold, else the unsure.</summary>
        public RuleGroup Taken { get; } = new(Held.IsEmpty ? Unsure : Held);
    }
}
