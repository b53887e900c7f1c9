namespace Batch.Flight.Plan;

/// <summary>The most fuel that may be aboard at off blocks.</summary>
/// <param name="Most">The amount [lb], zero or more; null where no limit is known.</param>
/// <param name="BoundBy">The limit that binds: tank, ramp weight, takeoff weight, landing weight,
/// zero-fuel weight, departure runway, arrival runway; empty where none is known.</param>
public sealed record FuelLimit(Pounds? Most, string BoundBy);
