using Batch.Paper.Paint;
using CsCheck;

namespace Batch.Paper.Tests;

/// <summary>Random documents of the promised subset: no crash, no text lost, nothing off the page unreported, an end.</summary>
public sealed class RandomDocumentTests
{
    private static readonly string[] BlockStyles =
    [
        "", "margin:5px 3px", "padding:4px", "border:1px solid red", "break-before:page", "break-after:avoid", "break-inside:avoid", "width:60%", "height:40px",
        "text-align:right", "text-align:justify",
        "background:#eee;border-radius:4px", "line-height:2", "font-size:15px", "white-space:pre-wrap", "display:flex", "display:flex;flex-wrap:wrap;gap:4px",
        "display:grid;grid-template-columns:1fr 2fr;gap:3px",
        "display:grid;grid-template-columns:auto 40px", "max-width:120px", "min-height:30px", "opacity:.5", "orphans:4", "margin:-3px 0",
        "display:inline-block", "border:2px dashed blue;box-sizing:border-box",
        "overflow:hidden", "display:flex;flex-direction:column", "margin:0 auto;width:100px", "letter-spacing:1px", "break-after:page", "widows:3;orphans:3",
        "width:calc(100% - 30px);padding:0 5px", "min-width:50%",
        "display:flex;justify-content:space-between;align-items:center", "display:flex;align-items:flex-end;flex-wrap:wrap",
        "display:grid;grid-template-columns:repeat(3,minmax(0,1fr));gap:2px 5px", "text-indent:12px",
        "text-transform:uppercase", "height:20px;overflow:hidden", "max-height:60px", "margin:20px 0 -10px", "padding:10% 5%", "flex:1 1 0;min-width:0",
        "flex:0 0 40%", "align-self:center", "order:-1", "line-height:11px",
        "white-space:nowrap", "white-space:pre-line", "display:inline-flex;gap:2px", "display:table;border-collapse:collapse",
        "vertical-align:super;font-size:120%", "text-decoration:underline",
        "border-left:3px dotted green;border-radius:8px 2px", "--gap:7px;margin:var(--gap) 2px", "columns:2", "position:absolute", "float:left",
    ];

    private static readonly string[] TableStyles =
    [
        "", "border-collapse:collapse", "width:100%", "table-layout:fixed;width:90%", "border-collapse:collapse;width:100%;break-inside:avoid",
        "border-spacing:6px 2px", "border-collapse:collapse;border:3px solid blue", "width:400px",
        "caption-side:bottom", "margin:0 auto", "break-before:page", "max-width:80px",
    ];

    private static readonly string[] Pages =
    [
        "size:300px 260px;margin:20px;@bottom-left{content:counter(page)}", "size:200px 500px;margin:10px 30px 40px",
        "size:500px 200px;margin:15px;@top-center{content:counter(page) ' of ' counter(pages)}",
        "size:300px 300px;margin:20px} @page :first {margin:60px 20px 20px",
    ];

    /// <summary>So many documents; more by the environment variable RANDOM_DOCUMENTS.</summary>
    private static readonly int Documents =
        int.TryParse(Environment.GetEnvironmentVariable("RANDOM_DOCUMENTS"), System.Globalization.CultureInfo.InvariantCulture, out var wanted) ? wanted : 400;

    private static readonly Gen<string> Words = Gen.Int[1, 999_999].Array[1, 8]
        .Select(n => string.Join(' ', n.Select(i => "w" + i.ToString(System.Globalization.CultureInfo.InvariantCulture))));

    private static readonly Gen<string> Inline = Gen.Select(Words, One("", "b", "i", "sub", "small", "span", "a href='#x'", "code", "u",
        "span style='display:inline-block;padding:3px'", "span style='border:1px solid'", "time", "abbr"))
        .Select((text, tag) => tag.Length == 0 ? text : "<" + tag + ">" + text + "</" + tag.Split(' ')[0] + ">");

    private static readonly Gen<string> Picture = Gen.Int[5, 60].Select(h => "<svg width='50' height='"
        + h.ToString(System.Globalization.CultureInfo.InvariantCulture) + "'><rect width='50' height='9' fill='red'/></svg>");

    [Fact]
    public void Random_documents_are_printed_whole() => Block(2).Array[1, 6].Select(b => string.Concat(b))
        .SelectMany(body => One(Pages).Select(page => (body, page))).Sample(Check, iter: Documents);

    private static void Check((string Body, string Page) document)
    {
        var body = document.Body;
        var html = Printed.Page("@page{" + document.Page + "}body{margin:0;font-size:9px}td,th{border:1px solid #999}", body);
        if (Painted(html) is not { } painted) return;
        var (reader, setup, _, pages) = painted;
        var texts = pages.SelectMany(p => p).OfType<DisplayItem.Text>().ToList();
        var found = texts.SelectMany(t => string.Concat(t.Texts).Split([' ', '\u00A0'], StringSplitOptions.RemoveEmptyEntries))
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        var wanted = System.Text.RegularExpressions.Regex.Matches(body, @"w\d+", System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(5))
            .Select(m => m.Value);
        var lost = wanted.Where(w => !found.Contains(w)).ToList();
        Assert.True(lost.Count == 0, "lost " + string.Join(' ', lost) + "\n" + html);
        Assert.True(pages.Count < 200, "too many pages");
        var off = texts.Where(t => string.Concat(t.Texts).Trim().Length > 0 && (t.Place.E < -1 || t.Place.F < 0)).ToList();
        Assert.True(off.Count == 0, "off the page: " + string.Join(' ', off.Select(t => string.Concat(t.Texts))) + "\n" + html);
        Told(texts.FindAll(t => t.Place.F > setup.Height && string.Concat(t.Texts).Trim().Length > 0), "off the foot");
        Told(texts.FindAll(t => t.Place.E + t.Advances.Sum() > setup.Width + 1 && string.Concat(t.Texts).Trim().Length > 0), "off the right");

        void Told(List<DisplayItem.Text> outside, string where) => Assert.True(outside.Count == 0
            || reader.Report.Found.Any(u => u.Text.Contains(where, StringComparison.Ordinal)),
            where + " and not told: " + string.Join(", ", outside.Select(t => string.Concat(t.Texts) + " at " + t.Place)) + "\n" + html);
    }

    /// <summary>Null when the document rightly stops the print: an inline-block can be higher than these small pages.</summary>
    private static (Html.DocumentReader Reader, Paper.Pages.PageSetup Setup, Paper.Boxes.Fragment Column, List<List<DisplayItem>> Pages)? Painted(string html)
    {
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(20));
        try
        {
            return Printed.Printer.Painted(html, new PrintOptions { CancellationToken = limit.Token });
        }
        catch (OperationCanceledException stopped)
        {
            throw new TimeoutException("no end after 20 s\n" + html, stopped);
        }
        catch (PaperException stopped) when (stopped.Reason.Contains("does not fit on a page", StringComparison.Ordinal)
            && html.Contains("display:inline-", StringComparison.Ordinal))
        {
            return null;
        }
    }

    private static Gen<string> One(params string[] of) => Gen.Int[0, of.Length - 1].Select(i => of[i]);

    private static Gen<string> Block(int depth)
    {
        var paragraph = Gen.Select(One("p", "div", "h2"), One(BlockStyles), Inline.Array[1, 4])
            .Select((tag, style, inner) => Tag(tag, style, string.Join(' ', inner)));
        if (depth == 0) return Gen.OneOf(paragraph, Picture);
        var inside = Block(depth - 1).Array[1, 3].Select(b => string.Concat(b));
        var box = Gen.Select(One("div", "section"), One(BlockStyles), inside).Select(Tag);
        var list = Gen.Select(One("ul", "ol"), inside.Array[1, 3]).Select((tag, items) => Tag(tag, "", string.Concat(items.Select(i => Tag("li", "", i)))));
        var cell = Gen.Select(Gen.Int[1, 2], Gen.Int[1, 2], Gen.OneOf(Inline, inside))
            .Select((columns, rows, inner) => "<td colspan='" + (char)('0' + columns) + "' rowspan='" + (char)('0' + rows) + "'>" + inner + "</td>");
        var row = cell.Array[1, 3].Select(c => "<tr>" + string.Concat(c) + "</tr>");
        var table = Gen.Select(One(TableStyles), One("", "thead", "tfoot", "caption", "columns"), Inline, row.Array[1, 8])
            .Select((style, part, title, rows) => Tag("table", style, part switch
            {
                "thead" or "tfoot" => "<" + part + "><tr><th>" + title + "</th></tr></" + part + ">",
                "caption" => "<caption>" + title + "</caption>",
                "columns" => "<colgroup><col style='width:30px'><col span=2 style='width:20%'></colgroup>",
                _ => "",
            } + "<tbody>" + string.Concat(rows) + "</tbody>"));
        return Gen.Frequency((4, paragraph), (2, box), (1, list), (2, table), (1, Picture));
    }

    private static string Tag(string tag, string style, string inner) =>
        "<" + tag + (style.Length > 0 ? " style='" + style + "'" : "") + ">" + inner + "</" + tag + ">\n";
}
