using System.Net;
using System.Text.RegularExpressions;

namespace Batch.Paper.Tests.Oracle;

/// <summary>No sheet is wider than the screen of a phone or a tablet; what is wider within it is scrolled in its own box.</summary>
public sealed class PhoneTests
{
    /// <summary>The page writes how far it can be moved sideways, and what sticks out.</summary>
    private const string Script = """
        <script>addEventListener('load', () => {
          const page = document.getElementById('screen').contentDocument, width = page.documentElement.clientWidth, said = document.createElement('pre');
          said.textContent = `wide ${page.documentElement.scrollWidth} of ${width}: ` + [...page.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > width + 1).map(e => e.tagName + ' ' + e.textContent.trim().slice(0, 30).replace(/\s+/g, ' ')).slice(0, 12).join('; ') + ' end';
          document.body.append(said);
        });</script>
        """;

    public static TheoryData<string, int> Screens
    {
        get
        {
            var data = new TheoryData<string, int>();
            foreach (var page in new[] { "T101", "T101-metric", "T101-german", "packet-ANA", "loads-XAND", "loads-XAND-german", "mail-2", "index", "values" })
            {
                data.Add(page, 390);
                data.Add(page, 820);
            }

            return data;
        }
    }

    [SkippableTheory]
    [MemberData(nameof(Screens))]
    public void A_sheet_is_no_wider_than_the_screen(string page, int width) => ExternalTool.InFolder(folder =>
    {
        Skip.If(Browser.Program is null, "chromium is not installed");
        var sheet = Browser.Document("Batch.Sheets.Tests/Golden/" + page + ".html").Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("\"", "&quot;", StringComparison.Ordinal);
        var html = FormattableString.Invariant($"<!DOCTYPE html><html><head></head><body><iframe id=\"screen\" style=\"width:{width}px;height:800px;border:0\" srcdoc=\"{sheet}\"></iframe>{Script}</body></html>");
        var said = WebUtility.HtmlDecode(
            Browser.Run(Browser.Program, folder, html, "", "--window-size=1000,900", "--hide-scrollbars", "--virtual-time-budget=20000", "--dump-dom"));
        var found = Regex.Match(said, @"<pre>wide (?<wide>\d+) of (?<width>\d+): (?<what>.*?) end", RegexOptions.ExplicitCapture | RegexOptions.Singleline,
            TimeSpan.FromSeconds(20));
        Assert.True(found.Success, "the browser said nothing");
        Assert.True(found.Groups["width"].Value == found.Groups["wide"].Value, found.Value);
    });
}
