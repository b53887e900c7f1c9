using System.Globalization;
using Batch.Books.Cells;
using Batch.Books.Editing;
using Batch.Books.Headers;

namespace Batch.Books.Import;

/// <summary>Brings rows of a list into a sheet: adds those that are not there, compares those that are.</summary>
internal sealed class SheetImport
{
    /// <summary>How far apart two numbers may be and still say the same, in the unit kept: half a foot, a thousandth of a degree is some 100 m.</summary>
    private const double Enough = 0.5;

    private const double EnoughDeg = 0.0005;

    private readonly RawSheet _sheet;
    private readonly HeaderMatch _header;
    private readonly RowTarget _target;
    private readonly ImmutableArray<Column> _keys;
    private readonly ILookup<string, RawRow> _rows;
    private readonly ImportNotes _notes;
    private int _last;

    /// <summary>Prepares a sheet.</summary>
    /// <param name="sheet">The sheet as read.</param>
    /// <param name="header">Its headers.</param>
    /// <param name="target">Takes the changes.</param>
    /// <param name="keys">The columns that name a row.</param>
    /// <param name="notes">What there is to say.</param>
    public SheetImport(RawSheet sheet, HeaderMatch header, RowTarget target, ImmutableArray<Column> keys, ImportNotes notes)
    {
        (_sheet, _header, _target, _keys, _notes) = (sheet, header, target, keys, notes);
        var rows = sheet.Rows.Where(row => row.Number > header.Row).ToArray();
        _rows = rows.ToLookup(row => string.Join('|', keys.Select(key => Said(Value(row, key)))), StringComparer.OrdinalIgnoreCase);
        _last = rows.Length > 0 ? rows[^1].Number : header.Row;
    }

    /// <summary>The last filled row, the added ones included.</summary>
    public int Last => _last;

    /// <summary>Brings rows in.</summary>
    /// <param name="rows">The rows.</param>
    /// <param name="updates">Whether cells that differ are set to what the list says.</param>
    /// <exception cref="BookException">The sheet has no room for more rows.</exception>
    public ImportedSheet Bring(IEnumerable<ImportRow> rows, bool updates)
    {
        var added = ImmutableArray.CreateBuilder<string>();
        var differences = ImmutableArray.CreateBuilder<string>();
        var (same, updated) = (0, 0);
        foreach (var row in rows)
        {
            if (Find(row) is not { } there)
            {
                Add(row);
                added.Add(row.Label);
                continue;
            }

            var before = differences.Count;
            foreach (var value in row.Values) updated += Compare(row, value, there, differences, updates) ? 1 : 0;
            if (differences.Count == before) same++;
        }

        return new ImportedSheet(_sheet.Name, added.ToImmutable(), same, differences.ToImmutable(), updated);
    }

    // The same ident may stand at two places: then the row at this place is meant.
    private RawRow? Find(ImportRow row)
    {
        var named = _rows[string.Join('|', _keys.Select(
            key => Said(row.Values.First(value => value.Column == key) is var value && value.Number is { } number ? number : value.Text)))].ToArray();
        if (named.Length == 0 || _header.Plan.Name != "Fixes") return named.FirstOrDefault();
        const double SamePlaceDeg = 0.1;
        return Array.Find(named, there => row.Values.Where(value => value.Column.Name is "Latitude" or "Longitude").All(value =>
            Value(there, value.Column) is not double place || value.Number is not { } number || Math.Abs(place - number) < SamePlaceDeg));
    }

    private void Add(ImportRow row)
    {
        if (++_last > SheetText.LastRow) throw new BookException($"{_sheet.Place} has no room for more rows");
        foreach (var value in row.Values)
        {
            if (Place(value.Column) is { } placed) _target.Put(_last, placed.Column, Written(value, placed));
        }
    }

    private bool Compare(ImportRow row, ImportValue value, RawRow there, ImmutableArray<string>.Builder differences, bool updates)
    {
        if (Place(value.Column) is not { } placed || IsSame(value, there, placed)) return false;
        var at = _sheet.Place.At(there.Number, placed.Column);
        var isFormula = _target.HasFormula(there.Number, placed.Column);
        var has = there[placed.Column].IsBlank ? "nothing" : there[placed.Column].Text;
        differences.Add($"{at}  {row.Label} {value.Column.Name}: the book has {has}, the list {Shown(value, placed)}{(isFormula && updates ? "; it is a formula and was left alone" : "")}");
        if (!updates || isFormula) return false;
        _target.Put(there.Number, placed.Column, Written(value, placed));
        return true;
    }

    private bool IsSame(ImportValue value, RawRow there, PlacedColumn placed)
    {
        var has = Value(there, value.Column);
        if (value.Number is { } number)
            return has is double known && Math.Abs(known - number) <= (value.Column.Name is "Latitude" or "Longitude" ? EnoughDeg : Enough);
        return has is not null && Said(has).Equals(Said(value.Column.ValueOf(RawCell.OfText(value.Text), placed.Setting)), StringComparison.OrdinalIgnoreCase);
    }

    private object? Value(RawRow row, Column column) =>
        _header.Placed.TryGetValue(column, out var placed) && !row[placed.Column].IsBlank && placed.Blocked is null
            ? column.ValueOf(row[placed.Column], placed.Setting)
            : null;

    private PlacedColumn? Place(Column column)
    {
        if (_header.Placed.TryGetValue(column, out var placed) && placed.Blocked is null) return placed;
        _notes.Say($"{_sheet.Place} has no column {column.Name} that can be used; what the list says of it was not taken");
        return null;
    }

    private static CellValue Written(ImportValue value, PlacedColumn placed) =>
        value.Number is null ? CellValue.Of(value.Text) : CellValue.Of(InUnit(value, placed));

    private static string Shown(ImportValue value, PlacedColumn placed) =>
        value.Number is null ? value.Text : InUnit(value, placed)?.ToString("0.######", CultureInfo.InvariantCulture) ?? "";

    private static double? InUnit(ImportValue value, PlacedColumn placed)
    {
        if (value.Number is not { } number
            || value.Column.Quantity is not { } quantity
            || placed.Setting.Unit is not { } unit
            || unit.Dimension != quantity.Kept.Dimension) return value.Number;
        return unit == quantity.Kept ? number : Math.Round(quantity.Kept.To(unit, number), 2);
    }

    private static string Said(object? value) => value switch
    {
        null => "",
        double number => number.ToString("0.######", CultureInfo.InvariantCulture),
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };
}
