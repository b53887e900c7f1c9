using Batch.Testing;

namespace Batch.Paper.Tests.Oracle;

/// <summary>The specimen's PDF before other people's readers: qpdf and poppler.</summary>
public sealed class PdfToolsTests
{
    private static readonly string Specimen = File.ReadAllText(RepositoryRoot.PathOf("tests", "Batch.Paper.Tests", "Specimen", "specimen.html"));

    [SkippableTheory]
    [InlineData(null)]
    [InlineData("open sesame")]
    public void Qpdf_finds_nothing_wrong(string? password) => ExternalTool.InFolder(folder =>
    {
        var qpdf = ExternalTool.Find("qpdf");
        Skip.If(qpdf is null, "qpdf is not installed");
        var file = Path.Combine(folder, "specimen.pdf");
        File.WriteAllBytes(file, Printed.Print(Specimen, new PrintOptions { Password = password }).Pdf);
        var (code, output) = ExternalTool.Run(qpdf, "--check", "--password=" + password, file);
        Assert.True(code == 0, output);
        Assert.Contains(password is null ? "File is not encrypted" : "AESv3", output, StringComparison.Ordinal);
    });

    [SkippableFact]
    public void Every_face_is_embedded_as_a_subset_with_a_way_back_to_text() => ExternalTool.InFolder(folder =>
    {
        var pdffonts = ExternalTool.Find("pdffonts");
        Skip.If(pdffonts is null, "pdffonts is not installed");
        var file = Path.Combine(folder, "specimen.pdf");
        File.WriteAllBytes(file, Printed.Print(Specimen).Pdf);
        var faces = ExternalTool.Run(pdffonts, file).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToList();
        Assert.Equal(6, faces.Count);
        Assert.All(faces, f => Assert.Matches(@"^[A-Z]{6}\+\S+\s+CID TrueType\s+Identity-H\s+yes yes yes", f));
    });

    [SkippableFact]
    public void Pdftotext_reads_the_words_in_order() => ExternalTool.InFolder(folder =>
    {
        var pdftotext = ExternalTool.Find("pdftotext");
        Skip.If(pdftotext is null, "pdftotext is not installed");
        var file = Path.Combine(folder, "order.pdf");
        File.WriteAllBytes(file, Printed.Print(Printed.Page("", "<h1>Trip one</h1><p>Žluťoučký kůň, Ωμέγα, Київ ✓ ▲</p><ul><li>first</li><li>second</li></ul><p>last AVATAR words</p>")).Pdf);
        var text = ExternalTool.Run(pdftotext, "-raw", file, "-").Output;
        Assert.Equal("Trip one Žluťoučký kůň, Ωμέγα, Київ ✓ ▲ first second last AVATAR words", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
    });
}
