namespace Batch.Paper.Style;

/// <summary>Whether a media list holds for paper: sizes are those of the page's content, the colour scheme is light, nothing hovers or points.</summary>
internal static class MediaQuery
{
    /// <summary>What holds on paper.</summary>
    private static readonly HashSet<string> Holding =
    [
        "print", "all", "(color)", "(grid:0)", "(prefers-color-scheme:light)", "(prefers-reduced-motion:no-preference)", "(prefers-contrast:no-preference)", "(forced-colors:none)", "(hover:none)", "(any-hover:none)",
        "(pointer:none)", "(update:none)",
    ];

    /// <summary>What is known not to hold there; whatever is in neither list is said not to be judged.</summary>
    private static readonly HashSet<string> Failing =
    [
        "screen", "speech", "(monochrome)", "(prefers-color-scheme:dark)", "(prefers-reduced-motion:reduce)", "(prefers-contrast:more)", "(prefers-contrast:less)", "(forced-colors:active)", "(hover)", "(hover:hover)",
        "(any-hover:hover)", "(pointer)", "(pointer:fine)", "(pointer:coarse)", "(any-pointer:coarse)", "(any-pointer:fine)",
    ];

    /// <summary>True when one query of the list holds for print; <paramref name="unknown"/> names a feature that could not be judged.</summary>
    /// <param name="list">The media list, such as `print and (min-width: 100mm)`.</param>
    /// <param name="page">Width and height of the page's content, px.</param>
    /// <param name="unknown">A feature that could not be judged, null when all could.</param>
    public static bool Matches(string list, (double Width, double Height) page, out string? unknown)
    {
        unknown = null;
        if (string.IsNullOrWhiteSpace(list)) return true;
        var any = false;
        foreach (var query in list.ToLowerInvariant().Split(',', StringSplitOptions.TrimEntries)) any |= Holds(query, page, ref unknown);
        return any;
    }

    private static bool Holds(string query, (double Width, double Height) page, ref string? unknown)
    {
        var negated = query.StartsWith("not ", StringComparison.Ordinal);
        if (negated) query = query[4..].Trim();
        if (query.StartsWith("only ", StringComparison.Ordinal)) query = query[5..].Trim();
        var (holds, unjudged) = (true, (string?)null);
        foreach (var raw in query.Split(" and ", StringSplitOptions.TrimEntries))
        {
            var part = raw.Replace(" ", "", StringComparison.Ordinal);
            var known = Holding.Contains(part) ? true : Failing.Contains(part) ? false : Size(part, page);
            if (known is null) unjudged = raw;
            else holds &= known.Value;
        }

        if (!holds || unjudged is null) return holds != negated;
        unknown = unjudged;
        return false;
    }

    private static bool? Size(string part, (double Width, double Height) page)
    {
        if (part is "(orientation:portrait)" or "(orientation:landscape)") return part == "(orientation:portrait)" == page.Height >= page.Width;
        if (!part.StartsWith('(') || !part.EndsWith(')')) return null;
        string[] marks = [":", "<=", ">=", "<", ">", "="];
        var mark = marks.FirstOrDefault(m => part.Contains(m, StringComparison.Ordinal));
        if (mark is null || part[1..^1].Split(mark) is not [var name, var value] || Length.Parse(value, 16, 16) is not { IsAuto: false, Percent: 0 } length) return null;
        var size = name.EndsWith("width", StringComparison.Ordinal) ? page.Width : page.Height;
        return (name, mark) switch
        {
            ("min-width" or "min-height", ":") or ("width" or "height", ">=") => size >= length.Px,
            ("max-width" or "max-height", ":") or ("width" or "height", "<=") => size <= length.Px,
            ("width" or "height", ">") => size > length.Px,
            ("width" or "height", "<") => size < length.Px,
            ("width" or "height", ":" or "=") => size == length.Px,
            _ => null,
        };
    }
}
