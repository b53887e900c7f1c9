namespace Batch.Cli.Pipeline;

/// <summary>
/// The folder that receives a run, written beside its place and swapped in whole: until <see cref="Commit"/> the last good run stands untouched, and a run that
/// breaks off leaves it so.
/// </summary>
public sealed class OutputFolder : IDisposable
{
    private const string RecordName = "run.json";

    private readonly string _place;
    private readonly string _old;
    private readonly string _work;
    private readonly ImmutableDictionary<string, byte[]>.Builder _files = ImmutableDictionary.CreateBuilder<string, byte[]>(StringComparer.Ordinal);
    private bool _isCommitted;

    /// <summary>Prepares to write.</summary>
    /// <param name="place">Where the finished folder is to stand.</param>
    /// <exception cref="InputException">Something that is not an earlier run stands there.</exception>
    public OutputFolder(string place)
    {
        _place = Path.TrimEndingDirectorySeparator(Path.GetFullPath(place));
        _old = _place + ".old";
        Restore();
        if (File.Exists(_place)) throw new InputException($"{place} is a file; --out names a folder.");
        if (Directory.Exists(_place) && Directory.EnumerateFileSystemEntries(_place).Any() && !File.Exists(Path.Combine(_place, RecordName)))
            throw new InputException($"{place} holds files that are not an earlier run; name another folder with --out, or empty it.");
        _work = _place + ".new";
        if (Directory.Exists(_work)) Directory.Delete(_work, recursive: true);
        Directory.CreateDirectory(_work);
    }

    /// <summary>What was written, by path inside the folder.</summary>
    public ImmutableDictionary<string, byte[]> Files => _files.ToImmutable();

    /// <summary>Writes a file.</summary>
    /// <param name="name">Path inside the folder, with forward slashes.</param>
    /// <param name="content">Content.</param>
    public void Write(string name, byte[] content)
    {
        File.WriteAllBytes(PathOf(name), content);
        _files[name] = content;
    }

    /// <summary>Writes a file piece by piece.</summary>
    /// <param name="name">Path inside the folder, with forward slashes.</param>
    /// <param name="content">Writes the content.</param>
    public void Write(string name, Action<Stream> content)
    {
        var path = PathOf(name);
        using (var file = File.Create(path)) content(file);
        _files[name] = File.ReadAllBytes(path);
    }

    /// <summary>A file of the run that stands there; null where it has none.</summary>
    /// <param name="name">Path inside the folder, with forward slashes.</param>
    public byte[]? Before(string name)
    {
        var path = Path.Combine(_place, name.Replace('/', Path.DirectorySeparatorChar));
        return File.Exists(path) ? File.ReadAllBytes(path) : null;
    }

    private string PathOf(string name)
    {
        var path = Path.Combine(_work, name.Replace('/', Path.DirectorySeparatorChar));
        Directory.CreateDirectory(Path.GetDirectoryName(path) ?? _work);
        return path;
    }

    /// <summary>Swaps the finished folder into its place.</summary>
    public void Commit()
    {
        if (Directory.Exists(_place)) Directory.Move(_place, _old);
        Directory.Move(_work, _place);
        _isCommitted = true;
        if (Directory.Exists(_old)) Directory.Delete(_old, recursive: true);
    }

    /// <summary>Removes what was written when the run did not come to its end.</summary>
    public void Dispose()
    {
        if (!_isCommitted && Directory.Exists(_work)) Directory.Delete(_work, recursive: true);
        if (!_isCommitted) Restore();
    }

    /// <summary>A run killed between the two moves leaves the last good run under its old name: put it back.</summary>
    private void Restore()
    {
        if (!Directory.Exists(_old)) return;
        if (Directory.Exists(_place)) Directory.Delete(_old, recursive: true);
        else Directory.Move(_old, _place);
    }
}
