using System.Globalization;

namespace Batch.Flight.Plan;

/// <summary>Collects what a load sheet takes for granted; like things are counted into one sentence. Names no person.</summary>
/// <param name="source">Where the standard weights come from.</param>
internal sealed class LoadAssumptions(string source)
{
    private readonly List<(string One, string Many, string Ending, int Count)> _counted = [];
    private readonly List<string> _sentences = [];

    /// <summary>Counts things taken at a standard weight, such as <c>2 passengers at standard weight (adult 195 lb, source).</c>.</summary>
    /// <param name="one">Word for one.</param>
    /// <param name="many">Word for several.</param>
    /// <param name="label">What the weight is of, such as <c>adult</c>; empty where the word says it.</param>
    /// <param name="each">Weight of each.</param>
    /// <param name="count">How many.</param>
    public void Standard(string one, string many, string label, Pounds each, int count = 1) =>
        Count(one, many, $" at standard weight ({(label.Length > 0 ? label + " " : "")}{each}, {source})", count);

    /// <summary>Counts things, such as <c>No bag weight stated for 2 passengers: taken as 0 lb.</c>.</summary>
    /// <param name="one">Words for one, the number put in place of <c>#</c>, else before them.</param>
    /// <param name="many">Words for several, likewise.</param>
    /// <param name="ending">Rest of the sentence.</param>
    /// <param name="count">How many.</param>
    public void Count(string one, string many, string ending, int count = 1)
    {
        var at = _counted.FindIndex(entry => entry.One == one && entry.Ending == ending);
        if (at < 0) _counted.Add((one, many, ending, count));
        else _counted[at] = _counted[at] with { Count = _counted[at].Count + count };
    }

    /// <summary>Adds a sentence, once, written without its capital letter and full stop.</summary>
    /// <param name="sentence">The sentence.</param>
    public void Say(string sentence)
    {
        if (!_sentences.Contains(sentence, StringComparer.Ordinal)) _sentences.Add(sentence);
    }

    /// <summary>All sentences, the counted ones first, each kind in the order of first use.</summary>
    public ImmutableArray<string> All() =>
    [
        .. _counted.Select(entry =>
        {
            var words = entry.Count == 1 ? entry.One : entry.Many;
            var number = entry.Count.ToString(CultureInfo.InvariantCulture);
            return PlainSentence.Of((words.Contains('#', StringComparison.Ordinal)
                ? words.Replace("#", number, StringComparison.Ordinal)
                : number + " " + words) + entry.Ending);
        }),
        .. _sentences.Select(PlainSentence.Of),
    ];
}
