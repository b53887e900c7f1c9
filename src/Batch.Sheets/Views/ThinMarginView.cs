using Batch.Checks;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>The condition that a leg meets by the least.</summary>
internal sealed record ThinMarginView
{
    [Value("The answer of the check, with its margin")]
    public required FindingView Finding { get; init; }

    [Value("The margin as a share of the limit, or of the width between limits [%]; rounded down to a tenth")]
    public required double Percent { get; init; }

    public static ImmutableArray<ThinMarginView> Of(CheckedWeek week, int most) =>
        [.. ThinnestMargins.Of(week, most)
            .Select(margin => new ThinMarginView { Finding = FindingView.Of(margin.Plan, margin.Finding), Percent = Math.Floor(margin.Share * 1000) / 10 })];
}
