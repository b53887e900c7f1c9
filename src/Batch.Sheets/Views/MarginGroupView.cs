using Batch.Checks;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The thinnest margins in one unit, thinnest first.</summary>
internal sealed record MarginGroupView
{
    [Value("Unit of the margins")]
    public required string Unit { get; init; }

    [Value("The margins, thinnest first")]
    public required ImmutableArray<FindingView> Findings { get; init; }

    public static ImmutableArray<MarginGroupView> Of(CheckedWeek week, int most) =>
    [
        .. week.Legs
            .SelectMany(leg => leg.Findings.Where(finding => finding.Margin is >= 0 && finding.Unit.Length > 0).Select(finding => (Leg: leg, Finding: finding)))
            .GroupBy(pair => pair.Finding.Unit, StringComparer.Ordinal)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new MarginGroupView
            {
                Unit = group.Key,
                Findings = [.. group.OrderBy(pair => pair.Finding.Margin).ThenBy(pair => pair.Leg.Plan.Key).ThenBy(pair => pair.Finding.Check, StringComparer.Ordinal).Take(most).Select(pair => FindingView.Of(pair.Leg, pair.Finding))],
            }),
    ];
}
