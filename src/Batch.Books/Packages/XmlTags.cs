namespace Batch.Books.Packages;

/// <summary>
/// Walks the tags of a part with their places, so that a change can be put into the text and every other character of the part stays what it was. The text must
/// be well-formed: <see cref="PartText.Of"/> has seen to it with the library's reader.
/// </summary>
internal static class XmlTags
{
    /// <summary>The next tag; comments, processing instructions and character data are passed over.</summary>
    /// <param name="text">The text.</param>
    /// <param name="from">Index to begin at.</param>
    /// <returns>The tag; null at the end.</returns>
    public static XmlTag? Next(string text, int from)
    {
        for (var start = text.IndexOf('<', from); start >= 0; start = text.IndexOf('<', start))
        {
            if (text.AsSpan(start).StartsWith("<!--")) start = After(text, start, "-->");
            else if (text.AsSpan(start).StartsWith("<![CDATA[")) start = After(text, start, "]]>");
            else if (text[start + 1] == '?') start = After(text, start, "?>");
            else return At(text, start);
        }

        return null;
    }

    /// <summary>The tags of a text in order.</summary>
    /// <param name="text">The text.</param>
    public static IEnumerable<XmlTag> Of(string text)
    {
        for (var tag = Next(text, 0); tag is { } found; tag = Next(text, found.End)) yield return found;
    }

    /// <summary>The root element's tag.</summary>
    /// <param name="text">The text.</param>
    public static XmlTag Root(string text) => Next(text, 0) ?? throw new System.Xml.XmlException("it has no root element");

    /// <summary>The index after the closing tag of an element.</summary>
    /// <param name="text">The text.</param>
    /// <param name="open">The element's opening tag.</param>
    public static XmlTag Close(string text, XmlTag open)
    {
        if (open.IsEmpty) return open;
        var depth = 1;
        for (var tag = Next(text, open.End); tag is { } found; tag = Next(text, found.End))
        {
            if (found.IsEmpty) continue;
            depth += found.IsClose ? -1 : 1;
            if (depth == 0) return found;
        }

        throw new System.Xml.XmlException("an element is not closed");
    }

    private static XmlTag At(string text, int start)
    {
        var close = text[start + 1] == '/';
        var nameStart = start + (close ? 2 : 1);
        var nameEnd = nameStart;
        while (text[nameEnd] is not ('>' or '/') && !char.IsWhiteSpace(text[nameEnd])) nameEnd++;
        var end = nameEnd;
        while (text[end] != '>')
        {
            if (text[end] is '"' or '\'') end = text.IndexOf(text[end], end + 1);
            end++;
        }

        return new XmlTag(start, end + 1, nameStart, nameEnd, close, !close && text[end - 1] == '/');
    }

    private static int After(string text, int start, string mark) => text.IndexOf(mark, start, StringComparison.Ordinal) + mark.Length;
}
