using AngleSharp.Dom;
using Batch.Paper.Html;

namespace Batch.Paper.Boxes;

/// <summary>The promised elements and attributes; others are reported, and their text is printed all the same.</summary>
internal static class KnownElements
{
    private static readonly HashSet<string> Promised =
    [
        "html", "body", "div", "section", "article", "header", "footer", "main", "nav", "aside", "p", "h1", "h2", "h3", "h4", "h5", "h6", "ul", "ol", "li", "table", "caption", "colgroup", "col", "thead",
        "tbody", "tfoot", "tr", "th", "td", "span", "b", "strong", "i", "em", "small", "sub", "sup", "br", "hr", "a", "figure", "figcaption", "img", "svg", "u", "s", "pre", "code", "dl", "dt", "dd",
        "blockquote", "wbr", "time", "address", "abbr",
    ];

    private static readonly HashSet<string> OldAttributes = ["align", "valign", "bgcolor", "cellpadding", "cellspacing", "border", "nowrap", "background"];

    public static void Check(IElement element, Report report)
    {
        if (!Promised.Contains(element.LocalName)) report.Add(element, "", "element not supported; its text is printed as it stands");
        foreach (var attribute in element.Attributes.Where(a => OldAttributes.Contains(a.LocalName) || (a.LocalName is "width" or "height" && element.LocalName is not ("img" or "svg"))))
            report.Add(element, attribute.LocalName, "attribute not supported; use a style");
    }
}
