namespace Batch.Flight.Air;

/// <summary>Wind and temperature at a point and time.</summary>
/// <param name="WindFrom">Direction the wind blows from, true.</param>
/// <param name="WindSpeed">Wind speed [kt].</param>
/// <param name="Temperature">Temperature.</param>
/// <param name="WindAssumed">Whether no wind was known and still air was taken.</param>
/// <param name="TemperatureAssumed">Whether no temperature was known and the standard atmosphere was taken.</param>
public readonly record struct AirSample(TrueDegrees WindFrom, Knots WindSpeed, Celsius Temperature, bool WindAssumed, bool TemperatureAssumed);
