namespace Batch.Books.Cells;

/// <summary>Reads text, names, words of a list and yes or no.</summary>
internal static class TextReading
{
    /// <summary>Text as written; of a number its shown form.</summary>
    public static Reading<string> Any(RawCell cell) => Reading<string>.Good(cell.Text);

    /// <summary>A name as written, inner blanks single.</summary>
    public static Reading<string> Name(RawCell cell) => Reading<string>.Good(string.Join(' ', cell.Text.Split(Blanks, StringSplitOptions.RemoveEmptyEntries)));

    /// <summary>A name compared without case: upper case, inner blanks single.</summary>
    public static Reading<string> Ident(RawCell cell) => Name(cell).Then(name => name.ToUpperInvariant());

    /// <summary>Names separated by commas, semicolons or slashes.</summary>
    public static Reading<ImmutableArray<string>> List(RawCell cell) => Reading<ImmutableArray<string>>.Good(
        [.. cell.Text.Split(ListMarks, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)]);

    /// <summary>A runway designator: two digits and an optional letter; a digit alone gets its zero, which a spreadsheet takes away.</summary>
    public static Reading<string> Runway(RawCell cell)
    {
        var text = cell.Text.ToUpperInvariant().Replace(" ", "", StringComparison.Ordinal);
        if (text.StartsWith("RWY", StringComparison.Ordinal)) text = text[3..];
        var suffix = text.Length > 0 && text[^1] is 'L' or 'R' or 'C' ? text[^1..] : "";
        var digits = text[..(text.Length - suffix.Length)];
        if (digits.Length is 1 or 2 && digits.All(char.IsAsciiDigit))
        {
            var number = (10 * (digits.Length == 2 ? digits[0] - '0' : 0)) + (digits[^1] - '0');
            if (number is >= 1 and <= 36) return Reading<string>.Good((digits.Length == 1 ? "0" : "") + digits + suffix);
        }

        return Reading<string>.Bad("is not a runway designator", "01 to 36, with L, R or C where there are parallel runways");
    }

    /// <summary>Yes or no.</summary>
    public static Reading<bool> YesNo(RawCell cell)
    {
        if (cell.Kind == CellKind.Boolean) return Reading<bool>.Good(cell.Number != 0);
        var word = cell.Text.ToUpperInvariant();
        if (word is "YES" or "Y" or "TRUE" or "1" or "X" or "ON") return Reading<bool>.Good(true);
        return word is "NO" or "N" or "FALSE" or "0" or "OFF" or "NONE" ? Reading<bool>.Good(false) : Reading<bool>.Bad("is neither yes nor no", "yes or no");
    }

    /// <summary>One word of a list; blanks, case and punctuation do not matter.</summary>
    public static Reading<T> Word<T>(RawCell cell, ImmutableArray<(string Word, T Value)> words)
    {
        var plain = Headers.HeaderText.Plain(cell.Text);
        foreach (var (word, value) in words)
        {
            if (Headers.HeaderText.Plain(word) == plain) return Reading<T>.Good(value);
        }

        // The words of one meaning are listed once in the message, by the first of them.
        var listed = words.DistinctBy(pair => pair.Value).Select(pair => pair.Word);
        var near = NearWords.Nearest(cell.Text, words.Select(pair => pair.Word).Where(word => word.Length > 1), 1);
        return Reading<T>.Bad("is not one of the words known here" + (near.Length > 0 ? $"; did you mean {near[0]}?" : ""), Choice([.. listed]));
    }

    /// <summary>Words as a choice, such as <c>charter, ferry or training</c>.</summary>
    public static string Choice(IReadOnlyList<string> words) =>
        words.Count < 2 ? string.Concat(words) : string.Join(", ", words.Take(words.Count - 1)) + " or " + words[^1];

    private static readonly char[] Blanks = [' ', '\u00A0', '\t', '\r', '\n'];
    private static readonly char[] ListMarks = [',', ';', '/', '\n'];
}
