namespace Batch.Flight.Plan;

/// <summary>A speed of the Speeds table.</summary>
/// <param name="Name">Name as in the header, such as <c>VREF</c>.</param>
/// <param name="Speed">Calibrated airspeed [kt].</param>
public sealed record NamedSpeed(string Name, Knots Speed);
