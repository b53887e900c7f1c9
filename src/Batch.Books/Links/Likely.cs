namespace Batch.Books.Links;

/// <summary>What a word that is not known was likely meant to be.</summary>
internal static class Likely
{
    /// <summary>The known words that are nearest, at most three that are equally near.</summary>
    /// <param name="word">The word as written.</param>
    /// <param name="known">The words it may have meant.</param>
    public static ImmutableArray<string> Words(string word, IEnumerable<string> known)
    {
        var near = NearWords.Nearest(word, known);
        if (near.Length < 2) return near;
        var upper = word.ToUpperInvariant();
        var best = NearWords.Distance(upper, near[0].ToUpperInvariant());
        return [.. near.Where(other => NearWords.Distance(upper, other.ToUpperInvariant()) == best)];
    }

    /// <summary>The question about what was meant, to stand behind a complaint; empty where nothing is near.</summary>
    public static string Question(ImmutableArray<string> near) => near.Length > 0 ? $"; did you mean {string.Join(" or ", near)}?" : "";
}
