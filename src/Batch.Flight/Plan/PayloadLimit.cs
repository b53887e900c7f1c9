namespace Batch.Flight.Plan;

/// <summary>Payload that can still be added at the planned fuel.</summary>
/// <param name="Spare">The amount [lb], negative when a limit is exceeded; null where no limit is known.</param>
/// <param name="BoundBy">The limit that binds: zero-fuel weight, ramp weight, takeoff weight,
/// landing weight, departure runway, arrival runway; empty where none is known.</param>
public sealed record PayloadLimit(Pounds? Spare, string BoundBy);
