namespace Batch.Flight.Fleet;

/// <summary>Whether a query lay inside a performance table; where not, the axis on which it left it furthest out.</summary>
/// <param name="Axis">Index of the first axis on which the query was outside; -1 when inside.</param>
/// <param name="Asked">The key asked for on that axis.</param>
/// <param name="Edge">The edge of the table there, at which the values were taken.</param>
public readonly record struct TableReading(int Axis, double Asked, double Edge)
{
    /// <summary>The reading of a query inside the table.</summary>
    public static TableReading Within { get; } = new(-1, 0, 0);

    /// <summary>Whether the query lay inside on every axis.</summary>
    public bool IsInside => Axis < 0;
}
