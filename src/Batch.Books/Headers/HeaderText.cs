using System.Text;

namespace Batch.Books.Headers;

/// <summary>A header cell taken apart.</summary>
/// <param name="Name">The name without case, spacing and punctuation, for comparing.</param>
/// <param name="Unit">What stands in square brackets; empty for nothing.</param>
/// <param name="Aside">What stands in round brackets; empty for nothing. It is the unit where it is one, else an explanation.</param>
internal readonly record struct HeaderText(string Name, string Unit, string Aside)
{
    /// <summary>Takes a header apart.</summary>
    public static HeaderText Of(string header)
    {
        var (rest, unit) = Bracketed(header, '[', ']');
        var (name, aside) = Bracketed(rest, '(', ')');
        return new HeaderText(Plain(name.Replace("*", "", StringComparison.Ordinal)), unit, aside);
    }

    /// <summary>Letters and digits only, lower case.</summary>
    public static string Plain(string text)
    {
        var plain = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            if (char.IsLetterOrDigit(letter)) plain.Append(char.ToLowerInvariant(letter));
        }

        return plain.ToString();
    }

    /// <summary>The one of some names that a misspelled name was likely meant to be: one edit in a short name, two in a longer; null for none.</summary>
    /// <param name="name">Name without case, spacing and punctuation.</param>
    /// <param name="names">Names as declared.</param>
    public static string? Near(string name, IEnumerable<string> names)
    {
        if (name.Length < 3) return null;
        var most = name.Length <= 5 ? 1 : 2;
        return names.Select(declared => (Declared: declared, Distance: NearWords.Distance(name, Plain(declared))))
            .Where(pair => pair.Distance <= most)
            .OrderBy(pair => pair.Distance)
            .ThenBy(pair => pair.Declared, StringComparer.Ordinal)
            .Select(pair => pair.Declared)
            .FirstOrDefault();
    }

    /// <summary>
    /// The one of some names that a short name was likely meant for: the beginning of one, such as <c>Cat</c> of Category, or letters of one with its first and
    /// last, such as <c>Wt</c> of Weight; null where none or several fit.
    /// </summary>
    /// <param name="name">Name without case, spacing and punctuation.</param>
    /// <param name="names">Names as declared.</param>
    public static string? Long(string name, IEnumerable<string> names)
    {
        if (name.Length < 2) return null;
        var fitting = names.Where(declared => IsShortFor(name, Plain(declared))).Take(2).ToArray();
        return fitting is [var only] ? only : null;
    }

    private static bool IsShortFor(string name, string whole)
    {
        if (name.Length >= whole.Length) return false;
        if (name.Length >= 3 && whole.StartsWith(name, StringComparison.Ordinal)) return true;
        var found = 0;
        foreach (var letter in whole)
        {
            if (found < name.Length && letter == name[found]) found++;
        }

        return found == name.Length && name[0] == whole[0] && name[^1] == whole[^1];
    }

    private static (string Outside, string Inside) Bracketed(string text, char open, char close)
    {
        var start = text.IndexOf(open, StringComparison.Ordinal);
        var end = start < 0 ? -1 : text.IndexOf(close, start);
        return end < 0 ? (text, "") : (text[..start] + " " + text[(end + 1)..], text[(start + 1)..end].Trim());
    }
}
