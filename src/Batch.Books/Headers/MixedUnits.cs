using Batch.Books.Cells;
using Batch.Books.Units;

namespace Batch.Books.Headers;

/// <summary>
/// Columns of weights or fuel in which some cells say a unit of their own and others none, or that have no unit beside columns of the sheet that name another.
/// The bare cells are read in the unit of the column, and whether that was meant is asked, unless the header itself names the unit.
/// </summary>
internal static class MixedUnits
{
    /// <summary>Complains of the bare cells, once a column.</summary>
    /// <param name="header">The headers.</param>
    /// <param name="complaints">Where complaints go.</param>
    public static void Look(HeaderMatch header, Complaints complaints)
    {
        foreach (var (column, placed) in header.Placed)
        {
            if (column.Quantity is not { Role: UnitRole.Weight or UnitRole.Fuel } quantity || placed.Blocked is not null) continue;
            if (HeaderText.Of(header.Headers[placed.Column].Text) is not { Unit: "", Aside: "" }) continue;
            var unit = placed.Setting.Unit ?? quantity.Kept;
            var cells = header.Sheet.Rows.Where(row => row.Number > header.Row).Select(row => (row.Number, Cell: row[placed.Column])).ToArray();
            var own = cells.Select(cell => Own(cell.Cell, quantity))
                .FirstOrDefault(own => own is not null && (own.Dimension, own.Factor) != (unit.Dimension, unit.Factor));
            var (beside, where) = Beside(header, quantity.Role, unit);
            if ((beside ?? own) is not { } other) continue;
            foreach (var (row, cell) in cells.Where(cell => IsBare(cell.Cell) || (beside is not null && IsBareExtra(cell.Cell))))
                complaints.AddOnceAColumn(header.Sheet.Place.At(row, placed.Column), "unit", State.Caution,
                    $"{column.Name} has no unit here and is read in {unit.Word}, but {(beside is null ? "other cells of the column say" : where + " is in")} {other.Word}",
                    cell.Text, $"a number with its unit, such as {cell.Text} {other.Word} or {cell.Text} {unit.Word}");
        }
    }

    // The unit that the header of another column for the like names, where it is another one.
    private static (UnitWord? Unit, string Where) Beside(HeaderMatch header, UnitRole role, UnitWord unit) =>
        header.Placed
            .Where(pair => pair.Key.Quantity?.Role == role
                && HeaderText.Of(header.Headers[pair.Value.Column].Text).Unit.Length > 0
                && pair.Value.Setting.Unit is { } named
                && (named.Dimension, named.Factor) != (unit.Dimension, unit.Factor))
            .OrderBy(pair => pair.Value.Column)
            .Select(pair => (pair.Value.Setting.Unit, pair.Key.Name))
            .FirstOrDefault((null, ""));

    private static UnitWord? Own(RawCell cell, Quantity quantity) =>
        cell.Kind == CellKind.Text && NumberText.Split(cell.Text) is { Number.Length: > 0, Unit: { Length: > 0 } word } ? quantity.Find(word) : null;

    // Nothing weighs nothing in any unit.
    private static bool IsBare(RawCell cell) => cell.Kind switch
    {
        CellKind.Number => cell.Number != 0,
        CellKind.Text => NumberText.Split(cell.Text) is { Number.Length: > 0, Unit.Length: 0 },
        CellKind.Blank or CellKind.Boolean or CellKind.Error => false,
    };

    // The extra of a fuel plan, such as minimum+200.
    private static bool IsBareExtra(RawCell cell) =>
        cell.Kind == CellKind.Text
            && cell.Text.LastIndexOf('+') is > 0 and var plus
            && NumberText.Split(cell.Text[(plus + 1)..].Trim()) is { Number.Length: > 0, Unit.Length: 0 };
}
