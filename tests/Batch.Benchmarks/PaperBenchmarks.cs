using Batch.Paper;
using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;

namespace Batch.Benchmarks;

/// <summary>
/// Trip sheets of three pages to PDF, a week's worth at once. Times and bytes are those of one sheet. Against a browser: <see cref="PaperRace"/>.
/// </summary>
[MemoryDiagnoser]
[SimpleJob(RunStrategy.Monitoring, launchCount: 1, warmupCount: 1, iterationCount: 5)]
public class PaperBenchmarks
{
    private readonly string[] _html = ThreePageSheets.Of(ThreePageSheets.Count);
    private readonly PdfPrinter _printer = new();

    /// <summary>The printer on one thread.</summary>
    [Benchmark(Baseline = true, OperationsPerInvoke = ThreePageSheets.Count)]
    public long OneThread() => ThreePageSheets.Print(_printer, _html, threads: 1);

    /// <summary>The printer on two threads.</summary>
    [Benchmark(OperationsPerInvoke = ThreePageSheets.Count)]
    public long TwoThreads() => ThreePageSheets.Print(_printer, _html, threads: 2);
}
