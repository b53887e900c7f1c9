using System.Diagnostics;
using System.Globalization;
using Batch.Paper;

namespace Batch.Benchmarks;

/// <summary>
/// The printer against a browser that is already running, on the same HTML in the same minute: in every round each prints the same sheets, so that other work
/// on the machine meets all alike.
/// </summary>
internal static class PaperRace
{
    private const int Rounds = 20;
    private const int SheetsARound = ThreePageSheets.Count / Rounds;

    /// <summary>Runs the rounds and prints medians and spreads.</summary>
    public static void Run()
    {
        var sheets = ThreePageSheets.Of(ThreePageSheets.Count);
        var printer = new PdfPrinter();
        ThreePageSheets.Print(printer, sheets, threads: 2);
        var after = PeakMegabytes();
        for (var i = 0; i < 3; i++) ThreePageSheets.Print(printer, sheets, threads: 2);
        Say($"the process held at most {after} MB after {ThreePageSheets.Count} sheets on 2 threads, {PeakMegabytes()} MB after four times as many");
        using var browser = new WarmBrowser();
        foreach (var sheet in sheets.Take(5)) browser.Print(sheet);
        var (theirs, one, two) = (new double[Rounds], new double[Rounds], new double[Rounds]);
        var (theirBytes, ourBytes, processor) = (0L, 0L, TimeSpan.Zero);
        for (var round = 0; round < Rounds; round++)
        {
            var now = sheets.Skip(round * SheetsARound).Take(SheetsARound).ToList();
            theirs[round] = Milliseconds(() => theirBytes += now.Sum(sheet => (long)browser.Print(sheet).Length));
            var before = Process.GetCurrentProcess().TotalProcessorTime;
            one[round] = Milliseconds(() => ourBytes += ThreePageSheets.Print(printer, now, threads: 1));
            processor += Process.GetCurrentProcess().TotalProcessorTime - before;
            two[round] = Milliseconds(() => ThreePageSheets.Print(printer, now, threads: 2));
        }

        Say($"{ThreePageSheets.Count} sheets of three pages in {Rounds} rounds; median of the rounds, least to most, ms a sheet");
        Say($"browser            {Spread(theirs)}, {theirBytes / ThreePageSheets.Count} bytes");
        Say($"printer, 1 thread  {Spread(one)}, {ourBytes / ThreePageSheets.Count} bytes, {processor.TotalMilliseconds / ThreePageSheets.Count:0.0} ms of processor time");
        Say($"printer, 2 threads {Spread(two)}");
        Say($"times faster than the browser: 1 thread {Spread(theirs.Zip(one, (a, b) => a / b))}; 2 threads {Spread(theirs.Zip(two, (a, b) => a / b))}; 2 threads over 1: {Spread(one.Zip(two, (a, b) => a / b))}");
    }

    private static double Milliseconds(Action work)
    {
        var clock = Stopwatch.StartNew();
        work();
        return clock.Elapsed.TotalMilliseconds / SheetsARound;
    }

    private static string Spread(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return string.Create(CultureInfo.InvariantCulture,
            $"{(sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2:0.0} ({sorted[0]:0.0} to {sorted[^1]:0.0})");
    }

    private static long PeakMegabytes()
    {
        using var process = Process.GetCurrentProcess();
        return process.PeakWorkingSet64 / 1048576;
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
