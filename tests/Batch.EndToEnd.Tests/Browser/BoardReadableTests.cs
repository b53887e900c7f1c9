using PuppeteerSharp;
using UglyToad.PdfPig;

namespace Batch.EndToEnd.Tests.Browser;

/// <summary>The week board without scripts, on paper, and for those who do not see it as drawn.</summary>
public sealed class BoardReadableTests(BrowserFixture browser) : IClassFixture<BrowserFixture>
{
    [SkippableTheory]
    [InlineData(1440, 900)]
    [InlineData(390, 844)]
    public async Task With_scripts_off_everything_is_shown_and_links_lead_to_their_legs(int width, int height)
    {
        await using var board = await browser.Page(width, height, hasScript: false);
        await board.Open("#leg=T130/1");
        Assert.Equal((0, 0), (await board.Seen("#filters"), await board.Seen("#detail")));
        Assert.Equal(BrowserFixture.Planned, await board.Seen("[data-line=aircraft] .bar"));
        Assert.True(await board.Seen("[data-line=crew] .bar") > BrowserFixture.Planned);
        Assert.Equal(BrowserFixture.Legs, await board.Seen("table.legs tr[id]"));
        Assert.Equal("T130/1", await board.Ask<string>("document.querySelector(':target').dataset.key"));
        Assert.InRange(await board.Ask<double>("document.querySelector(':target').getBoundingClientRect().top"), 0, height);
        await board.Page.ClickAsync(".finding a[href='#leg=T106/1']");
        Assert.Equal("T106/1", await board.Ask<string>("document.querySelector(':target').dataset.key"));
        Assert.Equal(0, await board.Ask<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth"));
    }

    [SkippableFact]
    public async Task Printed_it_holds_both_lines_every_finding_and_every_leg_and_no_buttons()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open("#leg=T106/1");
        var text = Text(await board.Page.PdfDataAsync(new PdfOptions { PreferCSSPageSize = true }), out var size);
        Assert.True(size.Width > size.Height);
        Assert.All(["Q-BRA", "KAI", "T106/1", "T131/2", "ALT-02", "Mon 7 Dec"], part => Assert.Contains(part, text, StringComparison.Ordinal));
        Assert.DoesNotContain("Show all", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Trip sheet", text, StringComparison.Ordinal);
    }

    [SkippableFact]
    public async Task Printed_with_a_filter_it_says_so()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open();
        var whole = Text(await board.Page.PdfDataAsync(new PdfOptions { PreferCSSPageSize = true }), out _);
        await board.Open("#state=fail");
        var text = Text(await board.Page.PdfDataAsync(new PdfOptions { PreferCSSPageSize = true }), out _);
        Assert.Contains("not every leg is shown", text, StringComparison.Ordinal);
        Assert.DoesNotContain("not every leg is shown", whole, StringComparison.Ordinal);
        Assert.InRange(Times(text, "T103/1"), 0, Times(whole, "T103/1") - 1);
    }

    [SkippableTheory]
    [InlineData("light")]
    [InlineData("dark")]
    public async Task Text_has_a_contrast_of_four_and_a_half(string scheme)
    {
        await using var board = await browser.Page(1440, 900);
        await board.Page.EmulateMediaFeaturesAsync([new MediaFeatureValue { MediaFeature = MediaFeature.PrefersColorScheme, Value = scheme }]);
        await board.Open();
        foreach (var press in Enumerable.Range(0, 6)) await board.Page.Keyboard.PressAsync(press < 5 ? "+" : "ArrowRight");
        Assert.Empty(await board.Ask<string[]>(Contrast));
    }

    [SkippableFact]
    public async Task Headings_are_in_order_tables_have_headers_and_everything_to_press_has_a_name()
    {
        await using var board = await browser.Page(1440, 900);
        await board.Open("#leg=T106/1");
        var levels = await board.Ask<int[]>("[...document.querySelectorAll('main h2, main h3, h1')].map(one => Number(one.tagName[1]))");
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Zip(levels.Skip(1)), pair => Assert.True(pair.Second <= pair.First + 1));
        Assert.Equal(0, await board.Ask<int>("[...document.querySelectorAll('table')].filter(table => !table.querySelector('th[scope]')).length"));
        Assert.Equal(0, await board.Ask<int>("[...document.querySelectorAll('th')].filter(head => !head.scope || !head.textContent.trim()).length"));
        Assert.Empty(await board.Ask<string[]>("[...document.querySelectorAll('a, button, select, input')].filter(one => !(one.textContent.trim() || one.getAttribute('aria-label') || one.closest('label')?.textContent.trim())).map(one => one.outerHTML)"));
        Assert.Equal(0, await board.Ask<int>("(ids => ids.length - new Set(ids).size)([...document.querySelectorAll('[id]')].map(one => one.id))"));
    }

    /// <summary>Every text that is seen, against the nearest ground under it; formula of WCAG 2.2, relative luminance and contrast ratio.</summary>
    private const string Contrast = """
        (() => {
          const parts = colour => colour.match(/[\d.]+/g).map(Number);
          const light = colour => { const [r, g, b] = parts(colour).map(part => (part /= 255) <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
          const ground = one => { for (let at = one; at; at = at.parentElement) { const back = getComputedStyle(at).backgroundColor; if ((parts(back)[3] ?? 1) > 0.5) return back; } return 'rgb(255, 255, 255)'; };
          const poor = new Set();
          const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          for (let node = walk.nextNode(); node; node = walk.nextNode()) {
            const one = node.parentElement;
            if (!node.textContent.trim() || !one.checkVisibility() || one.closest('script, style, svg, option')) continue;
            const [a, b] = [light(getComputedStyle(one).color), light(ground(one))].sort((x, y) => y - x);
            const ratio = (a + 0.05) / (b + 0.05);
            if (ratio < 4.5) poor.add(`${one.tagName}.${one.className} ${ratio.toFixed(2)} ${node.textContent.trim().slice(0, 20)}`);
          }
          return [...poor];
        })()
        """;

    private static int Times(string text, string part) => text.Split(part).Length - 1;

    private static string Text(byte[] bytes, out (double Width, double Height) size)
    {
        using var pdf = PdfDocument.Open(bytes);
        size = (pdf.GetPage(1).Width, pdf.GetPage(1).Height);
        return string.Join(' ', pdf.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
    }
}
