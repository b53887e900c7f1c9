using System.Collections.Concurrent;
using System.Text.RegularExpressions;

namespace Batch.Sheets.Templates;

/// <summary>How a sentence of the program reads, with named gaps: <c>{weight} must be loaded at {airport}</c>.</summary>
internal sealed partial class SentenceForm
{
    private const int MostKept = 20_000; // forms; more are made anew, so that a template cannot fill the memory
    private static readonly ConcurrentDictionary<string, SentenceForm> Kept = new(StringComparer.Ordinal);
    private readonly Lazy<Regex> _form; // made when a sentence nearly fits: most forms never need it
    private readonly ImmutableArray<string> _literals;

    private SentenceForm(string text)
    {
        var gaps = Gaps().Matches(text);
        var pattern = "^";
        var end = 0;
        var literals = new List<string>();
        foreach (Match gap in gaps)
        {
            literals.Add(text[end..gap.Index]);
            pattern += Regex.Escape(text[end..gap.Index]) + $"(?<{gap.Groups["name"].Value}>{Pattern(gap.Groups["kind"].Value)})";
            end = gap.Index + gap.Length;
        }
        literals.Add(text[end..]);
        pattern += Regex.Escape(text[end..]) + "$";
        _form = new Lazy<Regex>(
            () => new Regex(pattern, RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.Singleline | RegexOptions.NonBacktracking));
        _literals = [.. literals];
        Letters = literals.Sum(literal => literal.Length);
        Kinds = gaps.ToDictionary(gap => gap.Groups["name"].Value, gap => gap.Groups["kind"].Value, StringComparer.Ordinal);
    }

    /// <summary>Whether it holds cells: it is tried before a form of which a gap could take them in.</summary>
    public bool HasCells => Kinds.ContainsValue("cells");

    /// <summary>How many letters are given: of two forms that fit, the one with more of them says more.</summary>
    public int Letters { get; }

    /// <summary>Whether it begins with a word, not with a gap.</summary>
    public bool BeginsWithWord => _literals[0].Length > 0;

    /// <summary>
    /// The kind of each gap: nothing for a value, <c>words</c>, <c>list</c>, <c>amount</c>, <c>pounds</c> (a number whose unit stands behind a later one),
    /// <c>cells</c> or <c>own</c>.
    /// </summary>
    public Dictionary<string, string> Kinds { get; }

    /// <summary>The form written so.</summary>
    /// <param name="text">The sentence with its gaps.</param>
    public static SentenceForm Of(string text)
    {
        if (Kept.TryGetValue(text, out var kept))
            return kept;
        return Kept.Count < MostKept ? Kept.GetOrAdd(text, key => new SentenceForm(key)) : new SentenceForm(text);
    }

    /// <summary>What stands in the gaps; null where the sentence does not read so.</summary>
    /// <param name="sentence">The sentence.</param>
    public IReadOnlyDictionary<string, string>? Fit(string sentence) =>
        HasLiterals(sentence) && _form.Value.Match(sentence) is { Success: true } match
            ? Kinds.Keys.ToDictionary(name => name, name => match.Groups[name].Value, StringComparer.Ordinal)
            : null;

    /// <summary>What a gap takes: cells hold a place such as <c>week.xlsx/Legs/F7</c>.</summary>
    private static string Pattern(string kind) => kind switch { "amount" => AmountsInText.Amount, "cells" => ".*?/[^/]+/[A-Z]*[0-9].*?", _ => ".*?" };

    /// <summary>Whether the given letters stand in the sentence one after the other: a quick answer for the many forms that do not fit.</summary>
    private bool HasLiterals(string sentence)
    {
        if (!sentence.StartsWith(_literals[0], StringComparison.Ordinal) || !sentence.EndsWith(_literals[^1], StringComparison.Ordinal))
            return false;
        var at = 0;
        foreach (var literal in _literals)
        {
            at = sentence.IndexOf(literal, at, StringComparison.Ordinal);
            if (at < 0)
                return false;
            at += literal.Length;
        }
        return true;
    }

    /// <summary>A text with its gaps filled; a gap without a value stays.</summary>
    /// <param name="text">The text with its gaps.</param>
    /// <param name="values">What stands in them.</param>
    public static string Filled(string text, IReadOnlyDictionary<string, string> values) =>
        Gaps().Replace(text, gap => values.GetValueOrDefault(gap.Groups["name"].Value, gap.Value));

    [GeneratedRegex("""\{(?<name>[a-z]+)(?::(?<kind>words|list|amount|pounds|cells|own))?\}""",
        RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Gaps();
}
