using System.Collections.Concurrent;

namespace Batch.Cli.Pipeline;

/// <summary>The sheets of the run before, while a book is watched: a sheet that says the same is not printed again, and keeps the time at which it was made. Safe to share between threads.</summary>
public sealed class SheetMemo
{
    private readonly ConcurrentDictionary<string, Kept> _sheets = new(StringComparer.Ordinal);

    /// <summary>What was kept of a trip; null where there is nothing.</summary>
    /// <param name="trip">Name of the trip.</param>
    public Kept? Of(string trip) => _sheets.GetValueOrDefault(trip);

    /// <summary>Keeps a sheet for the next run.</summary>
    /// <param name="trip">Name of the trip.</param>
    /// <param name="sheet">The sheet.</param>
    public void Keep(string trip, Kept sheet) => _sheets[trip] = sheet;

    /// <summary>A sheet as it was made.</summary>
    /// <param name="MadeAt">When.</param>
    /// <param name="Html">The page.</param>
    /// <param name="Pdf">Its print; null where none was asked for.</param>
    public sealed record Kept(Instant MadeAt, string Html, byte[]? Pdf);
}
