namespace Batch.Paper.Style;

/// <summary>Whether a media list speaks of paper. Colour scheme is light on paper; other features are not judged.</summary>
internal static class MediaQuery
{
    /// <summary>True when one query of the list holds for print; <paramref name="unknown"/> names a feature that could not be judged.</summary>
    public static bool Matches(string list, out string? unknown)
    {
        unknown = null;
        if (string.IsNullOrWhiteSpace(list)) return true;
        var any = false;
        foreach (var query in list.ToLowerInvariant().Split(',', StringSplitOptions.TrimEntries)) any |= Holds(query, ref unknown);
        return any;
    }

    private static bool Holds(string query, ref string? unknown)
    {
        var negated = query.StartsWith("not ", StringComparison.Ordinal);
        if (negated) query = query[4..].Trim();
        if (query.StartsWith("only ", StringComparison.Ordinal)) query = query[5..].Trim();
        var holds = true;
        foreach (var raw in query.Split(" and ", StringSplitOptions.TrimEntries))
        {
            var part = raw.Replace(" ", "", StringComparison.Ordinal);
            if (part is "print" or "all" or "(prefers-color-scheme:light)" or "(color)") continue;
            if (part is not ("screen" or "speech" or "(prefers-color-scheme:dark)" or "(monochrome)" or "(prefers-reduced-motion:reduce)" or "(hover:hover)")) unknown = raw;
            holds = false;
        }

        return holds != negated;
    }
}
