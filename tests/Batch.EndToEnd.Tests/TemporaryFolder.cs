namespace Batch.EndToEnd.Tests;

/// <summary>A folder that goes with the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = System.IO.Path.Combine(System.IO.Path.GetTempPath(), "tripbatch-test-" + System.IO.Path.GetRandomFileName());

    /// <summary>Files below the folder by relative path, in order, but for the list that a run keeps of its own.</summary>
    public string[] Files() =>
    [
        .. Directory.EnumerateFiles(Path, "*", SearchOption.AllDirectories).Select(file => System.IO.Path.GetRelativePath(Path, file).Replace('\\', '/'))
            .Where(file => !file.EndsWith(".tripbatch-files", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
    ];

    public void Dispose()
    {
        if (Directory.Exists(Path)) Directory.Delete(Path, recursive: true);
    }
}
