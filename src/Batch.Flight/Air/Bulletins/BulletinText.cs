using System.Text.RegularExpressions;

namespace Batch.Flight.Air.Bulletins;

/// <summary>What all bulletins of an aerodrome have in common: groups divided by blanks, a station, a time of issue.</summary>
internal static partial class BulletinText
{
    /// <summary>The groups, in capitals, without the closing equals sign.</summary>
    public static List<string> Groups(string text) => [.. Split(text).Select(g => g.ToUpperInvariant())];

    /// <summary>The groups from a place to the end, in the letters as written.</summary>
    public static string AsWritten(string text, int from) => string.Join(' ', Split(text).Skip(from));

    private static IEnumerable<string> Split(string text) =>
        text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(g => g.TrimEnd('=')).Where(g => g.Length > 0);

    [GeneratedRegex("^[A-Z][A-Z0-9]{3}$", RegexOptions.CultureInvariant, 1000)]
    public static partial Regex Station();

    [GeneratedRegex("^[0-9]{6}Z$", RegexOptions.CultureInvariant, 1000)]
    public static partial Regex IssueTime();
}
