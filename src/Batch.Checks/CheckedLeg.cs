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

    /// <summary>What a reader must see: failures, cautions, notes and what could not be checked.</summary>
    public IEnumerable<Finding> Shown => Findings.Where(finding => finding.Verdict is Verdict.Fail or Verdict.Caution or Verdict.Note or Verdict.NotChecked);
}
