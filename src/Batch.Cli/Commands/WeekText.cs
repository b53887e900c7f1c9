using System.Globalization;
using Batch.Checks;
using Batch.Cli.Pipeline;
using Batch.Flight.Plan;

namespace Batch.Cli.Commands;

/// <summary>A checked week as text: complaints about the books, then legs, worst first, then one line of counts.</summary>
internal sealed class WeekText(Terminal terminal)
{
    private const int MostCells = 6;
    private const string Red = "\u001b[31m";
    private const string Amber = "\u001b[33m";
    private const string Plain = "\u001b[0m";

    /// <summary>Writes the whole answer.</summary>
    /// <param name="read">The week.</param>
    public void Write(WeekResult read)
    {
        Problems(read.Week.Plan.Input.Problems);
        CheckedLeg[] legs = [.. read.Week.Legs.Where(leg => leg.State != LegState.Pass).OrderByDescending(leg => leg.State).ThenBy(leg => leg.Plan.Key)];
        for (var at = 0; at < legs.Length; at++)
        {
            Head(legs[at]);
            // Legs that one cause keeps from being planned, such as a missing column, stand in a row above it.
            if (at + 1 == legs.Length || Cause(legs[at]) is not { } cause || cause != Cause(legs[at + 1])) Body(legs[at]);
        }

        Faults(read.Faults);
        Counts(read.Week);
    }

    /// <summary>Writes one line for every leg that fails or is unplanned, each cut to the window.</summary>
    /// <param name="week">The week.</param>
    /// <param name="room">How many lines there is room for; the rest is counted.</param>
    public void Short(CheckedWeek week, int room = int.MaxValue) => Fitted(
        [
            .. week.Legs.Where(leg => leg.State is LegState.Fail or LegState.Unplanned).OrderByDescending(leg => leg.State).ThenBy(leg => leg.Plan.Key)
                .Select(leg =>
            {
                var why = leg.Plan is LegPlan.Unplanned unplanned ? unplanned.Why : leg.Findings.First(finding => finding.Verdict == Verdict.Fail).Text;
                return (leg.State == LegState.Fail ? "FAIL" : "UNPLANNED", Red, $"{leg.Plan.Key}  ", $"  {What(leg.Plan)}  {why}");
            }),
        ],
        room,
        "legs that fail or could not be planned");

    /// <summary>Writes complaints about the books.</summary>
    /// <param name="problems">The complaints.</param>
    /// <param name="room">How many lines there is room for; the rest is counted.</param>
    public void Problems(ImmutableArray<Problem> problems, int room = int.MaxValue)
    {
        (string Word, string Colour, string Before, string After)[] lines =
        [
            .. problems.Where(problem => problem.State != State.Note).Select(problem => (
                problem.State == State.Fail ? "cannot use" : "caution   ", problem.State == State.Fail ? Red : Amber, "",
                $"  {problem.Cell}  {problem.Text}{Read(problem)}{Expected(problem.Text, problem.Expected)}")),
        ];
        Fitted(lines, room, "complaints about the books");
        var notes = problems.Count(problem => problem.State == State.Note);
        if (notes > 0) Line(string.Create(CultureInfo.InvariantCulture,
            $"{notes} {(notes == 1 ? "note" : "notes")} about the books, listed in run.json and on the board."));
        if (!problems.IsEmpty) Line("");
    }

    /// <summary>As many lines as there is room for, cut to the window where there is not room for all that could be said.</summary>
    private void Fitted((string Word, string Colour, string Before, string After)[] lines, int room, string what)
    {
        var shown = lines.Length <= room ? lines.Length : Math.Max(0, room - 1);
        foreach (var (word, colour, before, after) in lines.Take(shown))
        {
            var left = room == int.MaxValue || terminal.Columns is not { } columns ? int.MaxValue : columns - before.Length - word.Length;
            Line(before + Colour(colour, word) + (after.Length <= left ? after : string.Concat(after.AsSpan(0, Math.Max(0, left - 1)), "…")));
        }

        if (shown < lines.Length) Line(string.Create(CultureInfo.InvariantCulture, $"and {lines.Length - shown} more {what}: see the board."));
    }

    private void Head(CheckedLeg leg)
    {
        var word = leg.State switch
        {
            LegState.Fail => Colour(Red, "FAIL"),
            LegState.Unplanned => Colour(Red, "UNPLANNED"),
            LegState.Caution => Colour(Amber, "caution"),
            LegState.Pass => "pass",
        };
        Line($"{leg.Plan.Key}  {word}  {What(leg.Plan)}");
    }

    /// <summary>Why a leg is not planned and no change to it was found; null for any other leg.</summary>
    private static string? Cause(CheckedLeg leg) =>
        leg.Plan is LegPlan.Unplanned unplanned && leg.Findings.All(finding => finding.Remedies.IsEmpty && finding.NoRemedy.Length == 0)
        ? Why(unplanned)
        : null;

    private static string Why(LegPlan.Unplanned unplanned) => $"    {unplanned.Sentence}{Expected(unplanned.Why, unplanned.Expected)}{Cells(unplanned.Cells)}";

    private void Body(CheckedLeg leg)
    {
        if (leg.Plan is LegPlan.Unplanned unplanned)
        {
            Line(Why(unplanned));
            foreach (var finding in leg.Findings) Remedies(finding);
            return;
        }

        foreach (var finding in leg.Findings.Where(finding => finding.Verdict is Verdict.Fail or Verdict.Caution))
        {
            Line($"    {finding.Check}  {(finding.Verdict == Verdict.Fail ? "fail   " : "caution")}  {finding.Text}  [{finding.Citation}{(finding.IsBasisUnconfirmed ? "; basis to be confirmed" : "")}]{Cells(finding.Cells)}");
            Remedies(finding);
        }
    }

    private void Remedies(Finding finding)
    {
        foreach (var remedy in finding.Remedies) Line($"        would pass: {remedy.Text}");
        if (finding.NoRemedy.Length > 0) Line($"        {finding.NoRemedy}");
    }

    /// <summary>Writes faults of the program.</summary>
    /// <param name="faults">The faults.</param>
    public void Faults(ImmutableArray<Fault> faults)
    {
        foreach (var fault in faults) terminal.Errors.WriteLine($"A fault of the program at {fault.Subject}, please report it: {fault.Error}");
    }

    /// <summary>Writes one line of counts.</summary>
    /// <param name="week">The week.</param>
    public void Counts(CheckedWeek week) => terminal.WriteSentence(CountsOf(week));

    /// <summary>The line of counts.</summary>
    /// <param name="week">The week.</param>
    public static string CountsOf(CheckedWeek week)
    {
        var trips = week.Legs.Select(leg => leg.Plan.Key.Trip).Distinct(StringComparer.OrdinalIgnoreCase).Count();
        return string.Create(CultureInfo.InvariantCulture, $"{trips} {(trips == 1 ? "trip" : "trips")}, {LegCounts.Of(week)}.  Rules: {week.RuleSet}.");
    }

    /// <summary>When, by which aircraft, from where to where.</summary>
    /// <param name="plan">The leg.</param>
    public static string What(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned =>
            $"{planned.Leg.OffBlocksLocal.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture)}  {planned.Aircraft.Registration}  {planned.From.Ident}-{planned.To.Ident}",
        LegPlan.Unplanned { Leg: { } leg } =>
            $"{leg.OffBlocksLocal.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture)}  {leg.Aircraft}  {leg.From}-{leg.To}",
        LegPlan.Unplanned { Broken: { } broken } => $"{broken.Aircraft}  {broken.From}-{broken.To}",
        _ => "",
    };

    /// <summary>What was read, where the sentence does not say it.</summary>
    private static string Read(Problem problem) =>
        problem.Read.Length is > 0 and <= 40 && !problem.Text.Contains(problem.Read, StringComparison.OrdinalIgnoreCase) ? $": \"{problem.Read}\"" : "";

    /// <summary>What was expected, where the complaint does not say it itself.</summary>
    private static string Expected(string text, string expected) =>
        expected.Length == 0 || text.Contains("did you mean", StringComparison.Ordinal) ? "" : $" (expected: {expected})";

    // All cells stand in run.json, on the sheets and in the checked book.
    private static string Cells(ImmutableArray<string> written)
    {
        ImmutableArray<string> cells = [.. written.Where(cell => cell.Length > 0).Distinct(StringComparer.Ordinal)];
        if (cells.IsEmpty) return "";
        var more = cells.Length > MostCells + 1 ? string.Create(CultureInfo.InvariantCulture, $" and {cells.Length - MostCells} more cells") : "";
        return $"  ({string.Join(", ", cells.Take(more.Length > 0 ? MostCells : cells.Length))}{more})";
    }

    private string Colour(string colour, string word) => terminal.HasColour ? colour + word + Plain : word;

    private void Line(string text) => terminal.Output.WriteLine(text);
}
