using Batch.Checks;
using Batch.Cli.Pipeline;
using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.EndToEnd.Tests;

/// <summary>
/// Nothing passes on an empty cell: of every column that a passing answer of the sample names as its source one cell is blanked, the books are read, planned
/// and checked again, and that answer of that leg may not be a pass any more, save where the list says what stands in.
/// </summary>
public sealed class BlankedCellTests
{
    /// <summary>Cells that are always blanked; BLANKED_CELLS=all blanks one for every column and check, which takes minutes.</summary>
    private const int UsualCells = 12;

    private static bool IsWhole => Environment.GetEnvironmentVariable("BLANKED_CELLS") == "all";

    private static readonly string Books = RepositoryRoot.PathOf("input-samples", "csv");

    /// <summary>What stands in for an empty cell, by sheet and header, with the checks that may then pass; <c>*</c> for all.</summary>
    private static readonly (string Column, string[] Checks, string Reason)[] StandIns =
    [
        ("Aircraft Fuel burn bias", ["FUEL-08"], "the column says: empty for nothing more"),
        ("Aircraft Weighed on", ["WB-09"], "the date on which the next weighing is due is given and stands alone"),
        ("Airports Lighting", ["PERF-08"], "the Runways sheet says that the runway is lighted"),
        ("Airports Quiet hours", ["ADM-04"], "the column says: empty for none"),
        ("Airports Takeoff visibility", ["ALT-04"], "14 CFR 91.175(f) names a usual one"),
        ("Crew Third last landing", ["CREW-08"], "landings at night count by day too, and their date is given"),
        ("Legs Alternate", ["ALT-02"], "the forecast shows that none is required"),
        ("Legs Arrival runway", ["*"], "the planner takes the runway that is best into the wind"),
        ("Legs Departure runway", ["*"], "the planner takes the runway that is best into the wind"),
        ("Legs Fuel aboard", ["*"], "the uplift is counted from empty tanks, and FUEL-09 says so"),
        ("Legs Fuel plan", ["*"], "the minimum fuel of the rules is planned"),
        ("Legs Level", ["*"], "the planner takes the best level"),
        ("Legs Second pilot", ["*"], "the captain flies alone, under the limits for one pilot"),
        ("Runways Lighted", ["PERF-08"], "the Airports sheet says that the airport is lighted"),
        ("Runways Slope", ["PERF-06"], "the column says: empty for level"),
    ];

    [Fact]
    public void Without_the_cell_that_it_names_an_answer_is_no_pass()
    {
        var passed = Passed(Checked(Books)).ToArray();
        var all = Chosen(passed).ToArray();
        // One for every column that is named, at least; the number falls when answers no longer name their cells.
        Assert.InRange(all.Length, 40, int.MaxValue);
        var cells = IsWhole ? all : all[..UsualCells];
        var wrong = new List<string>();
        var used = new HashSet<string>(StringComparer.Ordinal);
        foreach (var cell in cells)
        {
            using var copy = new TemporaryFolder();
            CsvCells.Copy(Books, copy.Path);
            CsvCells.Type(copy.Path, [(cell, "")]);
            var after = Checked(copy.Path).Legs.ToDictionary(leg => leg.Plan.Key);
            foreach (var answer in passed.Where(answer => answer.Cell == cell))
            {
                if (!after.TryGetValue(answer.Leg, out var leg) || leg.Plan is LegPlan.Unplanned) continue;
                var answers = leg.Findings.Where(finding => finding.Check == answer.Check).ToArray();
                if (answers.Any(finding => finding.Verdict is Verdict.NotChecked or Verdict.Caution or Verdict.Fail)
                    || answers.All(finding => finding.Verdict != Verdict.Pass)) continue;
                var column = CsvCells.Column(Books, cell);
                if (StandIns.Any(one => one.Column == column && (one.Checks is ["*"] || one.Checks.Contains(answer.Check))))
                {
                    used.Add(column);
                    continue;
                }

                wrong.Add($"{column} ({cell}): {answer.Leg} {answer.Check} still passes: {answers.First(finding => finding.Verdict == Verdict.Pass).Text}");
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        // A stand-in that nothing leans on has no place in the list.
        if (IsWhole)
            Assert.Equal(StandIns.Select(one => one.Column).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal), used.Order(StringComparer.Ordinal));
    }

    private static CheckedWeek Checked(string folder) =>
        WeekReading.Read([Path.Combine(folder, "operator"), Path.Combine(folder, "week")], 1, findsRemedies: false, new Quiet(), CancellationToken.None).Week;

    private static IEnumerable<(Flight.Week.LegKey Leg, string Check, string Cell)> Passed(CheckedWeek week) =>
        from leg in week.Legs
        from finding in leg.Findings
        where finding.Verdict == Verdict.Pass
            && leg.Findings.Where(other => other.Check == finding.Check).All(other => other.Verdict is Verdict.Pass or Verdict.Note)
        from cell in finding.Cells
        where char.IsAsciiLetter(cell[cell.LastIndexOf('/') + 1])
        select (leg.Plan.Key, finding.Check, cell);

    /// <summary>As few cells as name every pair of a column and a check, the one that names most first.</summary>
    private static IEnumerable<string> Chosen(IEnumerable<(Flight.Week.LegKey Leg, string Check, string Cell)> passed)
    {
        var open = passed.GroupBy(answer => answer.Cell, StringComparer.Ordinal).ToDictionary(group => group.Key,
            group => group.Select(answer => Letters(answer.Cell) + " " + answer.Check).ToHashSet(StringComparer.Ordinal), StringComparer.Ordinal);
        while (open.Values.Max(pairs => pairs.Count) > 0)
        {
            var best = open.OrderByDescending(entry => entry.Value.Count).ThenBy(entry => entry.Key, StringComparer.Ordinal).First();
            var covered = best.Value.ToArray();
            foreach (var pairs in open.Values) pairs.ExceptWith(covered);
            yield return best.Key;
        }
    }

    private static string Letters(string cell) => cell.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');

    private sealed class Quiet : IProgress<RunProgress>
    {
        public void Report(RunProgress value)
        {
        }
    }
}
