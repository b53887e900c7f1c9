namespace Batch.Post.Tests;

/// <summary>A folder that goes with the test.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly string _path = Directory.CreateTempSubdirectory("tripbatch-post-").FullName;

    public string File(string name) => Path.Combine(_path, name);

    public void Dispose() => Directory.Delete(_path, recursive: true);
}
