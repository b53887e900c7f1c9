using Batch.Checks;
using Batch.Sheets.Templates;

namespace Batch.Sheets.Views;

/// <summary>Findings of one check that ask for no decision at once, gathered over legs: notes, and what could not be checked.</summary>
internal sealed record MinorGroupView
{
    [Value("State: note or not checked")]
    public required StateView State { get; init; }

    [Value("Id of the check")]
    public required string Check { get; init; }

    [Value("Title of the check")]
    public required string Title { get; init; }

    [Value("The legs, such as T101/1")]
    public required ImmutableArray<string> Legs { get; init; }

    [Value("Numbers of the legs within their trips, such as 1, 2; each once, without those that could not be read")]
    public required ImmutableArray<int> Numbers { get; init; }

    [Value("Rows of the Legs sheet, for legs whose number could not be read; each once")]
    public required ImmutableArray<int> Rows { get; init; }

    [Value("The sentence of the first leg, as an example")]
    public required string FirstText { get; init; }

    [Value("Document and paragraph")]
    public required string Citation { get; init; }

    [Value("Who can act")]
    public required string Actor { get; init; }

    /// <summary>Groups of the findings with certain answers, by answer and check.</summary>
    /// <param name="legs">The legs, in order.</param>
    /// <param name="verdicts">The answers that are meant.</param>
    public static ImmutableArray<MinorGroupView> Of(IEnumerable<CheckedLeg> legs, params ImmutableArray<Verdict> verdicts) =>
    [
        .. legs
            .SelectMany(leg => leg.Findings.Where(finding => verdicts.Contains(finding.Verdict))
                .Select(finding => (leg.Plan.Key, Finding: finding, Name: LegWay.Key(leg.Plan))))
            .GroupBy(pair => (pair.Finding.Verdict, pair.Finding.Check, pair.Finding.Title))
            .OrderBy(group => group.Key.Verdict)
            .ThenBy(group => group.Key.Check, StringComparer.Ordinal)
            .Select(group => new MinorGroupView
            {
                State = StateView.Of(group.Key.Verdict),
                Check = group.Key.Check,
                Title = group.Key.Title,
                Legs = [.. group.Select(pair => pair.Name).Distinct(StringComparer.Ordinal)],
                Numbers = [.. group.Select(pair => pair.Key.Number).Where(number => number > 0).Distinct()],
                Rows = [.. group.Select(pair => pair.Key.Row).Where(row => row > 0).Distinct()],
                FirstText = group.First().Finding.Text,
                Citation = group.First().Finding.Citation,
                Actor = group.First().Finding.Actor,
            }),
    ];
}
