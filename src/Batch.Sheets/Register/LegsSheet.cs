using System.Globalization;
using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Sheets.Register;

/// <summary>The sheet Legs: one row a leg with its state and how its checks answered.</summary>
internal static class LegsSheet
{
    private static readonly ImmutableArray<BookColumn> Columns =
    [
        new("Trip", 8), new("Leg", 5), new("Off blocks local", 18), new("Aircraft", 9), new("From", 7), new("To", 7), new("Captain", 8), new("Second pilot", 8),
        new("State", 11),
        new("Failures", 9), new("Cautions", 9), new("Notes", 7), new("Not checked", 8), new("Passed", 7), new("Not applicable", 10), new("What fails", 60),
        new("Answers", 10),
    ];

    /// <summary>Writes it.</summary>
    /// <param name="book">The workbook.</param>
    /// <param name="week">The week.</param>
    /// <param name="rows">Rows of the answers, in their order.</param>
    public static void Write(WorkbookWriter book, CheckedWeek week, ImmutableArray<RegisterRow> rows)
    {
        var first = new Dictionary<LegKey, int>();
        for (var i = 0; i < rows.Length; i++)
        {
            first.TryAdd(rows[i].Key, i + 2);
        }

        book.Sheet("Legs", Columns, frozen: 2, sheet =>
        {
            foreach (var leg in week.Legs)
            {
                sheet.Row(cells => Cells(cells, leg, first.GetValueOrDefault(leg.Plan.Key)));
            }
        });
    }

    private static void Cells(SheetWriter cells, CheckedLeg leg, int answers)
    {
        var read = leg.Plan switch
        {
            LegPlan.Planned planned => planned.Leg,
            LegPlan.Unplanned unplanned => unplanned.Leg,
            _ => null,
        };
        var broken = (leg.Plan as LegPlan.Unplanned)?.Broken;
        cells.Text(leg.Plan.Key.Trip);
        if (leg.Plan.Key.Number > 0) cells.Number(leg.Plan.Key.Number, CellStyle.Whole);
        else cells.Text(UnreadNumber.Word(0, UnreadNumber.Row(leg.Plan)));
        if (read is { } known) cells.DateTime(known.OffBlocksLocal);
        else cells.Date(broken?.Date);
        cells.Text(read?.Aircraft ?? broken?.Aircraft ?? "");
        cells.Text(read?.From ?? broken?.From ?? "");
        cells.Text(read?.To ?? broken?.To ?? "");
        cells.Text(read?.Captain ?? broken?.Captain ?? "");
        cells.Text(read?.SecondPilot ?? broken?.SecondPilot ?? "");
        var state = StateWord.Of(leg.State);
        cells.Text(state, StateLook.Of(state));
        foreach (var verdict in new[] { Verdict.Fail, Verdict.Caution, Verdict.Note, Verdict.NotChecked, Verdict.Pass, Verdict.NotApplicable })
        {
            cells.Number(leg.Findings.Count(finding => finding.Verdict == verdict), CellStyle.Whole);
        }

        cells.Text(string.Join(" ", leg.Findings.Where(finding => finding.Verdict == Verdict.Fail).Select(finding => $"{finding.Check}: {finding.Text}")),
            CellStyle.Wrapped);
        if (answers > 0) cells.Link("show", AnswersSheet.Name + "!A" + answers.ToString(CultureInfo.InvariantCulture));
        else cells.Text("");
    }
}
