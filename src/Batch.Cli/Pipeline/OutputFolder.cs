using System.Diagnostics;
using Batch.Sheets;

namespace Batch.Cli.Pipeline;

/// <summary>
/// The folder that receives a run, written beside its place and swapped in whole: until <see cref="Commit"/> the last good run stands untouched, and a run that
/// breaks off leaves it so. What else stands in the folder, such as a book of the user's own or a signed sheet, is taken along.
/// </summary>
public sealed class OutputFolder : IDisposable
{
    private readonly string _asGiven;
    private readonly string _place;
    private readonly string _old;
    private readonly string _work;
    private readonly FileStream _lock;
    private readonly ImmutableDictionary<string, byte[]>.Builder _files = ImmutableDictionary.CreateBuilder<string, byte[]>(StringComparer.Ordinal);
    private bool _isCommitted;

    /// <summary>Prepares to write.</summary>
    /// <param name="place">Where the finished folder is to stand.</param>
    /// <param name="patience">How long to wait for another run that writes there; null for half a minute.</param>
    /// <param name="cancel">Stops the waiting.</param>
    /// <exception cref="InputException">Something that is not an earlier run stands there, it cannot be
    /// written, another run is writing there, or it is the folder the user is in.</exception>
    public OutputFolder(string place, TimeSpan? patience = null, CancellationToken cancel = default)
    {
        if (string.IsNullOrWhiteSpace(place)) throw new InputException("--out: the name of a folder was expected, such as out.");
        _asGiven = place;
        _place = Target(Path.TrimEndingDirectorySeparator(Path.GetFullPath(place)));
        _old = _place + ".tripbatch-old";
        _work = _place + ".tripbatch-new";
        if (IsCurrent()) throw new InputException(
            $"{place} is the folder you are in, and a run replaces its folder whole; name one inside it, such as --out {Path.Combine(place, "out")}.");
        _lock = Locked(patience ?? TimeSpan.FromSeconds(30), cancel);
        var isPrepared = false;
        try
        {
            Prepare();
            isPrepared = true;
        }
        finally
        {
            if (!isPrepared) _lock.Dispose();
        }
    }

    private void Prepare()
    {
        Written(Restore);
        if (File.Exists(_place)) throw new InputException($"{_asGiven} is a file; --out names a folder.");
        if (Directory.Exists(_place) && Directory.EnumerateFileSystemEntries(_place).Any() && !File.Exists(Path.Combine(_place, SheetPaths.Record)))
            throw new InputException($"{_asGiven} holds files that are not an earlier run; name another folder with --out, or empty it.");
        Written(() =>
        {
            if (Directory.Exists(_work)) Directory.Delete(_work, recursive: true);
            Directory.CreateDirectory(_work);
        });
    }

    /// <summary>The folder that a link names, so that the link stays and what it names receives the run.</summary>
    private string Target(string place)
    {
        var target = place;
        Written(() => target = new DirectoryInfo(place) is { LinkTarget: not null } link
            ? link.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? place
            : place);
        return Path.TrimEndingDirectorySeparator(target);
    }

    /// <summary>
    /// Two runs at a time would write into one working folder, and the first that is done would take half of the other's sheets along. The system frees the
    /// lock of a run that is killed.
    /// </summary>
    private FileStream Locked(TimeSpan patience, CancellationToken cancel)
    {
        var path = _place + ".tripbatch-lock";
        Written(() => Directory.CreateDirectory(Path.GetDirectoryName(path) ?? path));
        for (var waited = Stopwatch.StartNew(); ;)
        {
            try
            {
                return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (IOException) when (File.Exists(path) && waited.Elapsed < patience)
            {
                if (cancel.WaitHandle.WaitOne(TimeSpan.FromMilliseconds(100))) throw new OperationCanceledException(cancel);
            }
            catch (IOException error) when (File.Exists(path))
            {
                throw new InputException($"another run is writing to {_asGiven}; run again when it has ended.", error);
            }
            catch (Exception error) when (error is IOException or UnauthorizedAccessException)
            {
                throw NotWritten(error);
            }
        }
    }

    /// <summary>What was written, by path inside the folder.</summary>
    public ImmutableDictionary<string, byte[]> Files => _files.ToImmutable();

    /// <summary>Writes a file.</summary>
    /// <param name="name">Path inside the folder, with forward slashes.</param>
    /// <param name="content">Content.</param>
    /// <exception cref="InputException">It cannot be written.</exception>
    public void Write(string name, byte[] content)
    {
        Written(() => File.WriteAllBytes(PathOf(name), content));
        _files[name] = content;
    }

    /// <summary>Writes a file piece by piece.</summary>
    /// <param name="name">Path inside the folder, with forward slashes.</param>
    /// <param name="content">Writes the content.</param>
    /// <exception cref="InputException">It cannot be written.</exception>
    public void Write(string name, Action<Stream> content)
    {
        Written(() =>
        {
            var path = PathOf(name);
            using (var file = File.Create(path)) content(file);
            _files[name] = File.ReadAllBytes(path);
        });
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
    /// <param name="books">The books of the run; those that stand in the folder stay there.</param>
    /// <exception cref="InputException">It cannot be written.</exception>
    public void Commit(params IEnumerable<string> books) => Written(() =>
    {
        OwnFiles.Note(_work, _files.Keys);
        if (Directory.Exists(_place)) Directory.Move(_place, _old);
        Directory.Move(_work, _place);
        _isCommitted = true;
        if (!Directory.Exists(_old)) return;
        foreach (var book in books.Select(book => Path.GetRelativePath(_place, Path.GetFullPath(book)))
            .Where(book => Path.GetFileName(book) == book && !Path.Exists(Path.Combine(_place, book)))) Take(book);
        LeaveOld();
    });

    /// <summary>Removes what was written when the run did not come to its end.</summary>
    public void Dispose()
    {
        try
        {
            if (!_isCommitted && Directory.Exists(_work)) Directory.Delete(_work, recursive: true);
            if (!_isCommitted) Restore();
        }
        finally
        {
            _lock.Dispose();
        }
    }

    /// <summary>A run killed between the two moves leaves the last good run under its old name: put it back.</summary>
    private void Restore()
    {
        if (!Directory.Exists(_old)) return;
        if (Directory.Exists(_place)) LeaveOld();
        else Directory.Move(_old, _place);
    }

    /// <summary>Takes what is the user's own along from the folder before, then removes it.</summary>
    private void LeaveOld()
    {
        foreach (var entry in new OwnFiles(_old).Others().ToArray()) Take(entry);
        Directory.Delete(_old, recursive: true);
    }

    private void Take(string name)
    {
        var (from, to) = (Path.Combine(_old, name), Path.Combine(_place, name));
        Directory.CreateDirectory(Path.GetDirectoryName(to) ?? _place);
        if (new DirectoryInfo(from) is { Exists: true, LinkTarget: null } && Directory.Exists(to))
        {
            // The run wrote a folder where only the user had one.
            foreach (var entry in Directory.EnumerateFileSystemEntries(from)) Take(Path.Combine(name, Path.GetFileName(entry)));
            return;
        }

        to = Free(to);
        if (Directory.Exists(from)) Directory.Move(from, to);
        else if (File.Exists(from)) File.Move(from, to);
        // A link that names what is not there just now.
        else if (new FileInfo(from).LinkTarget is { } target) File.CreateSymbolicLink(to, target);
    }

    /// <summary>A path that is free: where the run wrote a file under the name of the user's, the user's is called <c>T101 (yours).pdf</c>.</summary>
    private static string Free(string path)
    {
        var (folder, name, ending) = (Path.GetDirectoryName(path) ?? "", Path.GetFileNameWithoutExtension(path), Path.GetExtension(path));
        while (Path.Exists(path)) path = Path.Combine(folder, (name += " (yours)") + ending);
        return path;
    }

    private bool IsCurrent()
    {
        var current = Path.TrimEndingDirectorySeparator(Path.GetFullPath("."));
        return current == _place || current.StartsWith(_place + Path.DirectorySeparatorChar, StringComparison.Ordinal);
    }

    private void Written(Action write)
    {
        try
        {
            write();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw NotWritten(error);
        }
    }

    private InputException NotWritten(Exception error) => new(
        $"{_asGiven} cannot be written: {error.Message.TrimEnd('.')}. "
            + (_isCommitted ? $"The new run stands there; what else was in the folder stands in {_old}." : "The last finished run stands as it was."),
        error);
}
