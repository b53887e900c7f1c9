using System.Collections.Frozen;
using Batch.Books.Cells;
using Batch.Books.Units;

namespace Batch.Books.Headers;

/// <summary>The header row of one sheet: where the declared columns stand and which columns are not declared.</summary>
internal sealed class HeaderMatch
{
    /// <summary>Rows in which the header row is sought.</summary>
    public const int RowsSearched = 50;

    private HeaderMatch(RawSheet sheet, SheetPlan plan) => (Sheet, Plan) = (sheet, plan);

    /// <summary>The sheet.</summary>
    public RawSheet Sheet { get; }

    /// <summary>What it is matched with.</summary>
    public SheetPlan Plan { get; }

    /// <summary>Row of the headers.</summary>
    public int Row { get; private init; }

    /// <summary>The header row.</summary>
    public required RawRow Headers { get; init; }

    /// <summary>Places of the declared columns that are there.</summary>
    public FrozenDictionary<Column, PlacedColumn> Placed { get; private set; } = FrozenDictionary<Column, PlacedColumn>.Empty;

    /// <summary>The complaints about starred columns that are not there.</summary>
    public Dictionary<Column, Problem> Missing { get; } = [];

    /// <summary>Columns that are not declared: number, header as written.</summary>
    public ImmutableArray<(int Column, string Header)> Others { get; private set; } = [];

    /// <summary>Columns that were likely meant to be declared ones, with the complaint about each; they are not read.</summary>
    public ImmutableArray<(int Column, Problem Problem)> Suspected { get; private set; } = [];

    /// <summary>Columns that an earlier run computed; they are not read.</summary>
    public ImmutableArray<int> Results { get; private set; } = [];

    /// <summary>Column letters by property name, shared by the origins of all rows.</summary>
    public ImmutableDictionary<string, string> Letters { get; private set; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>Amounts merged over several rows; they are not read.</summary>
    public MergedAmounts? Merged { get; private set; }

    /// <summary>
    /// Finds the header row, places the columns and complains of what is missing, doubled, near or unknown; null where there is no header row.
    /// </summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="plan">What it is matched with.</param>
    /// <param name="defaults">The book's default units.</param>
    /// <param name="complaints">Where complaints go.</param>
    /// <param name="unread">Told of the complaint where there is no header row; null for nobody.</param>
    public static HeaderMatch? Find(RawSheet sheet, SheetPlan plan, UnitDefaults defaults, Complaints complaints, Action<Problem>? unread = null)
    {
        var known = new Dictionary<string, Column>(StringComparer.Ordinal);
        foreach (var column in plan.Columns)
        {
            known.TryAdd(HeaderText.Plain(column.Name), column);
            foreach (var alias in column.Aliases) known.TryAdd(HeaderText.Plain(alias), column);
        }

        var best = (Row: (RawRow?)null, Score: 0);
        foreach (var row in sheet.Rows.Take(RowsSearched))
        {
            var score = row.Cells.Where(cell => cell.Kind == CellKind.Text).Select(cell => known.GetValueOrDefault(HeaderText.Of(cell.Text).Name))
                .OfType<Column>().Distinct().Count();
            if (score > best.Score) best = (row, score);
        }

        if (best.Row is not { } headers || best.Score * 4 < plan.Columns.Count(column => column.IsRequired))
        {
            if (sheet.Rows.Count == 0) return null;
            var problem = complaints.Add(
                sheet.Place,
                State.Fail,
                $"{plan.Name} has no header row in its first {RowsSearched} rows; its rows could not be read{Separator(sheet)}",
                expected: string.Join(", ", plan.Columns.Where(column => column.IsRequired).Select(column => column.Name)));
            unread?.Invoke(problem);
            return null;
        }

        var match = new HeaderMatch(sheet, plan) { Row = headers.Number, Headers = headers };
        match.Place(headers, known, defaults, complaints);
        return match;
    }

    // A csv file with a delimiter that is not known has most of a row in its first cell.
    private static string Separator(RawSheet sheet) =>
        sheet.Rows.Take(RowsSearched).Count(row => row[1].Text.Contains('|', StringComparison.Ordinal)) * 2 > Math.Min(sheet.Rows.Count, RowsSearched)
            ? "; its cells are parted by |: save it with commas, semicolons or tabs"
            : "";

    private void Place(RawRow headers, Dictionary<string, Column> known, UnitDefaults defaults, Complaints complaints)
    {
        var placed = new Dictionary<Column, PlacedColumn>();
        var others = ImmutableArray.CreateBuilder<(int Column, string Header)>();
        // Where a column stands under its own name, another that could be meant by it is one of the user's: a Sex beside a Category, a Dep beside a From.
        var named = headers.Cells.Select(cell => HeaderText.Of(cell.Text).Name)
            .Where(name => known.TryGetValue(name, out var column) && IsOwnName(name, column)).ToHashSet(StringComparer.Ordinal);
        for (var number = 1; number <= headers.Cells.Length; number++)
        {
            var cell = headers[number];
            if (cell.IsBlank) continue;
            if (cell.Text.StartsWith(Sheets.AllSheets.ResultPrefix, StringComparison.Ordinal))
            {
                Results = Results.Add(number);
                continue;
            }

            var at = Sheet.Place.At(Row, number);
            var text = HeaderText.Of(cell.Text);
            if (!known.TryGetValue(text.Name, out var column) || (!IsOwnName(text.Name, column) && named.Contains(HeaderText.Plain(column.Name))))
            {
                others.Add((number, cell.Text));
            }
            else if (placed.TryGetValue(column, out var first))
            {
                complaints.Add(at, State.Caution,
                    $"{column.Name} stands twice in the header row; column {CellRef.Letters(first.Column)} is read, this one is not", cell.Text);
            }
            else
            {
                placed.Add(column, new PlacedColumn(number, new CellSetting(Unit(column, text, defaults, out var isUnknown), Sheet.DecimalComma),
                    isUnknown ? UnknownUnit(column, text, at, cell.Text, complaints) : null));
            }
        }

        Placed = placed.ToFrozenDictionary();
        Others = others.ToImmutable();
        Letters = placed.ToImmutableDictionary(pair => pair.Key.Field, pair => CellRef.Letters(pair.Value.Column), StringComparer.Ordinal);
        ComplainOfOthers(complaints);
        ComplainOfMissing(complaints);
        Merged = MergedAmounts.Of(this, complaints);
        MixedUnits.Look(this, complaints);
    }

    private static bool IsOwnName(string name, Column column) => name == HeaderText.Plain(column.Name);

    private static UnitWord? Unit(Column column, HeaderText text, UnitDefaults defaults, out bool isUnknown)
    {
        isUnknown = false;
        if (column.Quantity is not { } quantity) return null;
        if (text.Aside.Length > 0 && text.Unit.Length == 0 && quantity.Find(text.Aside) is { } aside) return aside;
        // A column called FL holds flight levels.
        if (text.Unit.Length == 0 && quantity.Find(text.Name) is { } named) return named;
        if (text.Unit.Length == 0) return defaults.Of(quantity);
        var unit = quantity.Find(text.Unit);
        isUnknown = unit is null;
        return unit;
    }

    private static Problem UnknownUnit(Column column, HeaderText text, CellRef at, string read, Complaints complaints) => complaints.Add(
        at, State.Fail, $"[{text.Unit}] is not a unit known for {column.Name}; the column could not be read", read, column.Quantity?.KnownUnits ?? "");

    private void ComplainOfOthers(Complaints complaints)
    {
        var free = Plan.Columns.Where(column => !Placed.ContainsKey(column)).ToArray();
        var plain = new List<string>();
        foreach (var (number, header) in Others)
        {
            var (name, names) = (HeaderText.Of(header).Name, free.Select(column => column.Name).ToArray());
            if ((HeaderText.Near(name, names) ?? HeaderText.Long(name, names)) is { } meant)
            {
                Suspected = Suspected.Add((number, complaints.Add(Sheet.Place.At(Row, number), State.Caution,
                    $"{header} is not a column of {Plan.Name} and was not read; did you mean {meant}?", header, meant)));
            }
            else if (!Plan.IsOpen)
            {
                plain.Add($"{header} ({CellRef.Letters(number)})");
            }
        }

        if (plain.Count == 0) return;
        var kept = Plan.Name == "Legs" ? "kept for the templates" : "not used";
        complaints.Add(Sheet.Place.At(Row), State.Note, $"columns that are not known here are {kept}: {string.Join(", ", plain)}");
    }

    private void ComplainOfMissing(Complaints complaints)
    {
        foreach (var column in Plan.Columns.Where(column => column.IsRequired && !Placed.ContainsKey(column)))
        {
            var headers = Others.Select(other => other.Header);
            var near = HeaderText.Near(HeaderText.Plain(column.Name), headers);
            Missing.Add(column, complaints.Add(
                Sheet.Place.At(Row),
                State.Fail,
                $"{Plan.Name} has no column {column.Name}, which every row needs" + (near is null ? "" : $"; is it the one called {near}?"),
                expected: column.Name));
        }
    }
}
