using Batch.Checks;

namespace Batch.Sheets.Register;

/// <summary>The sheet Rules: every entry of the rule set that the week was checked by.</summary>
internal static class RulesSheet
{
    private static readonly ImmutableArray<BookColumn> Columns =
    [
        new("Check", 9), new("Title", 28), new("Part", 30), new("At least or at most", 10), new("Amount", 9), new("Unit", 9), new("Holds for", 30),
        new("Serious as", 10), new("Rule", 36), new("Rule text of", 10), new("Basis", 24), new("What it says", 70),
    ];

    /// <summary>Writes it.</summary>
    /// <param name="book">The workbook.</param>
    /// <param name="week">The week.</param>
    public static void Write(WorkbookWriter book, CheckedWeek week)
    {
        var date = week.RuleSet.Split(' ')[^1];
        book.Sheet("Rules", Columns, frozen: 1, sheet =>
        {
            foreach (var rule in week.Rules)
            {
                sheet.Row(cells =>
                {
                    var state = StateWord.Of(rule.State);
                    cells.Text(rule.Check);
                    cells.Text(rule.Title, CellStyle.Wrapped);
                    cells.Text(rule.Part, CellStyle.Wrapped);
                    cells.Text(rule.Value is null ? "" : rule.IsLeast ? "at least" : "at most");
                    cells.Number(rule.Value, CellStyle.Number);
                    cells.Text(rule.Unit);
                    cells.Text(rule.When.Length == 0 ? "every leg" : rule.When, CellStyle.Wrapped);
                    cells.Text(state, StateLook.Of(state));
                    cells.Text(rule.Citation, CellStyle.Wrapped);
                    cells.Text(date);
                    cells.Text(rule.Basis, CellStyle.Wrapped);
                    cells.Text(rule.Says, CellStyle.Wrapped);
                });
            }
        });
    }
}
