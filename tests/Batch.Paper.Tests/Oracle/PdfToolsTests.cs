using Batch.Testing;

namespace Batch.Paper.Tests.Oracle;

/// <summary>The specimen, the trip sheet and the week board before other people's readers: qpdf and poppler.</summary>
public sealed class PdfToolsTests
{
    private static readonly string Specimen = Html("Batch.Paper.Tests/Specimen/specimen.html");

    public static TheoryData<string> Documents =>
        ["Batch.Paper.Tests/Specimen/specimen.html", "Batch.Sheets.Tests/Golden/T101.html", "Batch.Sheets.Tests/Golden/index.html"];

    [SkippableTheory]
    [MemberData(nameof(Documents))]
    public void Qpdf_warns_of_nothing(string name) => ExternalTool.InFolder(folder =>
    {
        var qpdf = ExternalTool.Find("qpdf");
        Skip.If(qpdf is null, "qpdf is not installed");
        var file = Path.Combine(folder, "sheet.pdf");
        File.WriteAllBytes(file, Printed.Print(Html(name)).Pdf);
        var (code, output) = ExternalTool.Run(qpdf, "--check", file);
        Assert.True(code == 0 && !output.Contains("WARNING", StringComparison.Ordinal), output);
    });

    [SkippableTheory]
    [MemberData(nameof(Documents))]
    public void No_face_of_a_sheet_is_foreign_whole_or_without_its_letters(string name) => ExternalTool.InFolder(folder =>
    {
        var pdffonts = ExternalTool.Find("pdffonts");
        Skip.If(pdffonts is null, "pdffonts is not installed");
        var file = Path.Combine(folder, "sheet.pdf");
        File.WriteAllBytes(file, Printed.Print(Html(name)).Pdf);
        var faces = ExternalTool.Run(pdffonts, file).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToList();
        Assert.NotEmpty(faces);
        Assert.All(faces, f => Assert.Matches(@"^[A-Z]{6}\+(IBMPlexSans|DejaVuSans)\S*\s+CID TrueType\s+Identity-H\s+yes yes yes", f));
    });

    [SkippableTheory]
    [MemberData(nameof(Documents))]
    public void Poppler_reads_what_was_written_in_its_order(string name) => ExternalTool.InFolder(folder =>
    {
        var pdftotext = ExternalTool.Find("pdftotext");
        Skip.If(pdftotext is null, "pdftotext is not installed");
        var (file, printed) = (Path.Combine(folder, "sheet.pdf"), Printed.Print(Html(name)));
        File.WriteAllBytes(file, printed.Pdf);
        Assert.Equal(Letters(string.Concat(Printed.Words(printed).SelectMany(w => w))),
            Letters(ExternalTool.Run(pdftotext, "-raw", "-enc", "UTF-8", file, "-").Output));
    });

    [SkippableFact]
    public void Poppler_draws_every_page_without_a_complaint() => ExternalTool.InFolder(folder =>
    {
        var pdftoppm = ExternalTool.Find("pdftoppm");
        Skip.If(pdftoppm is null, "pdftoppm is not installed");
        var file = Path.Combine(folder, "specimen.pdf");
        File.WriteAllBytes(file, Printed.Print(Specimen).Pdf);
        var (code, output) = ExternalTool.Run(pdftoppm, "-r", "20", "-png", file, Path.Combine(folder, "page"));
        Assert.Equal((0, ""), (code, output));
    });

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
        File.WriteAllBytes(file, Printed.Print(
            Printed.Page("", "<h1>Trip one</h1><p>Žluťoučký kůň, Ωμέγα, Київ ✓ ▲</p><ul><li>first</li><li>second</li></ul><p>last AVATAR words</p>")).Pdf);
        var text = ExternalTool.Run(pdftotext, "-raw", file, "-").Output;
        Assert.Equal("Trip one Žluťoučký kůň, Ωμέγα, Київ ✓ ▲ first second last AVATAR words",
            string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
    });

    private static string Html(string name) => File.ReadAllText(RepositoryRoot.PathOf(["tests", .. name.Split('/')]));

    private static string Letters(string text) =>
        string.Concat(text.Normalize(System.Text.NormalizationForm.FormKC).Where(c => !char.IsWhiteSpace(c) && !char.IsControl(c)));
}
