using Batch.Books.Cells;

namespace Batch.Books.Headers;

/// <summary>One row of a sheet being read: gives the values of its columns and keeps what could not be read.</summary>
internal sealed class Row(HeaderMatch header, RawRow raw, Complaints complaints)
{
    private readonly List<Problem> _fails = [];

    /// <summary>Where the row is, for the records made from it.</summary>
    public Origin Origin { get; } = new(header.Sheet.Place.ToString(), raw.Number, header.Letters);

    /// <summary>Whether a starred column is missing or could not be read: the row is lost.</summary>
    public bool IsLost { get; private set; }

    /// <summary>The fails of this row so far.</summary>
    public IReadOnlyList<Problem> Fails => _fails;

    /// <summary>The fails, and what stands in a column whose header is not known and was likely meant to be a known one.</summary>
    public IReadOnlyList<Problem> Doubts =>
        header.Suspected.IsEmpty ? _fails : [.. _fails, .. header.Suspected.Where(pair => !raw[pair.Column].IsBlank).Select(pair => pair.Problem)];

    /// <summary>The place of the row.</summary>
    public CellRef Place => header.Sheet.Place.At(raw.Number);

    /// <summary>The columns that are not declared: header as written, number.</summary>
    public ImmutableArray<(int Column, string Header)> Others => header.Others;

    /// <summary>The sheet the row stands in.</summary>
    public RawSheet Sheet => header.Sheet;

    /// <summary>The raw cell of a column number.</summary>
    public RawCell Raw(int column) => raw[column];

    /// <summary>The raw cell of a column; blank where the sheet does not have it.</summary>
    public RawCell Raw(Column column) => header.Placed.TryGetValue(column, out var placed) ? raw[placed.Column] : RawCell.Blank;

    /// <summary>What holds for the cells of a column.</summary>
    public CellSetting Setting(Column column) => header.Placed.TryGetValue(column, out var placed) ? placed.Setting : default;

    /// <summary>The cell of a column; the row where the sheet does not have it.</summary>
    public CellRef At(Column column) => header.Placed.TryGetValue(column, out var placed) ? Place with { Column = placed.Column } : Place;

    /// <summary>The value of a starred column. Where there is none the row is lost and the value is the default of its type.</summary>
    public T? Needed<T>(Column<T> column)
    {
        if (Take(column, out var value)) return value;
        IsLost = true;
        if (header.Missing.TryGetValue(column, out var missing)) _fails.Add(missing);
        else if (Raw(column).IsBlank)
            Fail(column, $"{column.Name} is empty, but every row needs it", column.Words.Length > 0 ? TextReading.Choice(column.Words) : Asked(column));
        return default;
    }

    /// <summary>The text of a starred column; empty where there is none, then the row is lost.</summary>
    public string NeededText(Column<string> column) => Needed(column) ?? "";

    /// <summary>The value of a column; null where the cell is blank or could not be read.</summary>
    public T? Optional<T>(Column<T> column)
        where T : struct => Take(column, out var value) ? value : null;

    /// <summary>The text of a column; empty where the cell is blank or could not be read.</summary>
    public string Text(Column<string> column) => Take(column, out var value) ? value ?? "" : "";

    /// <summary>The value of a column; <paramref name="blank"/> where the cell is blank, null where it could not be read.</summary>
    public T? Take<T>(Column<T> column, T blank)
        where T : class => Raw(column).IsBlank ? blank : Take(column, out var value) ? value : null;

    /// <summary>Complains of a cell of this row; a fail is kept with the row.</summary>
    public Problem Complain(State state, Column column, string text, string expected = "") =>
        Keep(complaints.Add(At(column), state, text, Raw(column).Text, expected));

    /// <summary>Complains of a cell of this row with a fail.</summary>
    public Problem Fail(Column column, string text, string expected = "") => Complain(State.Fail, column, text, expected);

    /// <summary>Complains of the whole row.</summary>
    public Problem ComplainOfRow(State state, string text, string expected = "") => Keep(complaints.Add(Place, state, text, expected: expected));

    /// <summary>Complains of a cell by its column number.</summary>
    public Problem ComplainAt(State state, int column, string text, string expected = "") =>
        Keep(complaints.Add(Place with { Column = column }, state, text, raw[column].Text, expected));

    /// <summary>Gives the row up.</summary>
    public void Lose() => IsLost = true;

    private bool Take<T>(Column<T> column, out T? value)
    {
        value = default;
        if (!header.Placed.TryGetValue(column, out var placed)) return false;
        var cell = raw[placed.Column];
        if (header.Merged?.At(raw.Number, placed.Column) is { } merged)
        {
            _fails.Add(merged);
            return false;
        }

        if (cell.IsBlank) return false;
        if (placed.Blocked is { } blocked)
        {
            _fails.Add(blocked);
            return false;
        }

        if (cell.Kind == CellKind.Error)
        {
            Fail(
                column, cell.Text[0] == '#'
                    ? $"{column.Name} holds the error value {cell.Text}"
                    : $"{column.Name}: {cell.Text}; open the book in a spreadsheet program and save it", Asked(column));
            return false;
        }

        if (cell.Kind == CellKind.Text && cell.Text.Trim() is "\"" or "''" or "\u3003" or "\u2033")
        {
            Fail(column, $"{column.Name} holds a mark that means the same as above, which is not read; write the value itself", Asked(column));
            return false;
        }

        var reading = column.Read(cell, placed.Setting);
        value = reading.Value;
        if (reading.IsGood && AboutColumn(reading.Complaint) is { } about)
            complaints.AddOnceAColumn(At(column), about, State.Caution, $"{column.Name} {reading.Complaint}", cell.Text, reading.Expected);
        else if (reading.Complaint.Length > 0)
            Complain(reading.IsGood ? State.Caution : State.Fail, column, $"{column.Name} {reading.Complaint}", reading.Expected);
        return reading.IsGood;
    }

    /// <summary>What a column holds, as the end of a sentence.</summary>
    private static string Asked(Column column) => char.ToLowerInvariant(column.Meaning[0]) + column.Meaning[1..].TrimEnd('.');

    /// <summary>What a caution is about that holds for the cells of a column as they are written there, so that one says it for all; null for others.</summary>
    private static string? AboutColumn(string complaint) =>
        Array.Find([NumberText.DecimalComma, ClockReading.EndOfDay], about => complaint.StartsWith(about, StringComparison.Ordinal));

    private Problem Keep(Problem problem)
    {
        if (problem.State == State.Fail) _fails.Add(problem);
        return problem;
    }
}
