namespace Batch.Flight.Fleet;

/// <summary>One row of a performance table.</summary>
/// <param name="Keys">Key on each axis, in axis order; NaN where the row leaves a dimension out.</param>
/// <param name="Values">Values, in value order.</param>
/// <param name="Origin">Where it was read.</param>
public sealed record TableRow(ImmutableArray<double> Keys, ImmutableArray<double> Values, Origin Origin);
