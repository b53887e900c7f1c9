using Batch.Checks;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>How many legs are in one state.</summary>
internal sealed record CountView
{
    [Value("State")]
    public required StateView State { get; init; }

    [Value("Number of legs")]
    public required int Legs { get; init; }

    public static ImmutableArray<CountView> Of(ImmutableArray<CheckedLeg> legs) =>
        [.. Enum.GetValues<LegState>().OrderDescending()
            .Select(state => new CountView { State = StateView.Of(state), Legs = legs.Count(leg => leg.State == state) })];
}
