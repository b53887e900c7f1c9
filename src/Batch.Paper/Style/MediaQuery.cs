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

    /// <summary>Whether a condition on the width holds for a sheet 794 px (210 mm) wide; null when it is not such a condition.</summary>
    private static bool? Width(string part)
    {
        var limit = part.StartsWith("(max-width:", StringComparison.Ordinal) || part.StartsWith("(min-width:", StringComparison.Ordinal) ? Length.Parse(part[11..].TrimEnd(')'), 16, 16) : null;
        return limit is { IsAuto: false, Percent: 0 } length ? part[2] == 'a' ? length.Px >= 794 : length.Px <= 794 : null;
    }

    private static bool Holds(string query, ref string? unknown)
    {
        var negated = query.StartsWith("not ", StringComparison.Ordinal);
        if (negated) query = query[4..].Trim();
        if (query.StartsWith("only ", StringComparison.Ordinal)) query = query[5..].Trim();
        var holds = true;
        string? unjudged = null;
        foreach (var raw in query.Split(" and ", StringSplitOptions.TrimEntries))
        {
            var part = raw.Replace(" ", "", StringComparison.Ordinal);
            if (part is "print" or "all" or "(prefers-color-scheme:light)" or "(color)") continue;
            if (Width(part) is { } fits)
            {
                holds &= fits;
                continue;
            }

            if (part is "screen" or "speech" or "(prefers-color-scheme:dark)" or "(monochrome)" or "(prefers-reduced-motion:reduce)" or "(hover:hover)") holds = false;
            else unjudged = raw;
        }

        if (unjudged is null || !holds) return holds != negated;
        unknown = unjudged;
        return false;
    }
}
