using Batch.Books.Headers;
using Batch.Books.Links;
using Batch.Flight.Fleet;

namespace Batch.Books.Sheets;

/// <summary>Gathers the rows of the performance tables of one sheet and makes a table of each group that has no fault.</summary>
internal sealed class TableRows(SheetPlan plan, ImmutableArray<string> axes, ImmutableArray<string> values, Register<AircraftType> types)
{
    private readonly Dictionary<string, Group> _groups = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _broken = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<Origin, Row> _rows = [];

    /// <summary>Takes one row in.</summary>
    /// <param name="row">The row, read whole.</param>
    /// <param name="type">Its type.</param>
    /// <param name="known">Whether the type is known.</param>
    /// <param name="variant">Setting or flap; empty where there is one table a type.</param>
    /// <param name="keys">Keys in axis order; null where the cell is blank.</param>
    /// <param name="numbers">Values in order; null where the cell is blank.</param>
    public void Take(Row row, string type, bool known, string variant, ReadOnlySpan<double?> keys, ReadOnlySpan<double?> numbers)
    {
        types.Doubt(type, row.Fails);
        if (!known || type.Length == 0) return;
        var name = type + "\n" + variant;
        if (row.Fails.Count > 0)
        {
            // A table with a hole would be bridged in silence.
            _broken.Add(name);
            return;
        }

        if (!_groups.TryGetValue(name, out var group)) _groups.Add(name, group = new Group(type, variant, []));
        group.Rows.Add(new TableRow(Numbers(keys), Numbers(numbers), row.Origin));
        _rows.TryAdd(row.Origin, row);
    }

    /// <summary>The tables by type and variant, in the order in which the book first names them.</summary>
    public ILookup<string, (string Variant, PerformanceTable Table)> Tables()
    {
        var tables = new List<(string Type, string Variant, PerformanceTable Table)>();
        foreach (var (name, group) in _groups)
        {
            if (_broken.Contains(name)) continue;
            var kept = Enumerable.Range(0, values.Length).Where(index => group.Rows.Exists(row => !double.IsNaN(row.Values[index]))).ToArray();
            if (kept.Length == 0) continue;
            var title = $"{plan.Name} of {group.Type}" + (group.Variant.Length > 0 ? ", " + group.Variant : "");
            var rows = kept.Length == values.Length
                ? group.Rows
                : [.. group.Rows.Select(row => row with { Values = [.. kept.Select(index => row.Values[index])] })];
            if (PerformanceTable.TryCreate(title, axes, [.. kept.Select(index => values[index])], rows, out var table, out var faults) && table is not null)
            {
                tables.Add((group.Type, group.Variant, table));
                continue;
            }

            foreach (var fault in faults)
            {
                var row = _rows.GetValueOrDefault(fault.Origin) ?? _rows[group.Rows[0].Origin];
                types.Doubt(group.Type, [row.ComplainOfRow(State.Fail, fault.Text)]);
            }
        }

        return tables.ToLookup(entry => entry.Type, entry => (entry.Variant, entry.Table), StringComparer.OrdinalIgnoreCase);
    }

    private static ImmutableArray<double> Numbers(ReadOnlySpan<double?> numbers)
    {
        var array = ImmutableArray.CreateBuilder<double>(numbers.Length);
        foreach (var number in numbers) array.Add(number ?? double.NaN);
        return array.MoveToImmutable();
    }

    private sealed record Group(string Type, string Variant, List<TableRow> Rows);
}
