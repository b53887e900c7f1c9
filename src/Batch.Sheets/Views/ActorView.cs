using Batch.Checks;
using Batch.Sheets.Register;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>What waits for one who can act.</summary>
internal sealed record ActorView
{
    [Value("Who can act")]
    public required string Actor { get; init; }

    [Value("Legs that could not be planned, failures and cautions, worst first")]
    public required ImmutableArray<FindingView> Findings { get; init; }

    /// <summary>Who has most failures comes first.</summary>
    public static ImmutableArray<ActorView> Of(CheckedWeek week) =>
    [
        .. week.Legs
            .SelectMany(leg => RegisterRows.Of(leg).Select(row => row.Finding).Where(finding => finding.Verdict is Verdict.Fail or Verdict.Caution)
                .Select(finding => (Leg: leg, Finding: finding)))
            .GroupBy(pair => pair.Finding.Actor, StringComparer.Ordinal)
            .OrderByDescending(group => group.Count(pair => pair.Finding.Verdict == Verdict.Fail)).ThenBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new ActorView
            {
                Actor = group.Key,
                Findings = [.. group.OrderByDescending(pair => pair.Finding.Verdict).ThenBy(pair => pair.Leg.Plan.Key)
                    .Select(pair => FindingView.Of(pair.Leg, pair.Finding))],
            }),
    ];
}
