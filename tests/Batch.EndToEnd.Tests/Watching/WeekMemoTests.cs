using System.Globalization;
using System.Text;
using Batch.Books;
using Batch.Checks;
using Batch.Cli.Pipeline;
using Batch.Flight.Plan;
using Batch.SampleMaker;
using Batch.SampleMaker.Books;
using Batch.SampleMaker.Week;
using Batch.Sheets;
using CsCheck;
using Xunit.Abstractions;

namespace Batch.EndToEnd.Tests.Watching;

/// <summary>What <c>watch</c> takes over from the run before: much, and never anything that a run without it would find otherwise.</summary>
public sealed class WeekMemoTests(ITestOutputHelper output) : IDisposable
{
    private const int Legs = 42;
    private const int EditsInARow = 8;

    private static readonly RunFacts Facts = new() { MadeAt = Instant.FromUtc(2026, 12, 3, 10, 0), ToolVersion = "test" };
    private static readonly RandomWeek Week = RandomWeek.Of(Legs, 3);

    private readonly TemporaryFolder _folder = new();

    /// <summary>Kinds of edits: the sheet, the column, and values among which one is chosen.</summary>
    private static readonly ImmutableArray<(string Sheet, string Column, string[] Values)> Kinds =
    [
        ("week/Legs", "Fuel plan", ["minimum", "full", "carry", "520 lb", "minimum+150"]),
        ("week/Legs", "Level", ["auto", "3500", "FL120", "FL240"]),
        ("week/Legs", "Off blocks", ["05:10", "13:30", "21:45"]),
        ("week/Legs", "Date", ["2026-12-08", "2026-12-10", "32 Dec"]),
        ("week/Legs", "Aircraft", ["Q-R000", "Q-R001", "Q-R999"]),
        ("week/Legs", "Captain", ["C000", "C001", "C999", ""]),
        ("week/Legs", "Alternate", ["", "XAND", "XFEN", "XZZZ"]),
        ("week/Legs", "Leg", ["1", "2", "9"]),
        ("week/Legs", "Remarks", ["seen", "seen again"]),
        ("week/Manifest", "Weight", ["310", "90", "heavy"]),
        ("week/Manifest", "Trip", ["R0001", "R0009", ""]),
        ("week/Cargo", "Weight", ["5", "900"]),
        ("week/Winds", "Speed", ["5", "70"]),
        ("week/Notices", "Effect", ["closed", "no fuel", "other"]),
        ("operator/Crew", "Medical until", ["2026-12-01", "2027-12-01"]),
        ("operator/Crew", "Weight", ["110", "240"]),
        ("operator/Aircraft", "Basic empty weight", ["6700", "6300"]),
        ("operator/Aircraft", "Home", ["XBEL", "XAND"]),
        ("operator/Airports", "Closes", ["12:00", "23:00"]),
        ("operator/Types", "Landing", ["9000", "10800"]),
        ("operator/Logged", "Flight time", ["9.5", "0.5"]),
        ("operator/Checks", "State", ["fail", "caution", "note"]),
        ("operator/Operator", "Value", ["30 min", "XAND"]),
    ];

    [Fact]
    public void After_any_edits_the_result_is_that_of_a_run_without_it()
    {
        var edit = Gen.Select(Gen.Int[0, Kinds.Length - 1], Gen.Int[0, 60], Gen.Int[0, 5]);
        var rows = int.TryParse(Environment.GetEnvironmentVariable("RANDOM_EDITS"), NumberStyles.None, CultureInfo.InvariantCulture, out var asked) ? asked : 2;
        edit.Array[EditsInARow].Sample(
            edits =>
            {
                Write();
                var memo = new WeekMemo();
                Read(memo);
                foreach (var (kind, row, value) in edits)
                {
                    var said = Edit(Kinds[kind], row, value);
                    if (Difference(Read(null), Read(memo)) is { Length: > 0 } difference) throw new InvalidOperationException($"after {said}: {difference}");
                }
            },
            iter: rows,
            threads: 1);
    }

    [Fact]
    public void What_an_edit_does_not_reach_is_taken_over()
    {
        Write();
        var memo = new WeekMemo();
        var before = Read(memo);
        Edit(("week/Legs", "Remarks", ["seen"]), 0, 0);
        var after = Read(memo);
        var edited = after.Legs.Single(leg => leg.Plan is LegPlan.Planned { Leg.Remarks: "seen" });
        var old = before.Legs.ToDictionary(leg => leg.Plan.Key);
        Assert.NotSame(old[edited.Plan.Key].Plan, edited.Plan);
        Assert.All(after.Legs.Where(leg => leg.Plan.Key.Trip != edited.Plan.Key.Trip), leg => Assert.Same(old[leg.Plan.Key].Plan, leg.Plan));
        var failing = after.Legs.Where(leg => leg.State == LegState.Fail && leg.Plan.Key.Trip != edited.Plan.Key.Trip).ToArray();
        Assert.Contains(failing, leg => leg.Findings == old[leg.Plan.Key].Findings);
    }

    /// <summary>Measured when asked for, because it needs the machine for itself: WATCH_SPEED=1.</summary>
    [SkippableFact]
    public void An_edit_costs_a_part_of_a_run()
    {
        Skip.If(string.IsNullOrEmpty(Environment.GetEnvironmentVariable("WATCH_SPEED")), "WATCH_SPEED is not set");
        CsvCells.Copy(Batch.Testing.RepositoryRoot.PathOf("input-samples/csv"), _folder.Path);
        var memo = new WeekMemo();
        Timed("first run", memo);
        Timed("nothing changed", memo);
        double fresh = 0, kept = 0;
        foreach (var (cell, value) in new[] { ("week/Legs/Z3", "seen"), ("week/Legs/R8", "full"), ("week/Legs/D20", "10:05"), ("week/Manifest/E5", "201"),
            ("operator/Aircraft/J4", "2877.5") })
        {
            CsvCells.Type(_folder.Path, [(cell, value)]);
            kept += Timed($"{cell} = {value}", memo);
            fresh += Timed("the same without what was kept", null);
        }

        Assert.True(kept < fresh, string.Create(CultureInfo.InvariantCulture, $"{kept:0} ms against {fresh:0} ms"));
    }

    public void Dispose() => _folder.Dispose();

    private double Timed(string what, WeekMemo? memo)
    {
        var before = Environment.CpuUsage.TotalTime;
        var clock = System.Diagnostics.Stopwatch.StartNew();
        Read(memo);
        var used = (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what}: {used:0} ms of processor time, {clock.ElapsedMilliseconds} ms by the clock"));
        return used;
    }

    private static string Difference(CheckedWeek fresh, CheckedWeek kept)
    {
        var (one, other) = (Encoding.UTF8.GetString(RunRecord.Json(fresh, Facts)), Encoding.UTF8.GetString(RunRecord.Json(kept, Facts)));
        if (one != other)
        {
            var (left, right) = (one.Split('\n'), other.Split('\n'));
            var at = left.Zip(right).TakeWhile(pair => pair.First == pair.Second).Count();
            return string.Create(CultureInfo.InvariantCulture,
                $"run.json, line {at + 1}: {string.Join(' ', left.Skip(at - 3).Take(6))} | {string.Join(' ', right.Skip(at - 3).Take(6))}");
        }

        foreach (var (leg, same) in fresh.Legs.Zip(kept.Legs))
        {
            if (!SameValue.Is(leg, same)) return $"leg {leg.Plan.Key} is not the same";
        }

        return SameValue.Is(fresh.DutyTables, kept.DutyTables) && SameValue.Is(fresh.Plan, kept.Plan) ? "" : "the duty tables or chains are not the same";
    }

    private CheckedWeek Read(WeekMemo? memo)
    {
        var result = WeekReading.Of(BookReader.Read([Path.Combine(_folder.Path, "operator"), Path.Combine(_folder.Path, "week")]), 2, findsRemedies: true,
            new Silent(), CancellationToken.None, memo);
        Assert.Empty(result.Faults);
        return result.Week;
    }

    private void Write()
    {
        foreach (var book in new[] { Sample.OperatorBook(Week.Fleet, Week.Pilots, new LocalDate(2026, 11, 16)), Sample.WeekBook(Week.Trips, "") })
            CsvFolderWriter.Write(book, Path.Combine(_folder.Path, book.Name));
        foreach (var (kind, row, value) in new[] { (0, 4, 3), (0, 23, 1), (1, 30, 1), (9, 9, 0), (6, 12, 0) }) Edit(Kinds[kind], row, value);
    }

    private string Edit((string Sheet, string Column, string[] Values) kind, int row, int value)
    {
        var file = Path.Combine(_folder.Path, kind.Sheet + ".csv");
        var lines = File.ReadAllLines(file);
        var column = Array.FindIndex(lines[1].Split(','), name => name.Trim('"').Split(" [")[0] == kind.Column);
        Assert.True(column >= 0, $"{kind.Sheet} has no column {kind.Column}");
        const int FirstRow = 3; // a title and the headers stand above
        var rows = Math.Max(1, Math.Min(lines.Length - 2, 60));
        var letters = column < 26 ? ((char)('A' + column)).ToString() : "A" + (char)('A' + column - 26);
        var cell = string.Create(CultureInfo.InvariantCulture, $"{kind.Sheet}/{letters}{FirstRow + (row % rows)}");
        var typed = kind.Values[value % kind.Values.Length];
        CsvCells.Type(_folder.Path, [(cell, typed)]);
        return $"{cell} {kind.Column} = {typed}";
    }

    private sealed class Silent : IProgress<RunProgress>
    {
        public void Report(RunProgress value)
        {
            // Nothing is shown.
        }
    }
}
