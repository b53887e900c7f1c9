using System.Globalization;

namespace Batch.Flight.Fleet;

/// <summary>What is wrong with the rows of a performance table.</summary>
internal static class TableFaults
{
    /// <summary>All faults, in row order.</summary>
    /// <param name="name">What the table is.</param>
    /// <param name="axisNames">Names of the axes.</param>
    /// <param name="valueNames">Names of the values.</param>
    /// <param name="rows">The rows, each with a key for each axis and a value for each value name.</param>
    public static ImmutableArray<TableFault> Of(string name, ImmutableArray<string> axisNames, ImmutableArray<string> valueNames, IReadOnlyList<TableRow> rows)
    {
        if (rows.Count == 0) return [new TableFault($"{name} has no rows.", Origin.None)];
        var faults = ImmutableArray.CreateBuilder<TableFault>();
        bool[] axisGiven = [.. Enumerable.Range(0, axisNames.Length).Select(axis => rows.Any(row => !double.IsNaN(row.Keys[axis])))];
        bool[] valueGiven = [.. Enumerable.Range(0, valueNames.Length).Select(value => rows.Any(row => !double.IsNaN(row.Values[value])))];
        var seen = new Dictionary<string, TableRow>(StringComparer.Ordinal);
        foreach (var row in rows)
        {
            var before = faults.Count;
            for (var axis = 0; axis < axisNames.Length; axis++)
            {
                if (double.IsInfinity(row.Keys[axis]))
                    faults.Add(new TableFault($"{name}: the {Split(axisNames[axis]).Name} is not a finite number.", row.Origin));
                else if (axisGiven[axis] && double.IsNaN(row.Keys[axis]))
                    faults.Add(new TableFault(
                        $"{name}: this row gives no {Split(axisNames[axis]).Name} while others do; give it in every row or in none.", row.Origin));
            }

            for (var value = 0; value < valueNames.Length; value++)
            {
                if (double.IsInfinity(row.Values[value]))
                    faults.Add(new TableFault($"{name}: the {Split(valueNames[value]).Name} is not a finite number.", row.Origin));
                else if (valueGiven[value] && double.IsNaN(row.Values[value]))
                    faults.Add(new TableFault(
                        $"{name}: this row gives no {Split(valueNames[value]).Name} while others do; give it in every row or in none.", row.Origin));
            }

            if (faults.Count == before && !seen.TryAdd(string.Join('/', row.Keys.Select(key => (key + 0.0).ToString("R", CultureInfo.InvariantCulture))), row))
                faults.Add(new TableFault($"{name}: a second row for {Place(axisNames, row)}; keep one of the two.", row.Origin));
        }

        return faults.ToImmutable();
    }

    /// <summary>A name such as <c>weight [lb]</c> parted into <c>weight</c> and <c> lb</c>; the unit is empty where there is none.</summary>
    /// <param name="nameWithUnit">The name.</param>
    public static (string Name, string Unit) Split(string nameWithUnit)
    {
        var bracket = nameWithUnit.IndexOf('[', StringComparison.Ordinal);
        return bracket < 0 ? (nameWithUnit, "") : (nameWithUnit[..bracket].TrimEnd(), " " + nameWithUnit[(bracket + 1)..].TrimEnd(']', ' '));
    }

    private static string Place(ImmutableArray<string> axisNames, TableRow row)
    {
        var parts = Enumerable.Range(0, axisNames.Length)
            .Where(axis => !double.IsNaN(row.Keys[axis]))
            .Select(axis => string.Create(CultureInfo.InvariantCulture, $"{Split(axisNames[axis]).Name} {row.Keys[axis]:0.##}{Split(axisNames[axis]).Unit}"))
            .ToArray();
        return parts.Length == 0 ? "the same condition" : string.Join(", ", parts);
    }
}
