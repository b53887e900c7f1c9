using Batch.Checks;

namespace Batch.Sheets.Register;

/// <summary>The sheet Answers: every check on every leg.</summary>
internal static class AnswersSheet
{
    /// <summary>Name of the sheet.</summary>
    public const string Name = "Answers";

    private static readonly ImmutableArray<BookColumn> Columns =
    [
        new("Trip", 8), new("Leg", 5), new("Date", 10.5), new("Aircraft", 9), new("Captain", 8), new("Check", 9), new("Title", 24), new("State", 12),
        new("Required", 10), new("Actual", 10), new("Margin", 10),
        new("Unit", 8), new("Answer", 56), new("Rule", 26), new("Rule text of", 9), new("Basis", 14), new("Cells", 20), new("Who acts", 12),
        new("Operator's reason for a milder setting", 18), new("What would make it pass", 34),
    ];

    /// <summary>Writes it.</summary>
    /// <param name="book">The workbook.</param>
    /// <param name="week">The week.</param>
    /// <param name="rows">The rows.</param>
    public static void Write(WorkbookWriter book, CheckedWeek week, ImmutableArray<RegisterRow> rows)
    {
        var date = week.RuleSet.Split(' ')[^1];
        book.Sheet(Name, Columns, frozen: 2, sheet =>
        {
            foreach (var row in rows)
            {
                sheet.Row(cells => Cells(cells, row, date));
            }
        }, isLarge: true);
    }

    private static void Cells(SheetWriter cells, RegisterRow row, string date)
    {
        var finding = row.Finding;
        var numbers = finding.Numbers;
        cells.Text(row.Trip);
        if (row.Leg > 0) cells.Number(row.Leg, CellStyle.Whole);
        else cells.Text(row.LegWord);
        cells.Date(row.Date);
        cells.Text(row.Aircraft);
        cells.Text(row.Captain);
        cells.Text(finding.Check);
        cells.Text(finding.Title, CellStyle.Wrapped);
        cells.Text(row.State, StateLook.Of(row.State));
        cells.Number(numbers.Required, CellStyle.Number);
        cells.Number(numbers.Actual, CellStyle.Number);
        cells.Number(numbers.Margin, CellStyle.Number);
        cells.Text(finding.Unit);
        cells.Text(finding.Text, CellStyle.Wrapped);
        cells.Text(finding.Citation, CellStyle.Wrapped);
        cells.Text(date);
        cells.Text(finding.IsBasisUnconfirmed ? "to be confirmed" : "");
        cells.Text(string.Join(", ", finding.Cells), CellStyle.Wrapped);
        cells.Text(finding.Actor);
        cells.Text(finding.Loosened, CellStyle.Wrapped);
        cells.Text(finding.NoRemedy.Length > 0 ? finding.NoRemedy : string.Join("; ", finding.Remedies.Select(remedy => remedy.Text)), CellStyle.Wrapped);
    }
}
