using System.Collections.Concurrent;
using Batch.Paper;

namespace Batch.Cli.Pipeline;

/// <summary>
/// The sheets of the run before, while a book is watched: a sheet that says the same is not printed again, and keeps the time at which it was made. Safe to
/// share between threads.
/// </summary>
public sealed class SheetMemo
{
    private readonly ConcurrentDictionary<string, Kept> _sheets = new(StringComparer.Ordinal);

    /// <summary>What was kept of a sheet; null where there is nothing.</summary>
    /// <param name="path">Path of the sheet in the folder of the run, without its ending.</param>
    public Kept? Of(string path) => _sheets.GetValueOrDefault(path);

    /// <summary>Keeps a sheet for the next run.</summary>
    /// <param name="path">Path of the sheet in the folder of the run, without its ending.</param>
    /// <param name="sheet">The sheet.</param>
    public void Keep(string path, Kept sheet) => _sheets[path] = sheet;

    /// <summary>A sheet as it was made.</summary>
    /// <param name="MadeAt">When.</param>
    /// <param name="Html">The page.</param>
    /// <param name="Printed">Its print; null where none was asked for.</param>
    public sealed record Kept(Instant MadeAt, string Html, PrintedDocument? Printed);
}
