using System.Text.RegularExpressions;

namespace Batch.Flight.Air.Bulletins;

/// <summary>What all bulletins of an aerodrome have in common: groups divided by blanks, a station, a time of issue.</summary>
internal static partial class BulletinText
{
    /// <summary>The groups, in capitals, without the closing equals sign.</summary>
    public static List<string> Groups(string text) => [.. Split(text).Select(g => g.ToUpperInvariant())];

    /// <summary>
    /// The reports or forecasts of a text, each by itself: divided by equals signs and by lines that begin with METAR, SPECI or TAF. Pieces without a station,
    /// such as a heading, are left out, unless there is nothing else.
    /// </summary>
    public static IReadOnlyList<string> Each(string text)
    {
        var pieces = new List<List<string>> { new() };
        foreach (var line in text.Split('\n'))
        {
            if (KindLine().IsMatch(line)) pieces.Add([]);
            var parts = line.Split('=');
            for (var i = 0; i < parts.Length; i++)
            {
                if (i > 0) pieces.Add([]);
                pieces[^1].Add(parts[i]);
            }
        }

        var found = pieces.Select(lines => string.Join('\n', lines))
            .Where(piece => Split(piece).Any(g => g.ToUpperInvariant() is not ("METAR" or "SPECI" or "TAF" or "AMD" or "COR"))).ToArray();
        return found.Length == 0 ? [text] : found;
    }

    /// <summary>Some of the groups, in the letters as written.</summary>
    public static string AsWritten(string text, Range groups) => string.Join(' ', Split(text).Take(groups));

    // Without the heading of a transmission, such as SAUS70 KWBC 121200 RRA (WMO-No. 386, abbreviated heading).
    private static IEnumerable<string> Split(string text)
    {
        var groups = text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(g => g.TrimEnd('=')).Where(g => g.Length > 0).ToArray();
        if (groups.Length < 3 || !HeadingKind().IsMatch(groups[0]) || !HeadingTime().IsMatch(groups[2])) return groups;
        return groups.Skip(groups.Length > 3 && HeadingRepeat().IsMatch(groups[3]) ? 4 : 3);
    }

    [GeneratedRegex("^\\s*(METAR|SPECI|TAF)\\b", RegexOptions.ExplicitCapture | RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex KindLine();

    [GeneratedRegex("^[A-Z]{4}[0-9]{2}$", RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex HeadingKind();

    [GeneratedRegex("^[0-9]{6}$", RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex HeadingTime();

    [GeneratedRegex("^(RR|CC|AA)[A-X]$", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 20_000)]
    private static partial Regex HeadingRepeat();

    /// <summary>A station: four letters or digits, a letter first.</summary>
    [GeneratedRegex("^[A-Z][A-Z0-9]{3}$", RegexOptions.CultureInvariant, 20_000)]
    public static partial Regex Station();

    /// <summary>Day, hour and minute of issue or observation, such as 251853Z; some leave the Z out.</summary>
    [GeneratedRegex("^[0-9]{6}Z?$", RegexOptions.CultureInvariant, 20_000)]
    public static partial Regex IssueTime();
}
