namespace Batch.Flight.Air;

/// <summary>A wind.</summary>
/// <param name="From">Direction it blows from [deg], true.</param>
/// <param name="Speed">Its speed [kt], zero or more.</param>
public readonly record struct Wind(TrueDegrees From, Knots Speed);
