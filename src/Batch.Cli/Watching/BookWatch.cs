using System.Collections.Frozen;
using System.Diagnostics;
using System.Globalization;
using Batch.Checks;
using Batch.Cli.Pipeline;
using Batch.Sheets;

namespace Batch.Cli.Watching;

/// <summary>Runs again whenever a book or a template was saved.</summary>
/// <param name="options">What to run; the time printed as made at is the clock's of each run unless one is given.</param>
/// <param name="madeAt">The instant printed as made at; null for the clock's.</param>
/// <param name="clock">The clock.</param>
/// <param name="show">Receives every run that is to be served.</param>
/// <param name="say">Receives one line a run.</param>
/// <param name="showing">Does some work and shows its progress; for the first run, which takes longest.</param>
internal sealed class BookWatch(RunOptions options, Instant? madeAt, IClock clock, Action<ServedRun> show, Action<string> say,
    Func<Func<IProgress<RunProgress>, RunReport>, RunReport> showing)
{
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan Settled = TimeSpan.FromMilliseconds(400);
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);
    private const int MostListed = 4;
    private static readonly IProgress<RunProgress> Silent = new NoProgress();

    private readonly SheetMemo _sheets = new();
    private readonly WeekMemo _weeks = new();
    private CheckedWeek? _week;
    private ServedRun _served = ServedRun.None;

    /// <summary>Watches until it is stopped.</summary>
    /// <param name="cancel">Stops it.</param>
    public void Watch(CancellationToken cancel)
    {
        string[] paths = options.Templates is { } templates ? [.. options.Books, templates] : [.. options.Books];
        string done;
        do
        {
            done = Calm(paths, cancel);
            Run(paths, ref done, cancel);
            while (FileStamps.Of(paths) == done) Wait(Look, cancel);
        }
        while (!cancel.IsCancellationRequested);
    }

    /// <summary>Waits until nothing was saved for a moment, and gives the stamp of what stands then.</summary>
    private static string Calm(string[] paths, CancellationToken cancel)
    {
        for (var before = FileStamps.Of(paths); ;)
        {
            Wait(Settled, cancel);
            var now = FileStamps.Of(paths);
            if (now == before) return now;
            before = now;
        }
    }

    /// <summary>One run. A book that cannot be read may be half written: it is tried again for two seconds before anything is said.</summary>
    private void Run(string[] paths, ref string done, CancellationToken cancel)
    {
        var clockwork = Stopwatch.StartNew();
        while (true)
        {
            var run = Stopwatch.StartNew();
            try
            {
                var now = options with
                {
                    Memo = _sheets,
                    WeekMemo = _weeks,
                    MadeAt = madeAt ?? Instant.FromUnixTimeSeconds(clock.GetCurrentInstant().ToUnixTimeSeconds())
                };
                Good(_week is null ? showing(progress => WeekRun.Run(now, progress, cancel)) : WeekRun.Run(now, Silent, cancel), run.Elapsed);
                return;
            }
            catch (Exception error) when (error is InputException or IOException or UnauthorizedAccessException)
            {
                var isSavedAgain = FileStamps.Of(paths) != done;
                if (!isSavedAgain && clockwork.Elapsed >= Patience)
                {
                    Bad(error.Message);
                    return;
                }
            }

            done = Calm(paths, cancel);
        }
    }

    private void Good(RunReport report, TimeSpan took)
    {
        var week = report.Week.Week;
        var files = report.Files;
        var isBoardMade = !report.NotWritten.Contains(SheetPaths.Board);
        var trouble = report.TemplateProblems.IsEmpty
            ? ""
            : "A template cannot be used: " + Listed(report.TemplateProblems, "; ") + (isBoardMade ? "" : "\nThis is the last good board.");
        if (!isBoardMade && _served.Files.TryGetValue(SheetPaths.Board, out var last)) files = files.SetItem(SheetPaths.Board, last);
        Serve(files.ToFrozenDictionary(StringComparer.Ordinal), trouble);
        var changed = _week is { } before ? "  " + StateChanges.Of(before, week) + "." : "";
        var wrong = trouble.Length == 0 ? "" : "  " + trouble.Split('\n')[0];
        var faults = report.Week.Faults.IsEmpty
            ? ""
            : "  A fault of the program at " + report.Week.Faults[0].Subject + ", please report it: " + report.Week.Faults[0].Error.Message;
        var missing = report.NotWritten.IsEmpty ? "" : "  Not written: " + Listed(report.NotWritten, ", ") + ".";
        say(string.Create(CultureInfo.InvariantCulture, $"{LegCounts.Of(week)} ({took.TotalSeconds:0.0} s).{changed}{wrong}{faults}{missing}"));
        _week = week;
    }

    /// <summary>As many as one line has room for.</summary>
    private static string Listed<T>(ImmutableArray<T> all, string separator) =>
        string.Join(separator, all.Take(MostListed))
            + (all.Length > MostListed ? string.Create(CultureInfo.InvariantCulture, $" and {all.Length - MostListed} more") : "");

    private void Bad(string why)
    {
        Serve(_served.Files, "The book as it was saved cannot be used: " + why + (_served.Files.Count > 0 ? "\nThis is the last good board." : ""));
        say("cannot be used: " + why + (_served.Files.Count > 0 ? "  The last good board stands." : ""));
    }

    private void Serve(FrozenDictionary<string, byte[]> files, string trouble)
    {
        _served = new ServedRun(_served.Number + 1, files, trouble);
        show(_served);
    }

    private static void Wait(TimeSpan time, CancellationToken cancel)
    {
        if (cancel.WaitHandle.WaitOne(time)) throw new OperationCanceledException(cancel);
    }

    private sealed class NoProgress : IProgress<RunProgress>
    {
        public void Report(RunProgress value)
        {
            // One line a run is all that is said.
        }
    }
}
