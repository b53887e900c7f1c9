using Batch.Flight.Plan;

namespace Batch.Checks;

/// <summary>A leg with the answers of all checks.</summary>
public sealed record CheckedLeg
{
    /// <summary>The plan.</summary>
    public required LegPlan Plan { get; init; }

    /// <summary>Answers of every check that looked at it, worst first, then by check id; passes included.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>State.</summary>
    public LegState State => Plan is LegPlan.Unplanned ? LegState.Unplanned
        : Findings.Any(finding => finding.Verdict == Verdict.Fail) ? LegState.Fail
        : Findings.Any(finding => finding.Verdict == Verdict.Caution) ? LegState.Caution
        : LegState.Pass;

    /// <summary>Why the leg is flown although it fails; empty where nobody gave a reason or nothing fails.</summary>
    public string Override => State == LegState.Fail && Plan is LegPlan.Planned planned ? planned.Leg.Override : "";

    /// <summary>Whether the leg is kept from the crew: it could not be planned, or it fails and nobody gave a reason to fly it all the same.</summary>
    public bool IsHeld => State == LegState.Unplanned || (State == LegState.Fail && Override.Length == 0);

    /// <summary>What a reader must see: failures, cautions, notes and what could not be checked.</summary>
    public IEnumerable<Finding> Shown => Findings.Where(finding => finding.Verdict is Verdict.Fail or Verdict.Caution or Verdict.Note or Verdict.NotChecked);
}
