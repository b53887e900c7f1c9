using Batch.Flight.Plan;

namespace Batch.Checks.Rules;

/// <summary>One entry of a rule file: what a check rests on, when it holds, and how well that is known.</summary>
internal sealed record Rule
{
    /// <summary>Id of the check it serves.</summary>
    public required string Check { get; init; }

    /// <summary>Part of the check that it is for, such as <c>crosswind</c>; empty for the check as a whole.</summary>
    public required string Part { get; init; }

    /// <summary>The number, in <see cref="Unit"/>; null for a rule without one.</summary>
    public required double? Value { get; init; }

    /// <summary>Whether the rules leave the number to the operator, whose Checks sheet gives it.</summary>
    public bool IsLeftToOperator { get; init; }

    /// <summary>Unit of the number.</summary>
    public required string Unit { get; init; }

    /// <summary>Whether the number is a least value (a greater one is stricter); else it is a greatest value.</summary>
    public required bool IsLeast { get; init; }

    /// <summary>How a reserve time becomes fuel; null where the number is no reserve time.</summary>
    public required ReserveBasis? Basis { get; init; }

    /// <summary>When it holds.</summary>
    public required RuleCondition When { get; init; }

    /// <summary>How serious it is when not met.</summary>
    public required State State { get; init; }

    /// <summary>Document and paragraph.</summary>
    public required string Citation { get; init; }

    /// <summary>How well its basis is known.</summary>
    public required RuleMark Mark { get; init; }

    /// <summary>What it says, for a reader.</summary>
    public required string Says { get; init; }

    /// <summary>Whether its basis needs no confirmation.</summary>
    public bool IsConfirmed => Mark is RuleMark.Verified or RuleMark.OperatorBook;
}
