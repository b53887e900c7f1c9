using Batch.Flight.Plan;

namespace Batch.Checks.Rules;

/// <summary>The strictest of the amounts that hold for a leg.</summary>
/// <param name="Value">The number, in the unit of its rule; 0 for a part that is a condition without a number.</param>
/// <param name="Unit">Unit.</param>
/// <param name="IsLeast">Whether it is a least value; else a greatest.</param>
/// <param name="Rules">The rules that demand exactly this number.</param>
internal sealed record RuleAmount(double Value, string Unit, bool IsLeast, ImmutableArray<Rule> Rules)
{
    /// <summary>Citations of the rules, joined.</summary>
    public string Citation => Own.Length > 0 ? RulesCited + "; " + Own : RulesCited;

    private string RulesCited { get; } = Cited(Rules);

    /// <summary>Where the number comes from when it is the operator's own; empty when it is that of the rules.</summary>
    public string Own { get; init; } = "";

    /// <summary>The operator's reason where the number is looser than that of the rules; empty where it is not.</summary>
    public string Loosened { get; init; } = "";

    /// <summary>Whether one of the rules needs no confirmation.</summary>
    public bool IsConfirmed => Rules.Any(rule => rule.IsConfirmed);

    /// <summary>Whether a number is looser than this one.</summary>
    /// <param name="value">The number, in the same unit.</param>
    public bool IsLooser(double value) => IsLeast ? value < Value : value > Value;

    /// <summary>How a reserve time becomes fuel; cruise, the greater flow, where the rules differ.</summary>
    public ReserveBasis Basis => Rules.Any(rule => rule.Basis != ReserveBasis.Holding) ? ReserveBasis.Cruise : ReserveBasis.Holding;

    /// <summary>The strictest amount of a name.</summary>
    /// <param name="rules">Rules that hold.</param>
    /// <param name="name">Name of the amount.</param>
    /// <returns>Null where no rule names such an amount.</returns>
    public static RuleAmount? Strictest(IEnumerable<Rule> rules, string name)
    {
        var named = rules.Where(rule => rule.Part == name && rule.Value is not null).ToImmutableArray();
        if (named.IsEmpty)
        {
            return null;
        }

        var isLeast = named[0].IsLeast;
        var value = isLeast ? named.Max(rule => rule.Value ?? double.NegativeInfinity) : named.Min(rule => rule.Value ?? double.PositiveInfinity);
        return new RuleAmount(value, named[0].Unit, isLeast, [.. named.Where(rule => rule.Value == value)]);
    }

    /// <summary>A part that is a condition without a number.</summary>
    /// <param name="rules">Rules that hold.</param>
    /// <param name="name">Name of the part.</param>
    /// <returns>Null where no rule names such a part.</returns>
    public static RuleAmount? Condition(IEnumerable<Rule> rules, string name)
    {
        var named = rules.Where(rule => rule.Part == name).ToImmutableArray();
        return named.IsEmpty ? null : new RuleAmount(0, "", IsLeast: true, named);
    }

    /// <summary>Citations joined, each once, in order; a rule may itself cite several.</summary>
    /// <param name="rules">The rules.</param>
    public static string Cited(IEnumerable<Rule> rules) =>
        string.Join("; ", rules.SelectMany(rule => rule.Citation.Split("; ")).Distinct(StringComparer.Ordinal));
}
