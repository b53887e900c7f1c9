namespace Batch.Flight;

/// <summary>Finds the known words that a mistyped word was probably meant to be.</summary>
public static class NearWords
{
    /// <summary>Greatest number of edits between a word and what it may have meant.</summary>
    public const int GreatestDistance = 3;

    /// <summary>
    /// The known words nearest to a word, best first: by edits, then by name (ordinal), so that the order never depends on the order of
    /// <paramref name="known"/>. Case is ignored in comparing; the spelling of <paramref name="known"/> is given back. At most <see cref="GreatestDistance"/>
    /// edits, and for short words no more than half their letters (rounded up), else every two-letter word would be near every other. An empty word is near
    /// nothing.
    /// </summary>
    /// <param name="word">The word as written.</param>
    /// <param name="known">The words it may have meant; repeats are given once.</param>
    /// <param name="most">How many to give at most.</param>
    public static ImmutableArray<string> Nearest(string word, IEnumerable<string> known, int most = 3)
    {
        var sought = word.Trim().ToUpperInvariant();
        var limit = Math.Min(GreatestDistance, (sought.Length + 1) / 2);
        if (limit == 0) return [];

        var found = new SortedSet<(int Distance, string Word)>(Comparer<(int Distance, string Word)>.Create(
            (a, b) => a.Distance != b.Distance ? a.Distance.CompareTo(b.Distance) : string.CompareOrdinal(a.Word, b.Word)));
        foreach (var candidate in known)
        {
            if (candidate.Length == 0 || Math.Abs(candidate.Length - sought.Length) > limit) continue;
            var distance = Distance(sought, candidate.ToUpperInvariant());
            if (distance > limit || distance >= Math.Max(sought.Length, candidate.Length)) continue;
            found.Add((distance, candidate));
            if (found.Count > most) found.Remove(found.Max);
        }

        return [.. found.Select(near => near.Word)];
    }

    /// <summary>
    /// Number of edits that turn one word into the other: insert, delete or replace a letter, or exchange two neighbours, no letter edited twice
    /// (optimal string alignment). Case matters.
    /// </summary>
    /// <param name="a">One word.</param>
    /// <param name="b">The other.</param>
    public static int Distance(string a, string b)
    {
        var beforeLast = new int[b.Length + 1];
        var last = new int[b.Length + 1];
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) last[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var replaced = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, replaced);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
            }

            (beforeLast, last, row) = (last, row, beforeLast);
        }

        return last[b.Length];
    }
}
