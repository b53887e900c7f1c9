using System.Diagnostics;
using System.Globalization;
using Batch.Cli.Pipeline;
using Batch.SampleMaker;
using Batch.SampleMaker.Books;
using Batch.SampleMaker.Week;
using Batch.Sheets;
using Xunit.Abstractions;

namespace Batch.EndToEnd.Tests;

/// <summary>
/// The register of a large random week: it is written, and what it took is printed. REGISTER_LEGS=1000 gives the figures of the README; nothing is asserted of
/// time, machines differ.
/// </summary>
public sealed class RegisterSpeedTests(ITestOutputHelper output)
{
    private const int UsualLegs = 40;

    [Fact]
    public void A_large_week_is_written_without_being_held()
    {
        var count = int.TryParse(Environment.GetEnvironmentVariable("REGISTER_LEGS"), NumberStyles.None, CultureInfo.InvariantCulture, out var legs)
            ? legs
            : UsualLegs;
        using var folder = new TemporaryFolder();
        var random = RandomWeek.Of(count, 7);
        foreach (var book in new[] { Sample.OperatorBook(random.Fleet, random.Pilots, new LocalDate(2026, 11, 16)), Sample.WeekBook(random.Trips, "") })
            CsvFolderWriter.Write(book, Path.Combine(folder.Path, book.Name));
        var week = WeekReading.Read([Path.Combine(folder.Path, "operator"), Path.Combine(folder.Path, "week")], 1, findsRemedies: false, new Silent(),
            CancellationToken.None).Week;
        var answers = week.Legs.Sum(leg => leg.Findings.Length);
        using (var once = new MemoryStream()) ComplianceRegister.Write(week, once);

        var file = Path.Combine(folder.Path, "register.xlsx");
        var allocated = GC.GetAllocatedBytesForCurrentThread();
        var held = GC.GetTotalMemory(forceFullCollection: true);
        var begun = Process.GetCurrentProcess().TotalProcessorTime;
        var watch = Stopwatch.StartNew();
        using (var stream = File.Create(file)) ComplianceRegister.Write(week, stream);
        watch.Stop();
        var used = Process.GetCurrentProcess().TotalProcessorTime - begun;
        var passed = GC.GetAllocatedBytesForCurrentThread() - allocated;
        var kept = GC.GetTotalMemory(forceFullCollection: true) - held;
        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{count} legs, {answers} answers: {used.TotalSeconds:0.0} s of processor time, {watch.Elapsed.TotalSeconds:0.0} s by the clock, {passed / 1e6:0} MB allocated and given back, {kept / 1e6:0.0} MB held after, file of {new FileInfo(file).Length / 1e6:0.0} MB"));
        Assert.True(new FileInfo(file).Length > 0);
    }

    private sealed class Silent : IProgress<RunProgress>
    {
        public void Report(RunProgress value)
        {
        }
    }
}
