using System.Globalization;
using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Reads performance tables and keeps where a value was taken at a table's edge, the furthest query for each edge.</summary>
internal sealed class ProfileTableEdges(bool mayUse)
{
    private const double SameKey = 1e-9;

    /// <summary>Whether the last query that was refused left its table by its weight.</summary>
    public bool IsByWeight { get; private set; }

    private readonly List<(PerformanceTable Table, TableReading Reading)> _used = [];

    /// <summary>One sentence for each edge used, in the order first met.</summary>
    public ImmutableArray<string> Sentences => [.. _used.Select(use => Taken(use.Table, use.Reading))];

    /// <summary>
    /// Reads a table. Outside it, where edges may be used, the edge is taken and kept. A cumulative table (climb, descent) is never taken at its upper edge,
    /// since the climb beyond it would count for nothing; below its first altitude its values fall to zero at sea level, and below sea level they stay there.
    /// </summary>
    /// <param name="table">The table.</param>
    /// <param name="cumulativeAxis">The altitude axis of a cumulative table, its innermost; -1 for other tables.</param>
    /// <param name="keys">The query; overwritten with the edges used.</param>
    /// <param name="values">Filled with the values.</param>
    /// <returns>What is wrong, as a sentence; null where the values may be used.</returns>
    public string? Read(PerformanceTable table, int cumulativeAxis, Span<double> keys, Span<double> values)
    {
        Span<bool> isAtEdge = stackalloc bool[keys.Length];
        isAtEdge.Clear();
        while (true)
        {
            var reading = table.Read(keys, values);
            if (reading.IsInside) return null;
            if (reading.Axis == cumulativeAxis && reading.Asked < reading.Edge)
            {
                if (reading.Edge <= 0) return null;
                var share = Math.Max(0, reading.Asked / reading.Edge);
                for (var value = 0; value < values.Length; value++) values[value] *= share;
                return null;
            }

            // A query that meant the edge itself and missed it by rounding.
            if (Math.Abs(reading.Asked - reading.Edge) <= SameKey * Math.Max(1, Math.Abs(reading.Edge)))
            {
                keys[reading.Axis] = reading.Edge;
                continue;
            }

            if (!mayUse || reading.Axis == cumulativeAxis)
            {
                IsByWeight = IsWeight(table, reading);
                return Refusal(table, reading);
            }

            // Curves that share no key on this axis: the edge of the one lies outside the other, and each was read at its own.
            if (isAtEdge[reading.Axis]) return null;
            isAtEdge[reading.Axis] = true;
            Keep(table, reading);
            keys[reading.Axis] = reading.Edge;
        }
    }

    /// <summary>Whether a reading left its table by its weight.</summary>
    /// <param name="table">The table.</param>
    /// <param name="reading">A reading of it that is not inside.</param>
    public static bool IsWeight(PerformanceTable table, TableReading reading) => PerformanceTable.NameOf(table.AxisNames[reading.Axis])
        .StartsWith("weight", StringComparison.OrdinalIgnoreCase);

    /// <summary>What was done with a reading that may be taken at the edge, as a sentence.</summary>
    /// <param name="table">The table.</param>
    /// <param name="reading">A reading of it that is not inside.</param>
    public static string Taken(PerformanceTable table, TableReading reading) => table.Sentence(reading) + "; the value at the edge was taken.";

    /// <summary>Why a reading cannot be used, as a sentence; where the weight is outside, with what to do.</summary>
    /// <param name="table">The table.</param>
    /// <param name="reading">A reading of it that is not inside.</param>
    public static string Refusal(PerformanceTable table, TableReading reading)
    {
        if (!IsWeight(table, reading)) return table.Sentence(reading) + ".";
        var over = reading.Asked - reading.Edge;
        return over > 0
            ? string.Create(CultureInfo.InvariantCulture,
                $"The weight of {Math.Ceiling(reading.Asked):#,##0} lb is {Math.Ceiling(over):#,##0} lb more than {table.Name} goes up to ({reading.Edge:#,##0} lb): take load or fuel off, or give the table heavier rows.")
            : string.Create(CultureInfo.InvariantCulture,
                $"The weight of {Math.Floor(reading.Asked):#,##0} lb is {Math.Ceiling(-over):#,##0} lb less than {table.Name} begins at ({reading.Edge:#,##0} lb): give the table lighter rows.");
    }

    private void Keep(PerformanceTable table, TableReading reading)
    {
        for (var index = 0; index < _used.Count; index++)
        {
            var (known, before) = _used[index];
            if (!ReferenceEquals(known, table) || before.Axis != reading.Axis || before.Asked < before.Edge != reading.Asked < reading.Edge) continue;
            if (Math.Abs(reading.Asked - reading.Edge) > Math.Abs(before.Asked - before.Edge)) _used[index] = (table, reading);
            return;
        }

        _used.Add((table, reading));
    }
}
