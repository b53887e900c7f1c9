using Batch.Books.Cells;
using Batch.Books.Units;

namespace Batch.Books.Headers;

/// <summary>All sheets of all books, ready to give the rows of a declared sheet.</summary>
internal sealed class Shelf
{
    private readonly ImmutableArray<RawBook> _books;
    private readonly ILookup<string, RawSheet> _sheets;
    private readonly List<(SheetPlan Plan, Problem Problem)> _unread = [];

    /// <summary>Makes the shelf and remarks on how the files were read.</summary>
    public Shelf(ImmutableArray<RawBook> books, Complaints complaints)
    {
        _books = books;
        Complaints = complaints;
        _sheets = books.SelectMany(book => book.Sheets).ToLookup(sheet => HeaderText.Plain(sheet.Name), StringComparer.Ordinal);
        foreach (var (at, state, text) in books.SelectMany(book => book.Sheets).SelectMany(sheet => sheet.Remarks)) complaints.Add(at, state, text);
    }

    /// <summary>Where complaints go.</summary>
    public Complaints Complaints { get; }

    /// <summary>The complaints about declared sheets without a header row, of those that were asked for so far: what stands in them was not read.</summary>
    public IReadOnlyList<(SheetPlan Plan, Problem Problem)> Unread => _unread;

    /// <summary>Default units by book number; those of any book fill the gaps.</summary>
    public Func<int, UnitDefaults> Defaults { get; set; } = _ => UnitDefaults.None;

    /// <summary>Whether any book has the sheet.</summary>
    public bool Has(SheetPlan plan) => _sheets.Contains(HeaderText.Plain(plan.Name));

    /// <summary>Complains of every sheet that is the declared one.</summary>
    /// <param name="plan">The declared sheet.</param>
    /// <param name="text">One sentence.</param>
    /// <param name="expected">What would have been understood.</param>
    public void ComplainOfSheets(SheetPlan plan, string text, string expected)
    {
        foreach (var sheet in _sheets[HeaderText.Plain(plan.Name)]) Complaints.Add(sheet.Place, State.Fail, text, expected: expected);
    }

    /// <summary>The rows of a declared sheet in all books, in book order.</summary>
    public IEnumerable<Row> Rows(SheetPlan plan)
    {
        foreach (var sheet in _sheets[HeaderText.Plain(plan.Name)])
        {
            if (HeaderMatch.Find(sheet, plan, Defaults(sheet.Place.Book), Complaints, problem => _unread.Add((plan, problem))) is not { } header) continue;
            RemarkOnHidden(sheet, header);
            RemarkOnMerged(sheet, header);
            foreach (var raw in sheet.Rows)
            {
                if (raw.Number <= header.Row || HoldsOnlyResults(raw, header)) continue;
                if (Repeats(raw, header.Headers))
                    Complaints.Add(sheet.Place.At(raw.Number), State.Note, "the headers stand here again; the row was passed over");
                else yield return new Row(header, raw, Complaints);
            }
        }
    }

    /// <summary>Complains of sheets that have the columns of a declared sheet under another name: what stands in them is missing from every leg.</summary>
    /// <param name="plans">The declared sheets.</param>
    /// <param name="passedOver">Names of sheets that are known to hold no data.</param>
    /// <returns>The complaints.</returns>
    public ImmutableArray<Problem> ComplainOfStrays(IReadOnlyList<SheetPlan> plans, IReadOnlyList<string> passedOver) =>
        [.. Strays(plans, passedOver).Select(stray => Complaints.Add(
            stray.Sheet.Place,
            State.Fail,
            $"{stray.Sheet.Name} has the columns of {stray.Plan.Name}, but no sheet is called {stray.Plan.Name}, so it was not read",
            stray.Sheet.Name,
            $"the name {stray.Plan.Name}; hide the sheet if it is not meant"))];

    /// <summary>The sheets that have the columns of a declared sheet under another name.</summary>
    /// <param name="plans">The declared sheets.</param>
    /// <param name="passedOver">Names of sheets that are known to hold no data.</param>
    public IEnumerable<StraySheet> Strays(IReadOnlyList<SheetPlan> plans, IReadOnlyList<string> passedOver) =>
        Others(plans, passedOver).Select(sheet => StraySheet.Of(sheet, plans, Has)).OfType<StraySheet>();

    /// <summary>Notes the sheets that no declared sheet is named like and that are no strays.</summary>
    /// <param name="plans">The declared sheets.</param>
    /// <param name="passedOver">Names of sheets that are known to hold no data.</param>
    public void RemarkOnOthers(IReadOnlyList<SheetPlan> plans, IReadOnlyList<string> passedOver)
    {
        foreach (var sheet in Others(plans, passedOver).Where(sheet => StraySheet.Of(sheet, plans, Has) is null))
        {
            var free = plans.Where(plan => !Has(plan)).Select(plan => plan.Name).ToArray();
            if (HeaderText.Near(HeaderText.Plain(sheet.Name), free) is { } near) Complaints.Add(sheet.Place, State.Caution,
                $"{sheet.Name} is not a sheet that is known, and was not read; did you mean {near}?", sheet.Name, near);
            else if (sheet.Rows.Count > 0) Complaints.Add(sheet.Place, State.Note, $"{sheet.Name} is not a sheet that is known, and was not read", sheet.Name);
        }
    }

    // Hidden sheets are helpers of the book's own and are left alone.
    private IEnumerable<RawSheet> Others(IReadOnlyList<SheetPlan> plans, IReadOnlyList<string> passedOver)
    {
        var known = plans.Select(plan => plan.Name).Concat(passedOver).Select(HeaderText.Plain).ToHashSet(StringComparer.Ordinal);
        return _books.SelectMany(book => book.Sheets).Where(sheet => !sheet.Hidden && !known.Contains(HeaderText.Plain(sheet.Name)));
    }

    // Results of an earlier run beside a leg that was taken out are no leg.
    private static bool HoldsOnlyResults(RawRow row, HeaderMatch header)
    {
        if (header.Results.IsEmpty) return false;
        for (var column = 1; column <= row.Cells.Length; column++)
        {
            if (!row[column].IsBlank && !header.Results.Contains(column)) return false;
        }

        return true;
    }

    // Headers that a list repeats on each of its pages.
    private static bool Repeats(RawRow row, RawRow headers)
    {
        var filled = Enumerable.Range(1, row.Cells.Length).Where(column => !row[column].IsBlank).ToArray();
        return filled.Length > 1 && Array.TrueForAll(filled,
            column => row[column].Kind == CellKind.Text && row[column].Text.Trim().Equals(headers[column].Text.Trim(), StringComparison.OrdinalIgnoreCase));
    }

    private void RemarkOnHidden(RawSheet sheet, HeaderMatch header)
    {
        if (sheet.Hidden) Complaints.Add(sheet.Place, State.Note, $"the sheet {sheet.Name} is hidden; it was read");
        var hidden = sheet.Rows.Where(row => row.Hidden && row.Number > header.Row).Select(row => row.Number).ToArray();
        if (hidden.Length == 0) return;
        Complaints.Add(sheet.Place, State.Note, $"hidden or filtered rows were read: {RowNumbers.Listed(hidden)}");
    }

    private void RemarkOnMerged(RawSheet sheet, HeaderMatch header)
    {
        var spread = sheet.Spread.Where(area => header.Merged?.Contains(area) != true).Select(area => area.Name).ToArray();
        if (spread.Length > 0) Complaints.Add(sheet.Place, State.Note,
            $"the value of cells merged over rows was read in each row: {string.Join(", ", spread.Take(12))}" + (spread.Length > 12 ? " and more" : ""));
    }
}
