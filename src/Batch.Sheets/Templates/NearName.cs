namespace Batch.Sheets.Templates;

/// <summary>The valid name nearest to one that is not.</summary>
internal static class NearName
{
    private const int Farthest = 3;

    /// <summary>The name with the least edit distance, at most 3 and less than the length of what was written; ties by alphabet; empty when none is near.</summary>
    /// <param name="written">What was written.</param>
    /// <param name="valid">The valid names.</param>
    public static string Of(string written, IEnumerable<string> valid)
    {
        var nearest = valid
            .Select(name => (Name: name, Distance: EditDistance(written, name)))
            .Where(candidate => candidate.Distance <= Math.Min(Farthest, written.Length - 1))
            .OrderBy(candidate => candidate.Distance)
            .ThenBy(candidate => candidate.Name, StringComparer.Ordinal)
            .FirstOrDefault();
        return nearest.Name ?? valid.Where(name => written.Length >= 3 && name.Contains(written, StringComparison.Ordinal)).Order(StringComparer.Ordinal).FirstOrDefault() ?? "";
    }

    /// <summary>Least number of insertions, deletions and replacements (Levenshtein 1966) that turn one text into the other.</summary>
    private static int EditDistance(string a, string b)
    {
        var row = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), diagonal + (a[i - 1] == b[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }
        return row[^1];
    }
}
