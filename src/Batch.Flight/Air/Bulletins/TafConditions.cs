namespace Batch.Flight.Air.Bulletins;

/// <summary>What a forecast says of one moment.</summary>
/// <param name="Prevailing">The conditions that prevail.</param>
/// <param name="Temporary">
/// The groups that may alter them for a time at that moment, in the order of the forecast: TEMPO, INTER, PROB, and a BECMG whose period is running
/// (until its end the old conditions prevail, and the new ones are possible).
/// </param>
public sealed record TafConditions(WeatherConditions Prevailing, ImmutableArray<TafGroup> Temporary);
