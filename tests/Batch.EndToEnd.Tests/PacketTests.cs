using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;

namespace Batch.EndToEnd.Tests;

/// <summary>The packets and load sheets of the sample week.</summary>
public sealed class PacketTests(SampleRun sample) : IClassFixture<SampleRun>
{
    private static readonly string[] Names = ["Ostrelle", "Valdike", "Murrowin", "Fenwarden", "Kestlin", "Oakmarsh", "Drostandel", "Corrowby", "Merrowdun"];

    private string[] Files(string folder, string ending) =>
        [.. Directory.EnumerateFiles(Path.Combine(sample.Folder, folder), "*" + ending).Select(file => Path.GetFileName(file)).Order(StringComparer.Ordinal)];

    [Fact]
    public void Everybody_who_flies_has_a_packet_in_html_and_pdf()
    {
        Assert.Equal(["KAI.pdf", "RIM.pdf", "SOR.pdf", "TES.pdf", "ULR.pdf", "VAR.pdf", "WEN.pdf", "YLA.pdf", "ZAN.pdf"], Files("packets", ".pdf"));
        Assert.Equal(9, Files("packets", ".html").Length);
        Assert.Contains("9 crew packets in packets, 37 load sheets in loads.", sample.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_page_number_of_the_contents_is_the_page_on_which_the_trip_or_leg_begins()
    {
        var checkedLines = 0;
        foreach (var file in Files("packets", ".pdf"))
        {
            using var pdf = PdfDocument.Open(Path.Combine(sample.Folder, "packets", file));
            string[] pages = [.. pdf.GetPages().Select(page => string.Join(' ', page.GetWords().Select(word => word.Text)))];
            foreach (var (text, page) in Contents(sample.Text("packets/" + Path.ChangeExtension(file, ".html"))))
            {
                Assert.InRange(page, 2, pages.Length);
                Assert.Contains(text, pages[page - 1], StringComparison.Ordinal);
                checkedLines++;
            }
        }

        Assert.InRange(checkedLines, 60, int.MaxValue);
    }

    [Fact]
    public void Bookmarks_lead_to_trips_and_in_them_to_legs()
    {
        using var pdf = PdfDocument.Open(Path.Combine(sample.Folder, "packets", "RIM.pdf"));
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        Assert.Equal(["Crew packet: Rima Ostrelle", "Trip T101", "Trip T107"], bookmarks.Roots.Select(root => root.Title));
        Assert.Contains("XAND → XBEL", bookmarks.Roots[1].Children.Select(child => child.Title));
        Assert.All(bookmarks.GetNodes().OfType<DocumentBookmarkNode>(), node => Assert.InRange(node.PageNumber, 1, pdf.NumberOfPages));
    }

    [Fact]
    public void Links_of_the_contents_lead_into_the_packet()
    {
        using var pdf = PdfDocument.Open(Path.Combine(sample.Folder, "packets", "RIM.pdf"));
        Assert.Equal(14, pdf.GetPage(1).GetAnnotations().Count());
    }

    [Fact]
    public void No_load_sheet_names_a_person()
    {
        var manifest = File.ReadLines(Batch.Testing.RepositoryRoot.PathOf("input-samples", "csv", "week", "Manifest.csv")).Skip(2)
            .Select(line => line.Split(',')[2].Split(' ')[^1]).Where(name => name.Length > 3).Distinct(StringComparer.Ordinal).ToArray();
        Assert.InRange(manifest.Length, 20, int.MaxValue);
        foreach (var file in Files("loads", ".html"))
        {
            var words = Regex.Matches(sample.Text("loads/" + file), @"\p{L}+", RegexOptions.None, TimeSpan.FromSeconds(5)).Select(match => match.Value)
                .ToHashSet(StringComparer.Ordinal);
            Assert.All(Names.Concat(manifest), name => Assert.DoesNotContain(name, words));
        }
    }

    [Fact]
    public void Without_pdf_there_are_packets_without_page_numbers()
    {
        using var folder = new TemporaryFolder();
        SampleRun.Run("run", Batch.Testing.RepositoryRoot.PathOf("input-samples"), "--out", folder.Path, "--no-pdf", "--only", "T101", "--made-at",
            SampleRun.MadeAt);
        Assert.DoesNotContain(folder.Files(), file => file.EndsWith(".pdf", StringComparison.Ordinal));
        Assert.DoesNotContain(">Page<", File.ReadAllText(Path.Combine(folder.Path, "packets", "RIM.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void Page_numbers_hold_also_with_a_template_that_begins_elsewhere()
    {
        using var folder = new TemporaryFolder();
        var templates = Directory.CreateDirectory(Path.Combine(folder.Path, "templates")).FullName;
        var cover = Sheets.TemplateFolder.Shipped.Text("crew-packet.html") ?? "";
        File.WriteAllText(Path.Combine(templates, "crew-packet.html"),
            cover.Replace("{{~ for sheet in trips ~}}", "{{~ for sheet in trips ~}}\n<p class=\"new-page\">Notes</p>", StringComparison.Ordinal));
        var into = Path.Combine(folder.Path, "out");
        SampleRun.Run("run", Batch.Testing.RepositoryRoot.PathOf("input-samples"), "--out", into, "--templates", templates, "--only", "T101,T107", "--made-at",
            SampleRun.MadeAt);
        using var pdf = PdfDocument.Open(Path.Combine(into, "packets", "RIM.pdf"));
        var lines = Contents(File.ReadAllText(Path.Combine(into, "packets", "RIM.html"))).ToArray();
        Assert.Equal(7, lines.Length);
        Assert.All(lines,
            line => Assert.Contains(line.Text, string.Join(' ', pdf.GetPage(line.Page).GetWords().Select(word => word.Text)), StringComparison.Ordinal));
    }

    /// <summary>Lines of the contents: words that stand where they lead, and the page.</summary>
    private static IEnumerable<(string Text, int Page)> Contents(string html)
    {
        foreach (Match trip in Regex.Matches(html, """<span class="strong">(?<trip>Trip \S+)</span></a>.*?>(?<page>\d+)</a></td></tr>""",
            RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(5)))
            yield return (trip.Groups["trip"].Value, Number(trip.Groups["page"].Value));
        foreach (Match leg in Regex.Matches(html,
            """>(?<trip>[A-Z]\d+)/(?<leg>\d+)</a></td>.*?<td class="n page"><a href="#[^"]*">(?<page>\d+)</a></td>\s*</tr>""",
            RegexOptions.ExplicitCapture | RegexOptions.Singleline, TimeSpan.FromSeconds(5)))
            yield return ($"Trip {leg.Groups["trip"].Value}, leg {leg.Groups["leg"].Value}", Number(leg.Groups["page"].Value));
    }

    private static int Number(string text) => int.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
