namespace Batch.Books.Packages;

/// <summary>The place of one tag in the text of a part.</summary>
/// <param name="Start">Index of its <c>&lt;</c>.</param>
/// <param name="End">Index after its <c>&gt;</c>.</param>
/// <param name="NameStart">Index of its name.</param>
/// <param name="NameEnd">Index after its name.</param>
/// <param name="IsClose">Whether it is a closing tag.</param>
/// <param name="IsEmpty">Whether it is a whole element without content.</param>
internal readonly record struct XmlTag(int Start, int End, int NameStart, int NameEnd, bool IsClose, bool IsEmpty)
{
    /// <summary>Whether it has a name, prefix included.</summary>
    /// <param name="text">The text it stands in.</param>
    /// <param name="name">The name.</param>
    public bool Is(string text, string name) => text.AsSpan(NameStart, NameEnd - NameStart).SequenceEqual(name);

    /// <summary>The name without prefix.</summary>
    /// <param name="text">The text it stands in.</param>
    public string LocalName(string text)
    {
        var name = text[NameStart..NameEnd];
        return name[(name.IndexOf(':', StringComparison.Ordinal) + 1)..];
    }

    /// <summary>The range of an attribute's value, without quotes; null where it has none.</summary>
    /// <param name="text">The text it stands in.</param>
    /// <param name="name">The attribute's name, prefix included.</param>
    public Range? ValueRange(string text, string name)
    {
        var at = NameEnd;
        while (at < End)
        {
            while (at < End && char.IsWhiteSpace(text[at])) at++;
            var start = at;
            while (at < End && text[at] is not ('=' or '>' or '/') && !char.IsWhiteSpace(text[at])) at++;
            if (at == start) return null;
            var found = text.AsSpan(start, at - start).SequenceEqual(name);
            while (at < End && text[at] is not ('"' or '\'')) at++;
            var close = text.IndexOf(text[at], at + 1);
            if (found) return (at + 1)..close;
            at = close + 1;
        }

        return null;
    }

    /// <summary>The value of an attribute, its references undone where they are the five of XML; null where it has none.</summary>
    /// <param name="text">The text it stands in.</param>
    /// <param name="name">The attribute's name, prefix included.</param>
    public string? Value(string text, string name) => ValueRange(text, name) is not { } range ? null
        : !text[range].Contains('&', StringComparison.Ordinal) ? text[range]
        : text[range].Replace("&lt;", "<", StringComparison.Ordinal).Replace("&gt;", ">", StringComparison.Ordinal)
            .Replace("&quot;", "\"", StringComparison.Ordinal)
            .Replace("&apos;", "'", StringComparison.Ordinal).Replace("&amp;", "&", StringComparison.Ordinal);
}
