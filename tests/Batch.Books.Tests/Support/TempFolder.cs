namespace Batch.Books.Tests.Support;

/// <summary>A folder of its own for one test, removed afterwards.</summary>
internal sealed class TempFolder : IDisposable
{
    private readonly string _path = Directory.CreateTempSubdirectory("books-").FullName;

    public string File(string name) => Path.Combine(_path, name);

    public void Dispose() => Directory.Delete(_path, recursive: true);
}
