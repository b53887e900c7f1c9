namespace Batch.Flight.Air;

/// <summary>Winds and temperatures in space and time.</summary>
public sealed class AirField
{
    /// <summary>Makes a field from reports.</summary>
    /// <param name="reports">The reports.</param>
    public AirField(IEnumerable<AirReport> reports) => Count = reports.Count();

    /// <summary>Number of reports.</summary>
    public int Count { get; }
}
