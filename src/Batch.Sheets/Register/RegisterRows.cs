using System.Diagnostics;
using Batch.Checks;
using Batch.Flight.Plan;

namespace Batch.Sheets.Register;

/// <summary>Turns the answers on one leg into rows of the register.</summary>
internal static class RegisterRows
{
    /// <summary>Check id of the row that says why a leg could not be planned.</summary>
    public const string PlanCheck = "PLAN";

    public static IEnumerable<RegisterRow> Of(CheckedLeg leg)
    {
        var (aircraft, captain, date) = Names(leg.Plan);
        RegisterRow Row(string state, Finding finding) => new()
        {
            Trip = leg.Plan.Key.Trip,
            Leg = leg.Plan.Key.Number,
            Key = leg.Plan.Key,
            Row = UnreadNumber.Row(leg.Plan),
            Aircraft = aircraft,
            Captain = captain,
            Date = date,
            State = state,
            Override = finding.Verdict == Verdict.Fail ? leg.Override : "",
            Finding = finding,
        };
        if (leg.Plan is LegPlan.Unplanned unplanned)
            yield return Row(StateWord.Of(LegState.Unplanned), NotPlanned(unplanned, leg.Findings));
        foreach (var finding in leg.Findings)
            yield return Row(StateWord.Of(finding.Verdict), finding);
    }

    private static (string Aircraft, string Captain, LocalDate? Date) Names(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned => (planned.Leg.Aircraft, planned.Leg.Captain, planned.Leg.OffBlocksLocal.Date),
        LegPlan.Unplanned { Leg: { } leg } => (leg.Aircraft, leg.Captain, leg.OffBlocksLocal.Date),
        LegPlan.Unplanned { Broken: { } broken } => (broken.Aircraft, broken.Captain, broken.Date),
        LegPlan.Unplanned => ("", "", null),
        _ => throw new UnreachableException(),
    };

    private static Finding NotPlanned(LegPlan.Unplanned plan, ImmutableArray<Finding> findings) => new()
    {
        Check = PlanCheck,
        Title = "Leg can be planned",
        Verdict = Verdict.Fail,
        Text = plan.Sentence,
        Citation = "",
        Cells = plan.Cells,
        Actor = plan.IsFault ? "maker of the program" : "dispatcher",
        Remedies = plan.Expected.Length == 0
            ? [.. findings.SelectMany(finding => finding.Remedies)]
            : [new Remedy(plan.Expected, 1, ImmutableSortedDictionary<string, string>.Empty)],
        Replans = findings.Select(finding => finding.Replans).FirstOrDefault(),
    };
}
