using System.Globalization;
using System.Runtime.CompilerServices;

namespace Batch.Flight.Fleet;

/// <summary>
/// A performance table of any number of axes with multilinear interpolation. Curves may be ragged: an inner axis may end earlier for some outer keys
/// (a heavy aircraft that cannot reach the highest level). Immutable; may be read from several threads at once.
/// </summary>
public sealed class PerformanceTable
{
    private readonly ImmutableArray<TableAxis> _axes;
    private readonly double[] _values;
    private readonly ImmutableArray<ImmutableArray<double>> _keys;

    private PerformanceTable(string name, ImmutableArray<string> axisNames, ImmutableArray<string> valueNames, ImmutableArray<TableAxis> axes, double[] values)
    {
        Name = name;
        AxisNames = axisNames;
        ValueNames = valueNames;
        _axes = axes;
        _values = values;
        _keys = [.. axes.Select(axis => axis.Keys.Where(key => !double.IsNaN(key)).Distinct().Order().ToImmutableArray())];
    }

    /// <summary>What the table is, for messages, such as <c>Climb of Skua 9</c>.</summary>
    public string Name { get; }

    /// <summary>Names of the axes, outermost first, with units, such as <c>weight [lb]</c>.</summary>
    public ImmutableArray<string> AxisNames { get; }

    /// <summary>Names of the values with units.</summary>
    public ImmutableArray<string> ValueNames { get; }

    /// <summary>Makes a table from its rows, in any order. No table is made when any row has a fault: a hole in a table would be bridged in silence.</summary>
    /// <param name="name">What the table is, for messages.</param>
    /// <param name="axisNames">Names of the axes with units, outermost first; one or more.</param>
    /// <param name="valueNames">Names of the values with units; one or more.</param>
    /// <param name="rows">The rows. A key is NaN where the table does not depend on that axis,
    /// then in every row; a value is NaN where its column is empty, then in every row.</param>
    /// <param name="table">The table; null when there are faults.</param>
    /// <param name="faults">All faults, in row order: no rows, a repeated key, a value or
    /// key that is not a finite number, an axis or a value given in some rows only.</param>
    /// <returns>Whether a table was made.</returns>
    /// <exception cref="ArgumentException">No axis or no value is named, or a row has another number of keys or values than there are names.</exception>
    public static bool TryCreate(
        string name,
        ImmutableArray<string> axisNames,
        ImmutableArray<string> valueNames,
        IReadOnlyList<TableRow> rows,
        out PerformanceTable? table,
        out ImmutableArray<TableFault> faults)
    {
        ArgumentNullException.ThrowIfNull(rows);
        if (axisNames.Length == 0 || valueNames.Length == 0) throw new ArgumentException("A table needs an axis and a value.", nameof(axisNames));
        if (rows.Any(row => row.Keys.Length != axisNames.Length || row.Values.Length != valueNames.Length))
            throw new ArgumentException("A row must have a key for each axis and a value for each value name.", nameof(rows));
        table = null;
        faults = TableFaults.Of(name, axisNames, valueNames, rows);
        if (faults.Length > 0) return false;

        TableRow[] ordered = [.. rows];
        Array.Sort(ordered, (a, b) => a.Keys.AsSpan().SequenceCompareTo(b.Keys.AsSpan()));
        table = new PerformanceTable(name, axisNames, valueNames, TableAxis.Nest(ordered, axisNames.Length), [.. ordered.SelectMany(row => row.Values)]);
        return true;
    }

    /// <summary>The keys of an axis, rising, without repetition; empty where the table does not depend on it.</summary>
    /// <param name="axis">Index of the axis.</param>
    public ImmutableArray<double> Keys(int axis) => _keys[axis];

    /// <summary>The lowest key of an axis in any curve; minus infinity where the table does not depend on it.</summary>
    /// <param name="axis">Index of the axis.</param>
    public double Lowest(int axis) => _keys[axis].IsEmpty ? double.NegativeInfinity : _keys[axis][0];

    /// <summary>The highest key of an axis in any curve; infinity where the table does not depend on it.</summary>
    /// <param name="axis">Index of the axis.</param>
    public double Highest(int axis) => _keys[axis].IsEmpty ? double.PositiveInfinity : _keys[axis][^1];

    /// <summary>The name in a name with a unit: <c>weight</c> of <c>weight [lb]</c>.</summary>
    /// <param name="nameWithUnit">A name of an axis or a value.</param>
    public static string NameOf(string nameWithUnit)
    {
        ArgumentNullException.ThrowIfNull(nameWithUnit);
        return TableFaults.Split(nameWithUnit).Name;
    }

    /// <summary>Whether the table has a value at all; false where its whole column is empty, then it reads NaN.</summary>
    /// <param name="value">Index of the value.</param>
    public bool Has(int value) => !double.IsNaN(_values[value]);

    /// <summary>
    /// Reads the table by nested linear interpolation, outermost axis first. Exact at the vertices. Outside an axis, or beyond the end of one of the curves
    /// that enclose the query, the values are those at that end, and the reading says so; nothing is extrapolated. Allocates nothing.
    /// </summary>
    /// <param name="keys">The query: one key an axis, in axis order and unit; not looked at where the table does not depend on the axis.</param>
    /// <param name="values">Filled with one value for each value name.</param>
    /// <returns>Whether the query lay inside; else the first axis on which it did not, with the edge used there.</returns>
    /// <exception cref="ArgumentException">The spans have the wrong length, or a key on which the table depends is not a finite number.</exception>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public TableReading Read(ReadOnlySpan<double> keys, Span<double> values)
    {
        if (values.Length != ValueNames.Length) throw new ArgumentException("Room for each value is needed.", nameof(values));
        Span<double> asked = stackalloc double[_axes.Length];
        Span<double> low = stackalloc double[_axes.Length];
        Span<double> high = stackalloc double[_axes.Length];
        Span<int> hints = stackalloc int[_axes.Length];
        hints.Clear();
        Take(keys, asked, -1);
        var query = new Query { Asked = asked, Low = low, High = high, Hints = hints, Values = values };

        var reading = TableReading.Within;
        for (var from = 0; ;)
        {
            values.Clear();
            low.Fill(double.NegativeInfinity);
            high.Fill(double.PositiveInfinity);
            Add(0, 0, _axes[0].Count, 1, in query);
            // The first axis on which a curve in use ends short of the query: all curves are then read at that end, so that they stay comparable.
            while (from < _axes.Length && !(asked[from] < low[from]) && !(asked[from] > high[from])) from++;
            if (from == _axes.Length) return reading;
            var edge = asked[from] < low[from] ? low[from] : high[from];
            if (reading.IsInside) reading = new TableReading(from, keys[from], edge);
            asked[from++] = edge;
        }
    }

    /// <summary>The part of an axis on which the table can be read with the other keys given: where every curve that encloses the query is defined.</summary>
    /// <param name="axis">Index of the axis.</param>
    /// <param name="keys">The query; the key of the axis itself is not looked at.</param>
    /// <returns>Lowest and highest key; infinite where the table does not depend on the axis; lowest above highest where no key will do.</returns>
    public (double Low, double High) Range(int axis, ReadOnlySpan<double> keys)
    {
        Span<double> asked = stackalloc double[_axes.Length];
        Span<double> low = stackalloc double[_axes.Length];
        Span<double> high = stackalloc double[_axes.Length];
        Span<double> values = stackalloc double[ValueNames.Length];
        Span<int> hints = stackalloc int[_axes.Length];
        hints.Clear();
        Take(keys, asked, axis);
        low.Fill(double.NegativeInfinity);
        high.Fill(double.PositiveInfinity);
        Add(0, 0, _axes[0].Count, 1, new Query { Asked = asked, Low = low, High = high, Hints = hints, Values = values });
        return (low[axis], high[axis]);
    }

    /// <summary>
    /// One sentence about a reading that left the table, such as <c>Climb of Skua 9 ends at pressure altitude 24,000 ft; 26,000 ft was asked</c>.
    /// </summary>
    /// <param name="reading">A reading of this table that is not inside.</param>
    /// <exception cref="ArgumentException">The reading is inside.</exception>
    public string Sentence(TableReading reading)
    {
        if (reading.IsInside) throw new ArgumentException("The reading is inside the table.", nameof(reading));
        var (axis, unit) = TableFaults.Split(AxisNames[reading.Axis]);
        var word = reading.Asked < reading.Edge ? "begins" : "ends";
        // Two numbers that look the same would puzzle.
        var digits = Math.Abs(reading.Asked - reading.Edge) < 0.01 ? "#,0.######" : "#,0.##";
        return string.Create(CultureInfo.InvariantCulture,
            $"{Name} {word} at {axis} {reading.Edge.ToString(digits, CultureInfo.InvariantCulture)}{unit}; {reading.Asked.ToString(digits, CultureInfo.InvariantCulture)}{unit} was asked");
    }

    // The query with NaN where the table does not depend on the axis, and the lowest key on the axis left free.
    private void Take(ReadOnlySpan<double> keys, Span<double> asked, int free)
    {
        if (keys.Length != _axes.Length) throw new ArgumentException("One key an axis is needed.", nameof(keys));
        for (var axis = 0; axis < _axes.Length; axis++)
        {
            if (_keys[axis].IsEmpty) asked[axis] = double.NaN;
            else if (axis == free) asked[axis] = _keys[axis][0];
            else if (double.IsFinite(keys[axis])) asked[axis] = keys[axis];
            else throw new ArgumentException($"{Name}: the key on axis {AxisNames[axis]} is not a finite number.", nameof(keys));
        }
    }

    // Adds the share of one curve to the values: the rows between which the query lies, weighed. The keys of a depth lie one curve after another.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Add(int depth, int first, int end, double share, in Query query)
    {
        var axis = _axes[depth];
        var asked = query.Asked[depth];
        var (at, fraction) = axis.Find(first, end, asked, ref query.Hints[depth]);
        if (!double.IsNaN(asked))
        {
            var (lowest, highest) = (axis.Keys[first], axis.Keys[end - 1]);
            if (lowest > query.Low[depth]) query.Low[depth] = lowest;
            if (highest < query.High[depth]) query.High[depth] = highest;
        }

        for (var step = 0; step < 2; step++)
        {
            var part = share * (step == 0 ? 1 - fraction : fraction);
            if (part == 0) continue;
            var node = at + step;
            if (depth + 1 < _axes.Length)
            {
                Add(depth + 1, axis.Starts[node], axis.Starts[node + 1], part, in query);
                continue;
            }

            var values = query.Values;
            for (var value = 0; value < values.Length; value++) values[value] += part * _values[(node * values.Length) + value];
        }
    }

    /// <summary>A query under way.</summary>
    private ref struct Query
    {
        /// <summary>One key an axis; NaN where the table does not depend on it.</summary>
        public ReadOnlySpan<double> Asked;

        /// <summary>Where the last of the curves in use begins, by axis.</summary>
        public Span<double> Low;

        /// <summary>Where the first of the curves in use ends, by axis.</summary>
        public Span<double> High;

        /// <summary>Where in its curve the last key was found, by axis.</summary>
        public Span<int> Hints;

        /// <summary>The values so far.</summary>
        public Span<double> Values;
    }
}
