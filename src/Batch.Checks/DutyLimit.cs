using Batch.Flight.Week;

namespace Batch.Checks;

/// <summary>How much of one limit on flight time, duty or rest a person has used where it is tightest, and how much is left.</summary>
public sealed record DutyLimit
{
    /// <summary>Stable name for programs, such as <c>flightIn24Hours</c>.</summary>
    public required string Key { get; init; }

    /// <summary>The figure in words, such as <c>flight time in 24 hours</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The leg at whose end it is tightest.</summary>
    public required LegKey At { get; init; }

    /// <summary>Start of the time that is looked at.</summary>
    public required Instant From { get; init; }

    /// <summary>Its end: on blocks or release of the leg.</summary>
    public required Instant Until { get; init; }

    /// <summary>What is flown, on duty or rested in this time [<see cref="Unit"/>], as far as it is known.</summary>
    public required double Used { get; init; }

    /// <summary>The limit [<see cref="Unit"/>], the operator's own where it is stricter; null where the rule set names none.</summary>
    public double? Limit { get; init; }

    /// <summary>Whether <see cref="Limit"/> is the least that is wanted (rest); else it is the most that is allowed.</summary>
    public bool IsLeast { get; init; }

    /// <summary>What is left to the limit [<see cref="Unit"/>]; negative beyond it; null where there is no limit.</summary>
    public double? Left => IsLeast ? Used - Limit : Limit - Used;

    /// <summary>Unit of the figures: <c>h</c>, or <c>rests</c> for a number of rest periods.</summary>
    public string Unit { get; init; } = "h";

    /// <summary>Why the figure is not wholly known, as a sentence; empty where it is.</summary>
    public string Unknown { get; init; } = "";

    /// <summary>Whether all of the time that is looked at is logged or planned.</summary>
    public bool IsKnown => Unknown.Length == 0;

    /// <summary>Document and paragraph; empty where there is no limit.</summary>
    public string Citation { get; init; } = "";

    /// <summary>Whether the basis of the limit is still to be confirmed.</summary>
    public bool IsBasisUnconfirmed { get; init; }
}
