using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Batch.Paper.Pages;
using Batch.Paper.Style;

namespace Batch.Paper.Html;

/// <summary>HTML text to a document tree and its style sheets, within limits of size and depth.</summary>
internal sealed class DocumentReader
{
    /// <summary>Longest document read, in characters; a week of sheets is far below it.</summary>
    public const int MaximumLength = 32 * 1024 * 1024;

    /// <summary>Deepest nesting of elements; layout is recursive.</summary>
    public const int MaximumDepth = 200;

    /// <param name="html">The whole document.</param>
    /// <param name="pageSize">Name of a page size that goes over the document's own, or null.</param>
    public DocumentReader(string html, string? pageSize)
    {
        if (html.Length > MaximumLength) throw new PaperException("html", 1, "the document is longer than " + MaximumLength + " characters");
        Source = new SourceText(html);
        Report = new Report(Source);
        CheckDepth();
        Document = new HtmlParser(new HtmlParserOptions { IsKeepingSourceReferences = true, IsAcceptingCustomElementsEverywhere = true }).ParseDocument(Source.Text);
        var styles = Document.QuerySelectorAll("style").ToList();
        var unheard = new Report(Source);
        var setup = new PageSetup([.. styles.SelectMany(s => StyleSheet.PageRules(s.TextContent, unheard))], pageSize, unheard);
        var page = (setup.ContentWidth, setup.ContentHeight(0));
        Sheet = new StyleSheet(Report, page);
        foreach (var style in styles)
        {
            var holds = MediaQuery.Matches(style.GetAttribute("media") ?? "", page, out var unknown);
            if (unknown is not null) Report.Add(style, "media", "condition not judged: " + unknown);
            if (!holds) continue;
            var open = Source.Text.IndexOf('>', Report.Offset(style)) + 1;
            Sheet.Add(style.TextContent, open, userAgent: false);
        }

        foreach (var link in Document.QuerySelectorAll("link[rel~=stylesheet]")) Report.Add(link, "href", "style sheets outside the document are not read");
    }

    public SourceText Source { get; }

    public Report Report { get; }

    public IHtmlDocument Document { get; }

    public StyleSheet Sheet { get; }

    /// <summary>The tree builder slows down badly on deep nesting, so an estimate of the depth is taken before it runs.</summary>
    private void CheckDepth()
    {
        var (depth, text) = (0, Source.Text);
        for (var i = text.IndexOf('<', StringComparison.Ordinal); i >= 0 && i + 1 < text.Length; i = text.IndexOf('<', i + 1))
        {
            if (text[i + 1] == '/') depth = Math.Max(0, depth - 1);
            else if (char.IsAsciiLetter(text[i + 1]))
            {
                var close = text.IndexOf('>', i);
                var end = i + 2;
                while (end < text.Length && char.IsAsciiLetterOrDigit(text[end])) end++;
                var name = text[(i + 1)..end];
                if (close > 0 && text[close - 1] != '/' && !IsLeftOpen(name)) depth++;
            }

            if (depth > MaximumDepth) throw new PaperException("html", Source.Place(i).Line, "elements are nested deeper than " + MaximumDepth);
        }
    }

    private static bool IsLeftOpen(string name) => name.ToLowerInvariant() is "br" or "hr" or "img" or "meta" or "link" or "col" or "input" or "wbr" or "p" or "li" or "td" or "th" or "tr" or "path"
        or "thead" or "tbody" or "tfoot" or "colgroup" or "source" or "area" or "base" or "embed" or "param" or "track" or "caption" or "dt" or "dd" or "option";
}
