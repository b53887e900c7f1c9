using System.Globalization;
using Batch.Paper;
using Batch.Testing;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;

namespace Batch.Benchmarks;

/// <summary>Trip sheets of three pages to PDF, a week's worth at once, against a browser that is already running and prints the same HTML. Times and bytes are those of one sheet.</summary>
[MemoryDiagnoser]
[SimpleJob(RunStrategy.Monitoring, launchCount: 1, warmupCount: 1, iterationCount: 5)]
public class PaperBenchmarks : IDisposable
{
    private const int Sheets = 300;

    /// <summary>The browser prints fewer, for it takes its time; the first ones are not counted.</summary>
    private const int BrowserSheets = 20;

    private readonly string[] _html = [.. Enumerable.Range(0, Sheets).Select(Sheet)];
    private readonly PdfPrinter _printer = new();
    private WarmBrowser? _browser;

    /// <summary>Starts the browser for the benchmark that needs it.</summary>
    [GlobalSetup(Target = nameof(Browser))]
    public void Start() => _browser = new WarmBrowser();

    /// <summary>Ends it, and says how large its sheets are.</summary>
    [GlobalCleanup(Target = nameof(Browser))]
    public void Stop()
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"// browser: {_browser?.Print(_html[0]).Length ?? 0} bytes a sheet"));
        Dispose();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _browser?.Dispose();
        _browser = null;
        GC.SuppressFinalize(this);
    }

    /// <summary>Says how large our sheets are, and the most memory the process ever held.</summary>
    [GlobalCleanup(Targets = [nameof(OneThread), nameof(TwoThreads)])]
    public void Tell()
    {
        var sheet = _printer.Print(_html[0], new PrintOptions());
        using var process = System.Diagnostics.Process.GetCurrentProcess();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"// printer: {sheet.Pages} pages, {sheet.Pdf.Length} bytes a sheet; the process held at most {process.PeakWorkingSet64 / 1048576} MB"));
    }

    /// <summary>Chromium, warm, one page after the other.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = BrowserSheets)]
    public long Browser()
    {
        var browser = _browser ?? throw new InvalidOperationException("The browser was not started.");
        return _html.Take(BrowserSheets).Sum(html => (long)browser.Print(html).Length);
    }

    /// <summary>The printer on one thread.</summary>
    [Benchmark(OperationsPerInvoke = Sheets)]
    public long OneThread() => _html.Sum(html => (long)_printer.Print(html, new PrintOptions()).Pdf.Length);

    /// <summary>The printer on two threads.</summary>
    [Benchmark(OperationsPerInvoke = Sheets)]
    public long TwoThreads()
    {
        long bytes = 0;
        Parallel.ForEach(_html, new ParallelOptions { MaxDegreeOfParallelism = 2 }, html => Interlocked.Add(ref bytes, _printer.Print(html, new PrintOptions()).Pdf.Length));
        return bytes;
    }

    /// <summary>The pages of one leg of the sample's trip sheet, each time with another number so that no two sheets are the same.</summary>
    private static string Sheet(int number)
    {
        var parts = File.ReadAllText(RepositoryRoot.PathOf("tests", "Batch.Sheets.Tests", "Golden", "T101.html")).Split("<section class=\"new-page\">");
        var head = parts[0][..parts[0].IndexOf("<body", StringComparison.Ordinal)];
        return (head + "<body><section>" + parts[1] + "</body></html>").Replace("T101", "S" + number.ToString(CultureInfo.InvariantCulture), StringComparison.Ordinal);
    }
}
