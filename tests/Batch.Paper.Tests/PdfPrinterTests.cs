using System.Text;
using System.Xml.Linq;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Actions;
using UglyToad.PdfPig.Outline;

namespace Batch.Paper.Tests;

public sealed class PdfPrinterTests
{
    private static readonly string Specimen = File.ReadAllText(Batch.Testing.RepositoryRoot.PathOf("tests", "Batch.Paper.Tests", "Specimen", "specimen.html"));

    [Fact]
    public void The_same_document_gives_the_same_bytes()
    {
        var first = Printed.Print(Specimen);
        Assert.Equal(first.Pdf, Printed.Print(Specimen).Pdf);
        Assert.Equal(first.Pdf, new PdfPrinter().Print(Specimen, new PrintOptions()).Pdf);
    }

    [Fact]
    public void Threads_in_parallel_give_the_same_bytes_as_one()
    {
        var documents = Enumerable.Range(0, 12).Select(i => i % 3 == 0
            ? Specimen
            : Printed.Page("p{color:#" + i + i + i + "}", "<p>Document " + i + "</p><table><tr><td>" + i + "</td></tr></table>")).ToArray();
        var alone = documents.Select(d => Printed.Print(d).Pdf).ToArray();
        var together = new byte[documents.Length][];
        Parallel.For(0, documents.Length, new ParallelOptions { MaxDegreeOfParallelism = 4 }, i => together[i] = Printed.Print(documents[i]).Pdf);
        for (var i = 0; i < documents.Length; i++) Assert.Equal(alone[i], together[i]);
    }

    [Fact]
    public void Words_come_back_in_reading_order()
    {
        var printed = Printed.Print(Printed.Page("",
            "<h1>Trip one</h1><p>From <b>here</b> to there.</p><table><tr><td>a</td><td>b</td></tr><tr><td>c</td><td>d</td></tr></table><p>End</p>"));
        Assert.Equal(["Trip", "one", "From", "here", "to", "there.", "a", "b", "c", "d", "End"], Printed.Words(printed)[0]);
    }

    [Fact]
    public void The_page_is_as_large_as_the_paper()
    {
        using var a4 = Printed.Read(Printed.Print("<p>x</p>"));
        Assert.Equal((595.276, 841.89), (a4.GetPage(1).Width, a4.GetPage(1).Height));
        using var letter = Printed.Read(Printed.Print(Printed.Page("@page{size:A4 landscape}", "x"), new PrintOptions { PageSize = "Letter" }));
        Assert.Equal((792, 612), (letter.GetPage(1).Width, letter.GetPage(1).Height));
        Assert.Throws<ArgumentException>(() => Printed.Print("x", new PrintOptions { PageSize = "A0000" }));
    }

    [Fact]
    public void Links_lead_outside_and_inside()
    {
        var printed = Printed.Print(Printed.Page("",
            "<p><a href='https://charter.example/x?a=1&amp;b=2'>out</a> <a href='#there'>in</a></p><p id='there' style='break-before:page'>there</p>"));
        using var pdf = Printed.Read(printed);
        var links = pdf.GetPage(1).GetAnnotations().ToList();
        Assert.Equal(2, links.Count);
        Assert.Equal("https://charter.example/x?a=1&b=2", Assert.IsType<UriAction>(links[0].Action).Uri);
        Assert.Equal(2, Assert.IsType<GoToAction>(links[1].Action ?? new GoToAction(new UglyToad.PdfPig.Outline.Destinations.ExplicitDestination(2, default,
            UglyToad.PdfPig.Outline.Destinations.ExplicitDestinationCoordinates.Empty))).Destination.PageNumber);
        Assert.Empty(printed.Unsupported);
    }

    [Fact]
    public void A_link_to_nowhere_is_reported_at_its_line()
    {
        var found = Assert.Single(Printed.Print("<p>\n<a href='#gone'>x</a></p>").Unsupported);
        Assert.Equal(("a", "href", 2), (found.Tag, found.Property, found.Line));
    }

    [Fact]
    public void Headings_become_nested_bookmarks()
    {
        var printed = Printed.Print(Printed.Page("h1{break-before:page}", "<h1>One</h1><h2>One a</h2><h3>One a i</h3><h2>One b</h2><h1>Two</h1>"));
        using var pdf = Printed.Read(printed);
        Assert.True(pdf.TryGetBookmarks(out var bookmarks));
        var all = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(n => (n.Title, n.Level, n.PageNumber)).ToList();
        Assert.Equal([("One", 0, 1), ("One a", 1, 1), ("One a i", 2, 1), ("One b", 1, 1), ("Two", 0, 2)], all);
    }

    [Fact]
    public void Metadata_tell_title_author_language_and_date()
    {
        var html = "<html lang='de'><head><title>Fuel &amp; weight &lt;3</title><meta name='author' content='Example &amp; Sons'></head><body>x</body></html>";
        var printed = Printed.Print(html, new PrintOptions { MadeAt = new DateTimeOffset(2031, 5, 6, 7, 8, 9, TimeSpan.FromHours(2)) });
        using var pdf = Printed.Read(printed);
        Assert.Equal("Fuel & weight <3", pdf.Information.Title);
        Assert.Equal("Example & Sons", pdf.Information.Author);
        Assert.StartsWith("D:20310506050809", pdf.Information.CreationDate, StringComparison.Ordinal);
        Assert.True(pdf.TryGetXmpMetadata(out var metadata));
        var xmp = XDocument.Parse(Encoding.UTF8.GetString(metadata.GetXmlBytes()).TrimStart('\uFEFF'));
        Assert.Contains("Fuel & weight <3", xmp.Descendants().Select(e => e.Value));
        Assert.Contains("2031-05-06T05:08:09Z", xmp.Descendants().Select(e => e.Value));
        Assert.Contains("/Lang", Encoding.Latin1.GetString(printed.Pdf), StringComparison.Ordinal);
    }

    [Fact]
    public void A_password_closes_the_file_and_hides_the_title()
    {
        var printed = Printed.Print("<title>Secret trip</title><p>inside</p>", new PrintOptions { Password = "letmein" });
        Assert.ThrowsAny<Exception>(() => PdfDocument.Open(printed.Pdf));
        using var pdf = PdfDocument.Open(printed.Pdf, new ParsingOptions { Password = "letmein" });
        Assert.Equal(["inside"], Printed.Words(pdf.GetPage(1)));
        Assert.DoesNotContain("Secret", Encoding.Latin1.GetString(printed.Pdf), StringComparison.Ordinal);
    }

    [Fact]
    public void A_cancelled_token_stops_the_print()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() => Printed.Print(Specimen, new PrintOptions { CancellationToken = source.Token }));
    }

    [Fact]
    public void Pictures_come_from_the_caller_or_leave_their_text()
    {
        byte[] png = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");
        var printed = Printed.Print("<p><img src='a.png' width='20' height='20'><img src='b.png' alt='missing'></p>",
            new PrintOptions { Images = s => s == "a.png" ? png : null });
        using var pdf = Printed.Read(printed);
        Assert.Single(pdf.GetPage(1).GetImages());
        Assert.Equal(["missing"], Printed.Words(pdf.GetPage(1)));
        Assert.Equal("src", Assert.Single(printed.Unsupported).Property);
    }

    [Fact]
    public void The_specimen_is_printed_without_a_complaint() => Assert.Empty(Printed.Print(Specimen).Unsupported);

    [Theory]
    [InlineData("")]
    [InlineData("plain text only")]
    [InlineData("<table></table><ul></ul><svg></svg>")]
    [InlineData("<style>p{</style><p>x")]
    [InlineData("<p style='width:calc(1px +)'>x</p><p style='color'>y</p>")]
    [InlineData("<style>@page{margin:}</style>x<div style='display:flex'></div><div style='display:grid'></div>")]
    public void Poor_documents_print_at_least_one_page(string html) => Assert.True(Printed.Print(html).Pages >= 1);

    [Theory]
    [InlineData("<div>", "</div>", 190)]
    [InlineData("<div style='display:flex'>", "</div>", 60)]
    [InlineData("<table><tr><td>", "</td></tr></table>", 60)]
    [InlineData("<ul><li>", "</ul>", 90)]
    [InlineData("<b>", "</b>", 190)]
    public void Deep_nesting_is_printed(string open, string close, int depth)
    {
        var html = string.Concat(Enumerable.Repeat(open, depth)) + "deep" + string.Concat(Enumerable.Repeat(close, depth));
        Assert.Contains("deep", Printed.DisplayList(html, new PrintOptions()), StringComparison.Ordinal);
    }

    [Fact]
    public void Nesting_without_end_is_refused_at_once()
    {
        var refused = Assert.Throws<PaperException>(() => Printed.Print(string.Concat(Enumerable.Repeat("<div>", 100_000))));
        Assert.Contains("nested deeper", refused.Message, StringComparison.Ordinal);
    }
}
