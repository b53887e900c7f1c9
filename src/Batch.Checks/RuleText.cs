namespace Batch.Checks;

/// <summary>One entry of a rule set, for a reader.</summary>
public sealed record RuleText
{
    /// <summary>Id of the check that it serves.</summary>
    public required string Check { get; init; }

    /// <summary>Title of the check.</summary>
    public required string Title { get; init; }

    /// <summary>Part of the check; empty for the check as a whole.</summary>
    public required string Part { get; init; }

    /// <summary>The amount [<see cref="Unit"/>]; null for a rule without one.</summary>
    public required double? Value { get; init; }

    /// <summary>Whether the amount is the least that is wanted; else it is the most that is allowed.</summary>
    public required bool IsLeast { get; init; }

    /// <summary>Unit of the amount; empty for none.</summary>
    public required string Unit { get; init; }

    /// <summary>For which legs it holds, in words; empty for all.</summary>
    public required string When { get; init; }

    /// <summary>How serious it is when not met; an entry whose basis is to be confirmed is at most a caution.</summary>
    public required State State { get; init; }

    /// <summary>Document and paragraph.</summary>
    public required string Citation { get; init; }

    /// <summary>How well its basis is known, in words.</summary>
    public required string Basis { get; init; }

    /// <summary>Whether the basis is still to be confirmed.</summary>
    public required bool IsBasisUnconfirmed { get; init; }

    /// <summary>What it says, in plain words.</summary>
    public required string Says { get; init; }
}
