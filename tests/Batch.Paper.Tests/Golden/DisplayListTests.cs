using Batch.Testing;

namespace Batch.Paper.Tests.Golden;

/// <summary>Small documents and what is painted for them, line by line. UPDATE_SAMPLES=1 rewrites the lists; then a person reads the difference.</summary>
public sealed class DisplayListTests
{
    public static TheoryData<string> Documents => [.. Directory.GetFiles(RepositoryRoot.PathOf("tests", "Batch.Paper.Tests", "Golden"), "*.html")
        .Order(StringComparer.Ordinal).Select(f => Path.GetFileNameWithoutExtension(f))];

    [Theory]
    [MemberData(nameof(Documents))]
    public void The_display_list_is_the_one_kept(string name)
    {
        var path = RepositoryRoot.PathOf("tests", "Batch.Paper.Tests", "Golden", name);
        var actual = Printed.DisplayList(File.ReadAllText(path + ".html"), new PrintOptions());
        if (Environment.GetEnvironmentVariable("UPDATE_SAMPLES") == "1") File.WriteAllText(path + ".txt", actual);
        Assert.Equal(File.ReadAllText(path + ".txt").ReplaceLineEndings("\n"), actual);
    }
}
