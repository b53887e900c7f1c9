using Batch.Books;
using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Sheets;
using NodaTime.Text;

namespace Batch.Cli.Pipeline;

/// <summary>What a checked week has to say in the user's own workbook.</summary>
public static class CheckedCopy
{
    /// <summary>The check that repeats in the register why a leg was not planned.</summary>
    private const string DataCheck = "ADM-05";

    private static readonly InstantPattern Minute = InstantPattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm'Z'");

    /// <summary>The content of checked workbooks: complaints about cells, then findings, fails first.</summary>
    /// <param name="week">The checked week, as its operator reads it (<see cref="WeekInUnit"/>).</param>
    /// <param name="madeAt">The instant printed as made at.</param>
    /// <param name="hasResultColumns">Whether results are written beside each leg.</param>
    public static CheckedBookContent Of(CheckedWeek week, Instant madeAt, bool hasResultColumns)
    {
        var problems = week.Plan.Input.Problems.Where(problem => problem.State != State.Note).ToImmutableArray();
        // Of two rows with the same trip and leg the first is planned, and its findings are the ones that are told.
        var planned = week.Legs.Where(leg => leg.Plan is LegPlan.Planned).Select(leg => leg.Plan.Key).ToHashSet();
        var cells = week.Legs.OrderBy(leg => leg.Plan is LegPlan.Unplanned).DistinctBy(leg => leg.Plan.Key)
            .ToDictionary(leg => leg.Plan.Key, leg => OriginOf(leg.Plan).Cell(nameof(Flight.Week.LegKey.Number)));
        var rows = week.Legs.Where(leg => leg.Plan is LegPlan.Unplanned).ToLookup(leg => OriginOf(leg.Plan).Cell(""), StringComparer.Ordinal);
        var complaints = problems.Select(problem => Complaint(problem, rows[RowOf(problem.Cell)].FirstOrDefault()));
        var fails = problems.Where(problem => problem.State == State.Fail).ToLookup(problem => RowOf(problem.Cell), StringComparer.Ordinal);
        var unplanned = rows.SelectMany(row => row).Where(leg => !planned.Contains(leg.Plan.Key)).DistinctBy(leg => leg.Plan.Key)
            .ToDictionary(leg => leg.Plan.Key, leg => IsSaid(leg.Plan, fails));
        var findings = FindingsTable.Rows(week)
            .Where(row => row.Finding.Verdict is Verdict.Fail or Verdict.Caution or Verdict.NotChecked && !Repeats(row, unplanned))
            .Select(row => Finding(row, cells));
        var legs = week.Legs.Select(leg => Result(leg, week.Plan.Input.Operator.WeightUnit)).Where(leg => leg.Row.Length > 0).ToImmutableArray();
        return new CheckedBookContent
        {
            Lines = [.. complaints.Concat(findings).OrderByDescending(line => line.State)],
            Legs = legs,
            HasResultColumns = hasResultColumns,
            WeightUnit = week.Plan.Input.Operator.WeightUnit,
            Summary = Summary(week, madeAt),
        };
    }

    private static string Summary(CheckedWeek week, Instant madeAt) =>
        $"{LegCounts.Of(week)}.  Rules: {week.RuleSet}.  Made {Minute.Format(madeAt)}.  A planning aid: the approved flight manual, local rules and the pilot in command decide.";

    // Why a leg was not planned is said once: by the complaint about the cell where there is one, else by the leg's own line; never again as doubtful data.
    private static bool Repeats(RegisterRow row, Dictionary<Flight.Week.LegKey, bool> unplanned) =>
        unplanned.TryGetValue(row.Key, out var isSaid) && (isSaid || row.Finding.Check == DataCheck);

    private static bool IsSaid(LegPlan plan, ILookup<string, Problem> fails) => plan is LegPlan.Unplanned { Why: var why } &&
        fails[OriginOf(plan).Cell("")]
            .Any(problem => why.Contains(problem.Text, StringComparison.Ordinal) || problem.Text.Contains(why.TrimEnd('.'), StringComparison.Ordinal));

    /// <summary>The row of a cell: <c>week.xlsx/Legs/7</c> of <c>week.xlsx/Legs/F7</c>.</summary>
    private static string RowOf(string cell)
    {
        var at = cell.LastIndexOf('/') + 1;
        return cell[..at] + string.Concat(cell.Skip(at).SkipWhile(char.IsAsciiLetterUpper));
    }

    private static CheckedLine Complaint(Problem problem, CheckedLeg? unplanned) => new()
    {
        State = problem.State,
        Leg = unplanned?.Plan.Key.ToString() ?? "",
        Day = unplanned?.Plan switch
        {
            LegPlan.Unplanned { Leg: { } leg } => leg.OffBlocksLocal.Date,
            LegPlan.Unplanned { Broken: { } broken } => broken.Date,
            _ => null
        },
        Aircraft =
            unplanned?.Plan switch { LegPlan.Unplanned { Leg: { } leg } => leg.Aircraft, LegPlan.Unplanned { Broken: { } broken } => broken.Aircraft, _ => "" },
        Text = problem.Read.Length > 0 ? $"{problem.Text} (read: {problem.Read})" : problem.Text,
        Remedies = problem.Expected.Length > 0
            ? [problem.Expected.EndsWith('.') ? "fill in: " + problem.Expected.TrimEnd('.') : "write " + problem.Expected]
            : [],
        Actor = "dispatcher",
        Cells = [problem.Cell],
    };

    private static CheckedLine Finding(RegisterRow row, Dictionary<Flight.Week.LegKey, string> cells)
    {
        var finding = row.Finding;
        return new CheckedLine
        {
            State = finding.Verdict switch { Verdict.Fail => State.Fail, Verdict.Caution => State.Caution, _ => State.Note },
            Word = row.State,
            Leg = row.Key.ToString(),
            Day = row.Date,
            Aircraft = row.Aircraft,
            Check = $"{finding.Check} {finding.Title}",
            Text = finding.Text,
            Required = finding.Numbers.Required,
            Actual = finding.Numbers.Actual,
            Unit = finding.Unit,
            Remedies = finding.NoRemedy.Length > 0 ? [finding.NoRemedy] : [.. finding.Remedies.Select(remedy => remedy.Text)],
            Citation = finding.Citation + (finding.IsBasisUnconfirmed ? " (basis to be confirmed)" : ""),
            Actor = finding.Actor,
            Cells = [.. finding.Cells.Where(cell => cell.Length > 0)],
            LegCell = cells.GetValueOrDefault(row.Key, ""),
        };
    }

    private static LegResult Result(CheckedLeg leg, WeightUnit unit)
    {
        var planned = leg.Plan as LegPlan.Planned;
        var fuel = planned is null
            ? (PrintedTrio?)null
            : PrintedTrio.Of(unit.Of(planned.Fuel.Required), unit.Of(planned.Fuel.Aboard), isLeast: true, planned.Fuel.Margin.Value >= -1e-6);
        return new LegResult
        {
            Row = OriginOf(leg.Plan).Cell(""),
            State = leg.State switch { LegState.Pass => "pass", LegState.Caution => "caution", LegState.Fail => "fail", LegState.Unplanned => "unplanned" },
            Mark = leg.State switch { LegState.Pass => null, LegState.Caution => State.Caution, LegState.Fail or LegState.Unplanned => State.Fail },
            BlockTime = planned?.Times.Block,
            FuelRequired = fuel?.Limit,
            FuelAboard = fuel?.Actual,
            TakeoffWeight = planned is null ? null : unit.Of(planned.Load.Takeoff.Weight),
        };
    }

    private static Origin OriginOf(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned => planned.Leg.Origin,
        LegPlan.Unplanned { Leg: { } leg } => leg.Origin,
        LegPlan.Unplanned { Broken: { } broken } => broken.Origin,
        _ => Origin.None,
    };
}
