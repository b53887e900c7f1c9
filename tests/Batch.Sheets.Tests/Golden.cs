using Batch.Testing;

namespace Batch.Sheets.Tests;

/// <summary>Compares a text with the one kept beside the tests; UPDATE_SAMPLES=1 rewrites it, then a person reads the difference.</summary>
internal static class Golden
{
    public static void Matches(string name, string actual)
    {
        var path = RepositoryRoot.PathOf("tests", "Batch.Sheets.Tests", "Golden", name);
        if (Environment.GetEnvironmentVariable("UPDATE_SAMPLES") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path) ?? "");
            File.WriteAllText(path, actual);
        }
        Assert.True(File.Exists(path), $"There is no {name} to compare with; run with UPDATE_SAMPLES=1 and read it.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), actual);
    }
}
