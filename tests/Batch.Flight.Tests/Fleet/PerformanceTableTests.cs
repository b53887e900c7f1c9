using Batch.Flight.Fleet;
using CsCheck;

namespace Batch.Flight.Tests.Fleet;

public sealed class PerformanceTableTests
{
    // weight, altitude -> time; the heavy curve ends at 20,000 ft.
    private static readonly PerformanceTable Ragged = Make(["weight [lb]", "pressure altitude [ft]"], ["time [min]"],
        ([8000, 0], [0]), ([8000, 10000], [10]), ([8000, 20000], [24]), ([8000, 30000], [50]),
        ([9000, 0], [0]), ([9000, 10000], [12]), ([9000, 20000], [30]));

    [Fact]
    public void Every_row_is_read_back_exactly()
    {
        Assert.Equal(24, Read(Ragged, 8000, 20000));
        Assert.Equal(30, Read(Ragged, 9000, 20000));
        Assert.Equal(0, Read(Ragged, 9000, 0));
    }

    [Fact]
    public void Between_rows_the_table_is_linear_on_each_axis()
    {
        Assert.Equal(17, Read(Ragged, 8000, 15000), 12);
        Assert.Equal(21, Read(Ragged, 9000, 15000), 12);
        Assert.Equal(19, Read(Ragged, 8500, 15000), 12);
    }

    [Fact]
    public void The_order_of_the_rows_does_not_matter()
    {
        var shuffled = Make(["weight [lb]", "pressure altitude [ft]"], ["time [min]"],
            ([9000, 20000], [30]), ([8000, 30000], [50]), ([8000, 0], [0]), ([9000, 0], [0]), ([8000, 20000], [24]), ([9000, 10000], [12]),
            ([8000, 10000], [10]));
        Assert.Equal(Read(Ragged, 8321, 17777), Read(shuffled, 8321, 17777));
    }

    [Fact]
    public void Above_the_end_of_one_of_two_curves_the_query_is_outside_and_both_are_read_at_that_end()
    {
        Span<double> value = stackalloc double[1];
        var reading = Ragged.Read([8500, 25000], value);
        Assert.Equal(new TableReading(1, 25000, 20000), reading);
        Assert.Equal(27, value[0], 12);
        Assert.Equal((0d, 20000d), Ragged.Range(1, [8500, 0]));
    }

    [Fact]
    public void On_the_light_curve_itself_the_heavy_one_does_not_matter()
    {
        Span<double> value = stackalloc double[1];
        Assert.True(Ragged.Read([8000, 25000], value).IsInside);
        Assert.Equal(37, value[0], 12);
        Assert.Equal((0d, 30000d), Ragged.Range(1, [8000, 0]));
    }

    [Fact]
    public void Outside_on_the_outer_axis_the_values_are_those_of_its_edge()
    {
        Span<double> value = stackalloc double[1];
        Assert.Equal(new TableReading(0, 7000, 8000), Ragged.Read([7000, 15000], value));
        Assert.Equal(17, value[0], 12);
    }

    [Fact]
    public void Outside_on_two_axes_the_outer_one_is_named_and_both_are_held()
    {
        Span<double> value = stackalloc double[1];
        Assert.Equal(new TableReading(0, 9500, 9000), Ragged.Read([9500, 99999], value));
        Assert.Equal(30, value[0], 12);
        Assert.Equal("Test begins at weight 8,000 lb; 7,000 lb was asked", Ragged.Sentence(new TableReading(0, 7000, 8000)));
        Assert.Equal("Test ends at pressure altitude 20,000 ft; 25,000 ft was asked", Ragged.Sentence(new TableReading(1, 25000, 20000)));
    }

    [Fact]
    public void An_axis_left_out_of_every_row_is_constant()
    {
        var table = Make(["weight [lb]", "ISA deviation [K]", "pressure altitude [ft]"], ["flow [lb/h]"],
            ([double.NaN, double.NaN, 5000], [300]), ([double.NaN, double.NaN, 15000], [200]));
        Span<double> value = stackalloc double[1];
        Assert.True(table.Read([9123, -30, 10000], value).IsInside);
        Assert.Equal(250, value[0], 12);
        Assert.True(table.Read([double.NaN, double.NaN, 10000], value).IsInside);
        Assert.Empty(table.Keys(0));
        Assert.Equal(double.PositiveInfinity, table.Highest(0));
        Assert.Equal((5000d, 15000d), table.Range(2, [9000, 0, 0]));
    }

    [Fact]
    public void One_key_alone_on_an_axis_holds_there_only()
    {
        var table = Make(["weight [lb]", "pressure altitude [ft]"], ["flow [lb/h]"], ([9000, 0], [300]), ([9000, 10000], [250]));
        Span<double> value = stackalloc double[1];
        Assert.True(table.Read([9000, 5000], value).IsInside);
        Assert.Equal(new TableReading(0, 8999, 9000), table.Read([8999, 5000], value));
    }

    [Fact]
    public void Keys_are_told_per_axis()
    {
        Assert.Equal([0d, 10000d, 20000d, 30000d], Ragged.Keys(1).ToArray());
        Assert.Equal(8000, Ragged.Lowest(0));
        Assert.Equal(9000, Ragged.Highest(0));
    }

    [Fact]
    public void A_value_column_may_be_empty_as_a_whole_and_then_reads_as_nothing()
    {
        var table = Make(["weight [lb]"], ["VR", "VREF"], ([8000], [80, double.NaN]), ([9000], [84, double.NaN]));
        Span<double> values = stackalloc double[2];
        table.Read([8500], values);
        Assert.Equal(82, values[0], 12);
        Assert.True(double.IsNaN(values[1]));
        Assert.True(table.Has(0));
        Assert.False(table.Has(1));
    }

    [Fact]
    public void A_repeated_key_is_a_fault_of_the_second_row()
    {
        var second = new Origin("operator.xlsx/Climb", 9, ImmutableDictionary<string, string>.Empty);
        var made = PerformanceTable.TryCreate("Climb of Skua 9", ["weight [lb]", "pressure altitude [ft]"], ["time [min]"],
            [new([9000, 1000], [1], Origin.None), new([9000, 2000], [2], Origin.None), new([9000, 1000], [3], second)], out var table, out var faults);
        Assert.False(made);
        Assert.Null(table);
        var fault = Assert.Single(faults);
        Assert.Equal("Climb of Skua 9: a second row for weight 9000 lb, pressure altitude 1000 ft; keep one of the two.", fault.Text);
        Assert.Same(second, fault.Origin);
    }

    [Fact]
    public void Every_fault_is_told_at_once()
    {
        PerformanceTable.TryCreate("Cruise", ["weight [lb]", "pressure altitude [ft]"], ["flow [lb/h]"],
            [
                new([9000, 1000], [100], Origin.None),
                new([double.NaN, 2000], [100], Origin.None),
                new([9000, double.PositiveInfinity], [100], Origin.None),
                new([9000, 3000], [double.NaN], Origin.None),
                new([9000, 4000], [double.NegativeInfinity], Origin.None),
            ], out _, out var faults);
        Assert.Equal(
            [
                "Cruise: this row gives no weight while others do; give it in every row or in none.",
                "Cruise: the pressure altitude is not a finite number.",
                "Cruise: this row gives no flow while others do; give it in every row or in none.",
                "Cruise: the flow is not a finite number.",
            ], faults.Select(fault => fault.Text));
    }

    [Fact]
    public void A_table_without_rows_is_a_fault()
    {
        Assert.False(PerformanceTable.TryCreate("Descent", ["pressure altitude [ft]"], ["time [min]"], [], out _, out var faults));
        Assert.Equal("Descent has no rows.", Assert.Single(faults).Text);
    }

    [Fact]
    public void A_query_that_is_no_number_is_refused() =>
        Assert.Throws<ArgumentException>(() => Ragged.Read([double.NaN, 1000], new double[1]));

    [Fact]
    public void A_function_linear_on_each_axis_is_met_everywhere_on_any_full_grid()
    {
        var grids = Gen.Select(GenKeys, GenKeys, GenKeys, Gen.Double[0, 1], Gen.Double[0, 1], Gen.Double[0, 1]);
        grids.Sample((a, b, c, s, t, u) =>
        {
            static double Value(double x, double y, double z) => 3 + (2 * x) - y + (0.5 * z) + (x * y / 10) - (x * y * z / 100);
            var table = Make(["a", "b", "c"], ["v"],
                [.. from i in a from j in b from k in c select (new[] { i, j, k }, new[] { Value(i, j, k) })]);
            var (x, y, z) = (Between(a, s), Between(b, t), Between(c, u));
            Span<double> value = stackalloc double[1];
            Assert.True(table.Read([x, y, z], value).IsInside);
            Assert.Equal(Value(x, y, z), value[0], 1e-9);
        }, iter: 300);
    }

    [Fact]
    public void A_reading_lies_between_the_smallest_and_the_greatest_value_even_outside()
    {
        var queries = Gen.Select(Gen.Double[5000, 12000], Gen.Double[-5000, 40000]);
        queries.Sample((weight, altitude) =>
        {
            Span<double> value = stackalloc double[1];
            Ragged.Read([weight, altitude], value);
            Assert.InRange(value[0], -1e-9, 50 + 1e-9);
        }, iter: 1000);
    }

    [Fact]
    public void Reading_allocates_nothing()
    {
        var values = new double[1];
        double[] keys = [8500, 15000];
        Ragged.Read(keys, values);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var i = 0; i < 1000; i++) Ragged.Read(keys, values);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static Gen<double[]> GenKeys { get; } = Gen.Int[-50, 50].HashSet[1, 5].Select(keys => keys.Order().Select(key => (double)key).ToArray());

    private static double Between(double[] keys, double fraction) => keys[0] + ((keys[^1] - keys[0]) * fraction);

    private static double Read(PerformanceTable table, params double[] keys)
    {
        var values = new double[table.ValueNames.Length];
        Assert.True(table.Read(keys, values).IsInside);
        return values[0];
    }

    private static PerformanceTable Make(ImmutableArray<string> axes, ImmutableArray<string> names, params (double[] Keys, double[] Values)[] rows)
    {
        PerformanceTable.TryCreate(
            "Test", axes, names, [.. rows.Select(row => new TableRow([.. row.Keys], [.. row.Values], Origin.None))], out var table, out var faults);
        Assert.Empty(faults);
        return table ?? throw new InvalidOperationException("No table was made.");
    }
}
