namespace Batch.Flight.Fleet;

/// <summary>
/// A performance table of any number of axes with multilinear interpolation. Curves may be ragged: the innermost axis may end earlier for some outer keys
/// (a heavy aircraft that cannot reach the highest level).
/// </summary>
public sealed class PerformanceTable
{
    private PerformanceTable(string name, ImmutableArray<string> axisNames, ImmutableArray<string> valueNames)
    {
        Name = name;
        AxisNames = axisNames;
        ValueNames = valueNames;
    }

    /// <summary>What the table is, for messages, such as <c>Climb of Skua 9</c>.</summary>
    public string Name { get; }

    /// <summary>Names of the axes, outermost first, with units, such as <c>weight [lb]</c>.</summary>
    public ImmutableArray<string> AxisNames { get; }

    /// <summary>Names of the values with units.</summary>
    public ImmutableArray<string> ValueNames { get; }
}
