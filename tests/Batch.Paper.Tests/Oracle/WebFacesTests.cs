using Xunit.Abstractions;

namespace Batch.Paper.Tests.Oracle;

/// <summary>A page with the faces of its print inside, in a browser that has none of them.</summary>
public sealed class WebFacesTests(ITestOutputHelper output)
{
    private const string Page = "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>t</title><style>@page{size:A4;margin:10mm}body{font-family:\"Sheet Sans\",\"IBM Plex Sans\",sans-serif;font-size:12pt}b{font-weight:600}</style></head>"
        + "<body><p>AVATAR To 1,240 lb → 3½ Ärger <b>WAVE 0123456789</b> <i>VAT</i> ◇</p></body></html>";

    /// <summary>The measures of the browser's print are those of ours: the letters are there, with their widths and pairs.</summary>
    [SkippableFact]
    public void The_browser_shows_the_letters_of_the_print() => ExternalTool.InFolder(folder =>
    {
        var (chromium, pdftotext, pdffonts) = (Browser.Program, ExternalTool.Find("pdftotext"), ExternalTool.Find("pdffonts"));
        Skip.If(chromium is null || pdftotext is null || pdffonts is null, "chromium or poppler is not installed");
        var printed = new PdfPrinter().Print(Page, new PrintOptions { WithFaces = true });
        var (theirs, ours) = (Path.Combine(folder, "theirs.pdf"), Path.Combine(folder, "ours.pdf"));
        Browser.Bare(chromium, folder, printed.Shown(Page), "--no-pdf-header-footer", "--print-to-pdf=" + theirs);
        Skip.IfNot(File.Exists(theirs), "chromium printed nothing here");
        File.WriteAllBytes(ours, printed.Pdf);
        var fonts = ExternalTool.Run(pdffonts, theirs).Output.Split('\n').Skip(2).Where(line => line.Length > 0).ToArray();
        output.WriteLine(string.Join('\n', fonts) + "\n" + printed.Faces.Length.ToString(System.Globalization.CultureInfo.InvariantCulture)
            + " characters of rules");
        Assert.Equal(4, fonts.Length);
        Assert.All(fonts, line => Assert.Contains("SheetSans", line, StringComparison.Ordinal));
        var (a, b) = (Words(pdftotext, theirs), Words(pdftotext, ours));
        Assert.Equal(b.Select(word => word.Text), a.Select(word => word.Text));
        Assert.All(a.Zip(b), pair => Assert.Equal(pair.Second.Right, pair.First.Right, 0.75));
    });

    /// <summary>The board is not printed; the browser still has its letters, as wide as those of a print.</summary>
    [SkippableFact]
    public void A_page_that_is_not_printed_has_its_letters_too() => ExternalTool.InFolder(folder =>
    {
        var (chromium, pdftotext, pdffonts) = (Browser.Program, ExternalTool.Find("pdftotext"), ExternalTool.Find("pdffonts"));
        Skip.If(chromium is null || pdftotext is null || pdffonts is null, "chromium or poppler is not installed");
        var page = Page.Replace("<i>VAT</i>", "&Auml;ra", StringComparison.Ordinal);
        var (theirs, ours) = (Path.Combine(folder, "theirs.pdf"), Path.Combine(folder, "ours.pdf"));
        Browser.Bare(chromium, folder, new PdfPrinter().WithFaces(page), "--no-pdf-header-footer", "--print-to-pdf=" + theirs);
        Skip.IfNot(File.Exists(theirs), "chromium printed nothing here");
        File.WriteAllBytes(ours, new PdfPrinter().Print(page, new PrintOptions()).Pdf);
        var fonts = ExternalTool.Run(pdffonts, theirs).Output.Split('\n').Skip(2).Where(line => line.Length > 0).ToArray();
        Assert.Equal(3, fonts.Length);
        Assert.All(fonts, line => Assert.Contains("SheetSans", line, StringComparison.Ordinal));
        var (a, b) = (Words(pdftotext, theirs), Words(pdftotext, ours));
        Assert.Equal(b.Select(word => word.Text), a.Select(word => word.Text));
        Assert.All(a.Zip(b), pair => Assert.Equal(pair.Second.Right, pair.First.Right, 0.75));
    });

    [Fact]
    public void A_page_without_head_or_faces_stays_as_it_is()
    {
        Assert.Equal(Page, new PdfPrinter().Print(Page, new PrintOptions()).Shown(Page));
        Assert.Equal("<p>x</p>", new PdfPrinter().Print("<p>x</p>", new PrintOptions { WithFaces = true }).Shown("<p>x</p>"));
    }

    private static (string Text, double Right)[] Words(string pdftotext, string file) =>
    [
        .. ExternalTool.Run(pdftotext, "-bbox", file, "-").Output.Split("<word ").Skip(1)
            .Select(word =>
                (System.Net.WebUtility.HtmlDecode(word[(word.IndexOf('>', StringComparison.Ordinal) + 1)..word.IndexOf("</word>", StringComparison.Ordinal)]),
                    double.Parse(word.Split("xMax=\"")[1].Split('"')[0], System.Globalization.CultureInfo.InvariantCulture))),
    ];
}
