using Batch.Books.Cells;

namespace Batch.Books.Headers;

/// <summary>A sheet that has the columns of a declared sheet but not its name, where no sheet has that name.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Plan">The declared sheet whose columns it has.</param>
internal sealed record StraySheet(RawSheet Sheet, SheetPlan Plan)
{
    /// <summary>Columns that a sheet must share with a declared one beside all starred ones, so that a page of one's own is not taken for it.</summary>
    private const int FewestColumns = 3;

    /// <summary>The declared sheet that a sheet was likely meant to be; null for none, and where another sheet has that name.</summary>
    /// <param name="sheet">A sheet whose name is not declared.</param>
    /// <param name="plans">The declared sheets.</param>
    /// <param name="isTaken">Whether some sheet has the name of a declared one.</param>
    public static StraySheet? Of(RawSheet sheet, IReadOnlyList<SheetPlan> plans, Func<SheetPlan, bool> isTaken)
    {
        var name = HeaderText.Plain(sheet.Name);
        var best = plans.Select(plan => (Plan: plan, Columns: ColumnsOf(sheet, plan))).MaxBy(pair => pair.Columns);
        if (best.Columns == 0 || isTaken(best.Plan)) return null;
        return best.Columns >= FewestColumns || HeaderText.Near(name, [best.Plan.Name]) is not null ? new StraySheet(sheet, best.Plan) : null;
    }

    // Columns of the declared sheet in the one row that has most of them; none where a starred one is not there.
    private static int ColumnsOf(RawSheet sheet, SheetPlan plan)
    {
        var most = 0;
        foreach (var row in sheet.Rows.Take(HeaderMatch.RowsSearched))
        {
            var headers = row.Cells.Where(cell => cell.Kind == CellKind.Text).Select(cell => HeaderText.Of(cell.Text).Name).ToHashSet(StringComparer.Ordinal);
            var there = plan.Columns.Where(column => column.Aliases.Append(column.Name).Any(word => headers.Contains(HeaderText.Plain(word)))).ToArray();
            if (plan.Columns.All(column => !column.IsRequired || there.Contains(column))) most = Math.Max(most, there.Length);
        }

        return most;
    }
}
