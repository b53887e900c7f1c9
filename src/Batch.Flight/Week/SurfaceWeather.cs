using Batch.Flight.Air;

namespace Batch.Flight.Week;

/// <summary>The weather at an airport for a takeoff or a landing.</summary>
/// <param name="Air">Wind and temperature at the ground.</param>
/// <param name="IsWindFromAloft">Whether the wind is that of some way above the field, held down to
/// it: no report, forecast or row of the Winds sheet tells the wind at the ground.</param>
/// <param name="AltimeterSetting">Altimeter setting [hPa]; null where none is known.</param>
/// <param name="IsWet">Whether precipitation is reported or forecast, so that the runway is taken as wet.</param>
/// <param name="Sources">Where wind, setting and wetness come from, as sentences for the sheet; empty where they come from the winds aloft alone.</param>
public sealed record SurfaceWeather(AirSample Air, bool IsWindFromAloft, Hectopascals? AltimeterSetting, bool IsWet, ImmutableArray<string> Sources);
