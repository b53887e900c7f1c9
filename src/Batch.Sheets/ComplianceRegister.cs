using Batch.Checks;
using Batch.Sheets.Register;

namespace Batch.Sheets;

/// <summary>
/// The file <c>register.xlsx</c>: every check on every leg with what is required, what is planned, the rule and its cells; the legs, the duty of the crew and
/// the rules besides.
/// </summary>
public static class ComplianceRegister
{
    /// <summary>The workbook, written row by row; the same week gives the same bytes.</summary>
    /// <param name="week">The checked week.</param>
    /// <param name="to">Stream that takes it; left open.</param>
    public static void Write(CheckedWeek week, Stream to)
    {
        var rows = FindingsTable.Rows(week).ToImmutableArray();
        var title = week.Plan.Input.Operator.Name is { Length: > 0 } name ? $"{name}: compliance register" : "Compliance register";
        using var book = new WorkbookWriter(to, title,
            $"Rules {week.RuleSet}. A planning aid: the approved flight manual, local rules and the pilot in command decide.");
        LegsSheet.Write(book, week, rows);
        AnswersSheet.Write(book, week, rows);
        DutySheet.Write(book, week);
        RulesSheet.Write(book, week);
    }
}
