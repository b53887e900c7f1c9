namespace Batch.Checks.Rules;

/// <summary>The names nearest to a misspelt one.</summary>
internal static class NearNames
{
    /// <summary>All names by edit distance, case ignored, ties by name.</summary>
    /// <param name="asked">Name asked for.</param>
    /// <param name="names">Names there are.</param>
    public static IEnumerable<string> Of(string asked, IEnumerable<string> names) =>
        names.OrderBy(name => Distance(asked.Trim().ToUpperInvariant(), name.ToUpperInvariant())).ThenBy(name => name, StringComparer.Ordinal);

    /// <summary>Edit distance (Levenshtein 1966): insertions, deletions and substitutions.</summary>
    private static int Distance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(row[j], row[j - 1]) + 1, diagonal + (a[i - 1] == b[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }

        return row[b.Length];
    }
}
