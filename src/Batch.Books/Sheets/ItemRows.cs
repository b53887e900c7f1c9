using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Units;

namespace Batch.Books.Sheets;

/// <summary>The rows of a sheet of items: each row is an item with a value of its own kind.</summary>
internal sealed class ItemRows(Dictionary<string, Column> known)
{
    private readonly Dictionary<Column, (Row Row, Column<string> ValueColumn, HeaderText Written)> _rows = [];
    private readonly List<(Column Item, int Book, Row Row, Column<string> ValueColumn)> _all = [];
    private readonly SortedDictionary<string, string> _items = new(StringComparer.OrdinalIgnoreCase);
    private readonly SortedDictionary<string, string> _cells = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Takes a row in; complains of an item that stands twice or is spelled like a known one.</summary>
    public void Take(Row row, Column<string> itemColumn, Column<string> valueColumn)
    {
        var name = row.Raw(itemColumn).Text;
        if (row.Raw(itemColumn).IsBlank && row.Raw(valueColumn).IsBlank) return;
        if (row.NeededText(itemColumn).Length == 0) return;
        var written = HeaderText.Of(name);
        Note(row, itemColumn, valueColumn);
        if (known.TryGetValue(written.Name, out var item))
        {
            _all.Add((item, row.Place.Book, row, valueColumn));
            if (row.Raw(valueColumn).IsBlank) return;
            if (!_rows.TryAdd(item, (row, valueColumn, written)) && !item.Name.EndsWith(" unit", StringComparison.Ordinal))
            {
                row.Complain(State.Caution, itemColumn, $"{item.Name} stands twice; the row {_rows[item].Row.Place} is used, this one is not");
            }

            return;
        }

        if (HeaderText.Near(written.Name, known.Values.Select(declared => declared.Name)) is not { } meant) return;
        row.Complain(State.Caution, itemColumn, $"{name} is not an item that is known; did you mean {meant}?", meant);
    }

    /// <summary>Keeps a row as written.</summary>
    public void Note(Row row, Column<string> itemColumn, Column<string> valueColumn)
    {
        var name = row.Raw(itemColumn).Text;
        if (_items.TryAdd(name, row.Raw(valueColumn).Text)) _cells.Add(name, row.At(valueColumn).ToString());
    }

    /// <summary>Complains of the value of an item with a caution.</summary>
    public void Doubt(Column item, string text, string expected)
    {
        var (row, valueColumn, _) = _rows[item];
        row.Complain(State.Caution, valueColumn, text, expected);
    }

    /// <summary>The fails of all rows: while there is one, the operator's own limits are not all known.</summary>
    public IEnumerable<Problem> Fails => _all.Select(entry => entry.Row).Distinct().SelectMany(row => row.Fails);

    /// <summary>Number of the book an item stands in; 0 where it stands nowhere.</summary>
    public int BookOf(Column item) => _rows.TryGetValue(item, out var place) ? place.Row.Place.Book : 0;

    /// <summary>The text of an item; empty where there is none.</summary>
    public string Text(Column<string> item) => Read(item, UnitDefaults.None, out var value) ? value ?? "" : "";

    /// <summary>The words of an item; empty where there is none.</summary>
    public ImmutableArray<string> List(Column<ImmutableArray<string>> item) => Read(item, UnitDefaults.None, out var value) ? value : [];

    /// <summary>The number of an item, in the unit it is kept in; null where there is none.</summary>
    public double? Number(Column<double> item) => Value(item, UnitDefaults.None);

    /// <summary>The value of an item; null where there is none.</summary>
    public T? Value<T>(Column<T> item, UnitDefaults defaults)
        where T : struct => Read(item, defaults, out var value) ? value : null;

    /// <summary>The unit words that the books set under an item; complains of those that are none.</summary>
    public IEnumerable<(int Book, string Word)> UnitWords(Column<string> item, Quantity quantity)
    {
        foreach (var (_, book, row, valueColumn) in _all.Where(entry => entry.Item == item))
        {
            var word = row.Raw(valueColumn).Text;
            if (word.Length == 0) continue;
            if (quantity.Find(word) is not null) yield return (book, word);
            else row.Fail(valueColumn, $"{item.Name} is not a unit known for {quantity.Name}", quantity.KnownUnits);
        }
    }

    /// <summary>Every item as written.</summary>
    public ImmutableSortedDictionary<string, string> Items() => _items.ToImmutableSortedDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>The value cell of every item.</summary>
    public ImmutableSortedDictionary<string, string> Cells() => _cells.ToImmutableSortedDictionary(StringComparer.OrdinalIgnoreCase);

    private bool Read<T>(Column<T> item, UnitDefaults defaults, out T? value)
    {
        value = default;
        if (!_rows.TryGetValue(item, out var place)) return false;
        var (row, valueColumn, written) = place;
        var cell = row.Raw(valueColumn);
        var unit = item.Quantity is null ? null : defaults.Of(item.Quantity);
        if (item.Quantity is { } quantity && written.Unit.Length > 0)
        {
            unit = quantity.Find(written.Unit);
            if (unit is null)
            {
                row.Fail(valueColumn, $"[{written.Unit}] is not a unit known for {item.Name}", quantity.KnownUnits);
                return false;
            }
        }

        if (cell.Kind == CellKind.Error)
        {
            row.Fail(valueColumn, $"{item.Name} holds the error value {cell.Text}", item.Meaning);
            return false;
        }

        var reading = item.Read(cell, new CellSetting(unit, row.Sheet.DecimalComma));
        value = reading.Value;
        if (reading.Complaint.Length > 0)
            row.Complain(reading.IsGood ? State.Caution : State.Fail, valueColumn, $"{item.Name} {reading.Complaint}", reading.Expected);
        return reading.IsGood;
    }
}
