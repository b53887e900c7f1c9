using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Batch.Sheets.Figures;
using Scriban.Runtime;

namespace Batch.Sheets.Templates;

/// <summary>Writes English sentences of the program in the words of a template.</summary>
internal sealed partial class OwnWords
{
    private const int Deepest = 6; // a sentence in a sentence: "Not checked: ...; without it: ..."
    private static readonly FrozenSet<string> Units =
        FrozenSet.ToFrozenSet(["lb", "lb/h", "lb/USG", "kg", "ft", "in", "kt", "km", "m", "min", "h"], StringComparer.Ordinal);
    private readonly ImmutableArray<(SentenceForm Form, string Text)> _forms;
    private readonly Dictionary<string, string> _whole = new(StringComparer.Ordinal);
    private readonly CultureInfo _culture;

    /// <param name="words">English forms and what stands for them.</param>
    /// <param name="culture">How numbers and days are written.</param>
    public OwnWords(ScriptObject words, CultureInfo culture)
    {
        _culture = culture;
        var forms = new List<(SentenceForm Form, string Text)>();
        foreach (var (english, own) in words)
        {
            var form = SentenceForm.Of(english);
            if (form.Kinds.Count == 0)
                _whole[english] = own?.ToString() ?? "";
            else
                forms.Add((form, own?.ToString() ?? ""));
        }
        _forms = [.. forms.OrderByDescending(form => form.Form.HasCells).ThenByDescending(form => form.Form.Letters)];
    }

    /// <summary>The sentence in the template's words; null where they do not hold it.</summary>
    /// <param name="sentence">The English sentence.</param>
    /// <param name="figures">The limit and figure that it holds; null for none.</param>
    public string? Of(string sentence, HeldFigure? figures = null) => Of(sentence, figures, 0)
        ?? (sentence.Length > 1 && Of(char.ToLowerInvariant(sentence[0]) + sentence[1..], figures, 0) is { Length: > 0 } own
            ? char.ToUpper(own[0], _culture) + own[1..]
            : null);

    /// <summary>A sentence with dots for names and numbers, so that two that differ in those alone are named once.</summary>
    /// <param name="sentence">The sentence.</param>
    public static string Shape(string sentence) => NamesAndNumbers().Replace(sentence, "…");

    private string? Of(string sentence, HeldFigure? figures, int depth)
    {
        if (_whole.TryGetValue(sentence, out var whole))
            return whole;
        if (depth > Deepest)
            return null;
        if (Fitted(_forms, sentence, figures, depth) is { } fitted)
            return fitted;
        return sentence.EndsWith('.') && Of(sentence[..^1], figures, depth) is { } open ? open + "." : null;
    }

    private string? Fitted(IEnumerable<(SentenceForm Form, string Text)> forms, string sentence, HeldFigure? figures, int depth)
    {
        foreach (var (form, text) in forms)
        {
            if (form.Fit(sentence) is { } gaps && Filled(form, gaps, figures, depth + 1) is { } filled)
                return SentenceForm.Filled(text, filled);
        }
        return null;
    }

    private Dictionary<string, string>? Filled(SentenceForm form, IReadOnlyDictionary<string, string> gaps, HeldFigure? figures, int depth)
    {
        var filled = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var (name, text) in gaps)
        {
            var own = form.Kinds[name] switch
            {
                "own" => text,
                "cells" =>
                    string.Join("; ", text.Split("; ").Select(part => Fitted(_forms.Where(known => known.Form.BeginsWithWord), part, null, depth) ?? part)),
                "pounds" => AmountsInText.Rewritten(text + (gaps.Values.Any(gap => gap.EndsWith(" kg", StringComparison.Ordinal)) ? " kg" : " lb"), _culture),
                "words" => Of(text, figures, depth),
                "list" => List(text, figures, depth),
                _ => Value(text, figures, depth),
            };
            if (own is null)
                return null;
            filled[name] = own;
        }
        return filled;
    }

    private string? List(string text, HeldFigure? figures, int depth)
    {
        var written = new StringBuilder();
        var from = 0;
        foreach (var mark in Separators().Matches(text).Select(match => match.Groups["mark"]).Where(mark => mark.Success))
        {
            if (Value(text[from..mark.Index], figures, depth) is not { } part || Value(mark.Value, figures, depth) is not { } between)
                return null;
            written.Append(part).Append(between);
            from = mark.Index + mark.Length;
        }
        return Value(text[from..], figures, depth) is { } last ? written.Append(last).ToString() : null;
    }

    /// <summary>A name or an amount; not a piece of a sentence that happens to stand between two words of a form.</summary>
    private string? Value(string text, HeldFigure? figures, int depth) =>
        Of(text, figures, depth)
            ?? (!text.Contains(' ', StringComparison.Ordinal) || !IsSentence(text) ? AmountsInText.Rewritten(text, _culture, figures) : null);

    private static bool IsSentence(string text) =>
        text.Contains(". ", StringComparison.Ordinal)
            || text.Split([' ', '(', ')', ',', ';', ':'], StringSplitOptions.RemoveEmptyEntries)
                .Any(word => char.IsAsciiLetterLower(word[0]) && !Units.Contains(word));

    [GeneratedRegex("[A-Za-z-]*(?:[0-9]|[A-Z][A-Z])[A-Za-z0-9/.,-]*[A-Za-z0-9]|[0-9]", RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex NamesAndNumbers();

    /// <summary>What stands between the parts of a list; a text in quotation marks is one part.</summary>
    [GeneratedRegex("""
        "[^"]*"|(?<mark>, | and | \+ | or |; )
        """, RegexOptions.CultureInvariant | RegexOptions.NonBacktracking)]
    private static partial Regex Separators();
}
