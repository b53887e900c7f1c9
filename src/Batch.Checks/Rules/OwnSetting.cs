using System.Globalization;
using Batch.Flight.Fleet;

namespace Batch.Checks.Rules;

/// <summary>
/// The operator's own setting of a check, as far as it is accepted: stricter always, looser only with a reason. What is not accepted is said in a note; the
/// reason of what is looser stands in the citation, or beside the finding that it makes milder.
/// </summary>
internal sealed class OwnSetting
{
    private readonly CheckSetting? _row;

    /// <summary>Makes it.</summary>
    /// <param name="row">Row of the Checks sheet; null where there is none.</param>
    public OwnSetting(CheckSetting? row) => _row = row;

    /// <summary>Whether the check is switched off, with a reason.</summary>
    public bool IsOff => _row is { On: false } && HasReason;

    private bool HasReason => !string.IsNullOrWhiteSpace(_row?.Reason);

    private string Reason => _row?.Reason.Trim().TrimEnd('.') ?? "";

    /// <summary>What is said with a finding whose state the operator makes milder, with the reason; empty where it is not.</summary>
    /// <param name="state">State that the rules give.</param>
    public string Milder(State state) => Applied(state) is var own && own < state ? $" The Checks sheet makes this a {Named(own)}: {Reason}." : "";

    /// <summary>The reason where the operator makes a state milder, or switches the check off; empty where not.</summary>
    /// <param name="state">State that the rules give; null for the check being switched off.</param>
    public string Loosened(State? state) => state is { } given ? Applied(given) < given ? Reason : "" : IsOff ? Reason : "";

    /// <summary>The state of a finding.</summary>
    /// <param name="state">State that the rules give.</param>
    public State Applied(State state) => _row?.State is { } own && (own > state || HasReason) ? own : state;

    /// <summary>The amount of a check.</summary>
    /// <param name="check">The check.</param>
    /// <param name="amount">Amount that the rules give.</param>
    /// <param name="name">Name of the amount.</param>
    public RuleAmount Applied(ICheck check, RuleAmount amount, string name) =>
        Value(check, name, amount.Unit) is { } own && (!amount.IsLooser(own) || HasReason) ? amount with
        {
            Value = own,
            Own = amount.IsLooser(own) ? "operator's Checks sheet: " + Reason : "operator's Checks sheet",
            Loosened = amount.IsLooser(own) ? Reason : "",
        }
            : amount;

    /// <summary>The operator's number of an amount that the rules leave to the operator; null where the Checks sheet gives none.</summary>
    /// <param name="check">The check.</param>
    /// <param name="rules">Rules that hold.</param>
    /// <param name="name">Name of the amount.</param>
    public RuleAmount? Given(ICheck check, ImmutableArray<Rule> rules, string name) =>
        rules.FirstOrDefault(rule => rule.Part == name && rule.IsLeftToOperator) is { } open && Value(check, name, open.Unit) is { } own
            ? new RuleAmount(own, open.Unit, open.IsLeast, [open]) { Own = "operator's Checks sheet" }
            : null;

    /// <summary>What is to be said about the setting, one sentence each; empty where all of it is followed; a check that is switched off is said.</summary>
    /// <param name="check">The check.</param>
    /// <param name="rules">Rules that hold.</param>
    public IEnumerable<string> Notes(ICheck check, ImmutableArray<Rule> rules)
    {
        if (_row is null)
        {
            yield break;
        }

        if (_row.On == false)
        {
            yield return HasReason
                ? $"Switched off in the Checks sheet: {_row.Reason}"
                : "The Checks sheet switches this check off without a reason, so it stays on.";
        }

        if (!HasReason && _row.State is { } state && state < Ruling.StateOf(rules))
        {
            yield return $"The Checks sheet makes this a {Named(state)} without a reason; that is milder than the rule and not followed.";
        }

        foreach (var note in ValueNotes(check, rules))
        {
            yield return note;
        }
    }

    private IEnumerable<string> ValueNotes(ICheck check, ImmutableArray<Rule> rules)
    {
        if (string.IsNullOrWhiteSpace(_row?.Value))
        {
            yield break;
        }

        if (check.Tunable.IsEmpty)
        {
            yield return $"The Checks sheet gives the value {_row.Value}, but this check has no value to set.";
        }

        foreach (var name in check.Tunable)
        {
            if (RuleAmount.Strictest(rules, name) is not { } amount || Part(check, name).Length == 0)
            {
                if (Part(check, name).Length > 0 && rules.FirstOrDefault(rule => rule.Part == name
                    && rule.IsLeftToOperator) is { } open && Value(check, name, open.Unit) is null)
                {
                    yield return $"The Checks sheet gives the value {Part(check, name)} for the {name}, which is not a number of {open.Unit}.";
                }

                continue;
            }

            if (Value(check, name, amount.Unit) is not { } own)
            {
                yield return $"The Checks sheet gives the value {Part(check, name)} for the {name}, which is not a number of {amount.Unit}; {Words.Amount(amount.Value, amount.Unit)} holds.";
            }
            else if (amount.IsLooser(own) && !HasReason)
            {
                yield return $"The Checks sheet allows {Words.Amount(own, amount.Unit)} for the {name} without a reason; the rule's {Words.Amount(amount.Value, amount.Unit)} holds.";
            }
        }
    }

    private double? Value(ICheck check, string name, string unit)
    {
        var part = Part(check, name);
        if (unit.Length > 0 && part.EndsWith(unit, StringComparison.OrdinalIgnoreCase))
        {
            part = part[..^unit.Length].TrimEnd();
        }

        return double.TryParse(part, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value) ? value : null;
    }

    /// <summary>The part of the value cell that is for an amount.</summary>
    private string Part(ICheck check, string name)
    {
        var index = check.Tunable.IndexOf(name);
        var parts = (_row?.Value ?? "").Split('/', StringSplitOptions.TrimEntries);
        return index >= 0 && index < parts.Length ? parts[index] : "";
    }

    private static string Named(State state) => state switch
    {
        State.Note => "note",
        State.Caution => "caution",
        State.Fail => "failure",
    };
}
