using Batch.Books.Cells;
using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Books.Units;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>The Speeds sheet: any columns beyond the declared ones are named speeds.</summary>
internal static class SpeedsSheet
{
    /// <summary>The declared columns.</summary>
    public static readonly SheetPlan Plan =
        new("Speeds", "operator", "Named speeds by flap and weight; every further column is a speed, such as VR [kt] or VREF [kt].") { IsOpen = true };

    private static readonly Column<string> Type = Plan.Add(ColumnKinds.Text("Type", "Type", "Type as in Types.", ColumnKinds.Starred));
    private static readonly Column<string> Flap = Plan.Add(ColumnKinds.Text("Flap", "Flap", "Name of the flap setting.", false, "Flaps"));
    private static readonly Column<double> Weight = Plan.Add(ColumnKinds.AboveZero(Quantity.Weight, "Weight", "Weight", "Gross weight.", ColumnKinds.Starred));

    /// <summary>The tables by type and flap.</summary>
    public static ILookup<string, (string Variant, PerformanceTable Table)> Read(Shelf shelf, Register<AircraftType> types)
    {
        var rows = shelf.Rows(Plan).ToArray();
        var names = rows.SelectMany(row => row.Others.Select(other => Speed(other.Header))).Distinct(StringComparer.OrdinalIgnoreCase).ToImmutableArray();
        if (names.IsEmpty) return Array.Empty<(string Type, (string, PerformanceTable) Entry)>().ToLookup(entry => entry.Type, entry => entry.Entry);
        var table = new TableRows(Plan, ["weight [lb]"], [.. names.Select(name => name + " [kt]")], types);
        foreach (var row in rows)
        {
            var type = row.NeededText(Type);
            var known = types.Resolve(row, Type, type);
            var flap = row.Text(Flap);
            double?[] weight = [row.Needed(Weight)];
            var speeds = new double?[names.Length];
            foreach (var (column, header) in row.Others)
            {
                if (Read(row, column, header, shelf.Defaults(row.Place.Book)) is { } speed)
                    speeds[names.IndexOf(Speed(header), StringComparer.OrdinalIgnoreCase)] = speed;
            }

            table.Take(row, type, known is not null, flap, weight, speeds);
        }

        return table.Tables();
    }

    private static string Speed(string header)
    {
        var end = header.IndexOfAny(['[', '(']);
        return (end < 0 ? header : header[..end]).Trim();
    }

    private static double? Read(Row row, int column, string header, UnitDefaults defaults)
    {
        var cell = row.Raw(column);
        if (cell.IsBlank) return null;
        var written = HeaderText.Of(header);
        var unit = written.Unit.Length > 0 ? Quantity.Speed.Find(written.Unit) : defaults.Of(Quantity.Speed);
        if (unit is null || cell.Kind == CellKind.Error)
        {
            row.ComplainAt(State.Fail, column,
                unit is null ? $"[{written.Unit}] is not a unit known for a speed" : $"{Speed(header)} holds the error value {cell.Text}",
                Quantity.Speed.KnownUnits);
            return null;
        }

        var reading = QuantityReading.Read(cell, new CellSetting(unit, row.Sheet.DecimalComma), Quantity.Speed);
        if (reading.IsGood && reading.Value <= 0) reading = Reading<double>.Bad("is not above zero", "a number above zero");
        if (reading.Complaint.Length > 0)
            row.ComplainAt(reading.IsGood ? State.Caution : State.Fail, column, $"{Speed(header)} {reading.Complaint}", reading.Expected);
        return reading.IsGood ? reading.Value : null;
    }
}
