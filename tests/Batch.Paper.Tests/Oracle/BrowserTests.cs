using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using Xunit.Abstractions;

namespace Batch.Paper.Tests.Oracle;

/// <summary>The same document printed by Chromium with the same faces: number of pages, words of each page, place of each word.</summary>
/// <remarks>
/// Told to the browser beside the document, because the printer promises more than browsers do: headings stay with what follows, rows are kept whole, no
/// ligatures. Running titles are left out, which it has not. Tolerance of places, pt: 0.75 across at the left edge of a word, which long lines add up to, and 2
/// at its right edge, so that the edges of left-aligned and right-aligned columns are measured; 1.0 down (browsers round each line to whole px, 0.75 pt, from
/// sums of 1/64 px that differ by a few). The trip sheet has 3.25 down, because Chromium 156 does not align the baselines of table cells on paper, as CSS 2.2,
/// section 17.5.3, asks: cells of 9 pt beside 11.5 pt lie up to 3 pt higher there.
/// </remarks>
public sealed class BrowserTests(ITestOutputHelper output)
{
    private const string Extra = "h1,h2,h3,h4,h5,h6{break-after:avoid;break-inside:avoid}tr{break-inside:avoid}";

    [SkippableTheory]
    [InlineData("Batch.Paper.Tests/Specimen/specimen.html", 1.0)]
    [InlineData("Batch.Sheets.Tests/Golden/T101.html", 3.25)]
    [InlineData("Batch.Sheets.Tests/Golden/T101-metric.html", 3.25)]
    [InlineData("Batch.Sheets.Tests/Golden/T101-german.html", 3.25)]
    [InlineData("Batch.Paper.Tests/Specimen/chips-and-tables.html", 1.0)]
    [InlineData("Batch.Sheets.Tests/Golden/packet-ANA.html", 3.25)]
    [InlineData("Batch.Sheets.Tests/Golden/loads-XAND.html", 3.25)]
    [InlineData("Batch.Sheets.Tests/Golden/loads-XAND-german.html", 3.25)]
    [InlineData("Batch.Sheets.Tests/Golden/values.html", 3.25)]
    public void Pages_words_and_places_agree_with_the_browser(string name, double down) => ExternalTool.InFolder(folder =>
    {
        var (chromium, pdftotext) = (Browser.Program, ExternalTool.Find("pdftotext"));
        Skip.If(chromium is null || pdftotext is null, "chromium or pdftotext is not installed");
        var html = Browser.Document(name);
        var (theirs, ours) = (Path.Combine(folder, "theirs.pdf"), Path.Combine(folder, "ours.pdf"));
        Browser.Run(chromium, folder, html, Extra, "--no-pdf-header-footer", "--print-to-pdf=" + theirs);
        Skip.IfNot(File.Exists(theirs), "chromium printed nothing here");
        File.WriteAllBytes(ours, Printed.Print(html).Pdf);
        output.WriteLine(name + ": " + Compare(Words(pdftotext, theirs), Words(pdftotext, ours), down));
    });

    /// <summary>Fails when a word is missing, in excess or out of place; gives the spread measured.</summary>
    private static string Compare(List<List<Word>> theirs, List<List<Word>> ours, double down)
    {
        Assert.Equal(theirs.Count, ours.Count);
        var (faults, spread) = (new List<string>(), new List<(double Across, double Right, double Down)>());
        for (var page = 0; page < theirs.Count; page++)
        {
            var open = ours[page].ToList();
            foreach (var word in theirs[page])
            {
                var match = open.Where(w => w.Text == word.Text).OrderBy(w => Math.Abs(w.X - word.X) + Math.Abs(w.Y - word.Y)).FirstOrDefault();
                if (match is null) faults.Add("page " + (page + 1) + " lacks " + word);
                else
                {
                    open.Remove(match);
                    spread.Add((Math.Abs(match.X - word.X), Math.Abs(match.Right - word.Right), Math.Abs(match.Y - word.Y)));
                    if (Math.Abs(match.X - word.X) > 0.75 || Math.Abs(match.Right - word.Right) > 2 || Math.Abs(match.Y - word.Y) > down)
                        faults.Add("page " + (page + 1) + " " + word + " is at " + match);
                }
            }

            faults.AddRange(open.Select(w => "page " + (page + 1) + " has in excess " + w));
        }

        Assert.True(faults.Count == 0, faults.Count + " words differ:\n" + string.Join('\n', faults.Take(20)));
        return string.Create(CultureInfo.InvariantCulture,
            $"{ours.Count} pages, {spread.Count} words; across median {Median(spread.Select(s => s.Across)):0.00}, largest {spread.Max(s => s.Across):0.00} pt, at the right edge {spread.Max(s => s.Right):0.00} pt; down median {Median(spread.Select(s => s.Down)):0.00}, largest {spread.Max(s => s.Down):0.00} pt");
    }

    private static double Median(IEnumerable<double> values) => values.Order().ToList() is var sorted ? sorted[sorted.Count / 2] : 0;

    private static List<List<Word>> Words(string pdftotext, string file)
    {
        var boxes = ExternalTool.Run(pdftotext, "-bbox", file, "-").Output;
        return [.. boxes.Split("<page ").Skip(1)
            .Select(page => Regex.Matches(page, """<word xMin="(?<x>[\d.-]+)" yMin="(?<y>[\d.-]+)" xMax="(?<right>[\d.-]+)" [^>]*>(?<text>.*?)</word>""",
                RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(20))
            .Select(m => new Word(Number(m.Groups["x"].Value), Number(m.Groups["right"].Value), Number(m.Groups["y"].Value),
                WebUtility.HtmlDecode(m.Groups["text"].Value).Replace("\u00AD", "", StringComparison.Ordinal).Normalize())).ToList())];
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private sealed record Word(double X, double Right, double Y, string Text);
}
