namespace Batch.Flight.Air.Bulletins;

/// <summary>A forecast highest or lowest temperature.</summary>
/// <param name="IsHighest">Highest (TX), else lowest (TN).</param>
/// <param name="Temperature">The temperature.</param>
/// <param name="At">When; null where the time could not be read.</param>
public sealed record TafTemperature(bool IsHighest, Celsius Temperature, Instant? At);
