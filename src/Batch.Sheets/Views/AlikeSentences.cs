using System.Text.RegularExpressions;

namespace Batch.Sheets.Views;

/// <summary>Sentences that say the same of several airports, put into one.</summary>
internal static partial class AlikeSentences
{
    /// <summary>
    /// Sentences such as <c>No surface wind known at XAND: calm.</c> and the same at XROA become <c>No surface wind known at XAND, XROA: calm.</c>
    /// The first of them keeps its place; sentences of another form stay as they are, each once.
    /// </summary>
    /// <param name="sentences">Sentences in order.</param>
    public static ImmutableArray<string> Gathered(IEnumerable<string> sentences) =>
    [
        .. sentences.Distinct(StringComparer.Ordinal)
            .Select(sentence => (Sentence: sentence, Match: AtAnAirport().Match(sentence)))
            .GroupBy(
                each => each.Match.Success ? each.Match.Groups["head"].Value + "\n" + each.Match.Groups["tail"].Value : each.Sentence, StringComparer.Ordinal)
            .Select(group => group.Count() == 1
                ? group.First().Sentence
                : group.First().Match.Groups["head"].Value + string.Join(", ", group.Select(each => each.Match.Groups["airport"].Value))
                    + group.First().Match.Groups["tail"].Value),
    ];

    [GeneratedRegex("^(?<head>.*? at )(?<airport>[A-Z][A-Z0-9]{2,6})(?<tail>[: ].*)$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1_000)]
    private static partial Regex AtAnAirport();
}
