using Batch.Testing;
using UglyToad.PdfPig;

namespace Batch.EndToEnd.Tests;

/// <summary>What stands in <c>output-samples/</c> is what the sample gives. UPDATE_SAMPLES=1 writes it anew; then a person reads the difference.</summary>
public sealed class OutputSamplesTests(SampleRun sample) : IClassFixture<SampleRun>
{
    private static readonly string Samples = RepositoryRoot.PathOf("output-samples");

    /// <summary>Pictures and the page that explains them are made by hand from the outputs.</summary>
    private static readonly string[] Beside = ["README.md", ".png"];

    /// <summary>Of packets and load sheets one each is kept: they repeat what the trip sheets hold.</summary>
    private static readonly string[] KeptOfMany = ["packets/KAI.", "loads/XAND-2026-12-08."];

    /// <summary>The trip that is printed with the example templates too.</summary>
    private const string ExampleTrip = "T102";

    [Fact]
    public void The_output_samples_are_what_the_sample_gives()
    {
        PrintExamples();
        var fresh = Files(sample.Folder).Where(IsKept).ToArray();
        if (Environment.GetEnvironmentVariable("UPDATE_SAMPLES") == "1") Update(fresh);
        Assert.Equal(fresh, Files(Samples).Where(file => !Beside.Any(end => file.EndsWith(end, StringComparison.Ordinal))));
        foreach (var file in fresh)
        {
            if (file.EndsWith(".pdf", StringComparison.Ordinal)) Assert.Equal(Pages(Path.Combine(Samples, file)), Pages(Path.Combine(sample.Folder, file)));
            else Assert.True(File.ReadAllBytes(Path.Combine(Samples, file)).AsSpan().SequenceEqual(sample.Bytes(file)), $"{file} differs from output-samples.");
        }
    }

    private void PrintExamples()
    {
        using var folder = new TemporaryFolder();
        foreach (var templates in Directory.EnumerateDirectories(RepositoryRoot.PathOf("templates", "examples")).Order(StringComparer.Ordinal))
        {
            var name = Path.GetFileName(templates);
            var into = Path.Combine(folder.Path, name);
            Assert.InRange(SampleRun.Run("run", RepositoryRoot.PathOf("input-samples"), "--out", into, "--made-at", SampleRun.MadeAt, "--only", ExampleTrip,
                "--templates", templates).Status, 0, 1);
            Directory.CreateDirectory(Path.Combine(sample.Folder, "examples", name));
            foreach (var sheet in Directory.EnumerateFiles(Path.Combine(into, "sheets")))
                File.Copy(sheet, Path.Combine(sample.Folder, "examples", name, Path.GetFileName(sheet)));
        }
    }

    private void Update(string[] fresh)
    {
        foreach (var old in Files(Samples).Where(file => !Beside.Any(end => file.EndsWith(end, StringComparison.Ordinal))))
            File.Delete(Path.Combine(Samples, old));
        foreach (var file in fresh)
        {
            var to = Path.Combine(Samples, file);
            Directory.CreateDirectory(Path.GetDirectoryName(to) ?? Samples);
            File.Copy(Path.Combine(sample.Folder, file), to);
        }
    }

    private static bool IsKept(string file) => file != ".tripbatch-files" && !(file.StartsWith("packets/", StringComparison.Ordinal)
        || file.StartsWith("loads/", StringComparison.Ordinal)) || KeptOfMany.Any(kept => file.StartsWith(kept, StringComparison.Ordinal));

    private static string[] Pages(string path)
    {
        using var pdf = PdfDocument.Open(path);
        return [.. pdf.GetPages().Select(page => string.Join(' ', page.GetWords().Select(word => word.Text)))];
    }

    private static string[] Files(string folder) => Directory.Exists(folder)
        ? [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/'))
            .Order(StringComparer.Ordinal)]
        : [];
}
