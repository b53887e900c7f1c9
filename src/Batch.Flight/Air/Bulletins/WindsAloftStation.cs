namespace Batch.Flight.Air.Bulletins;

/// <summary>The forecast for one station.</summary>
/// <param name="Station">The station as written.</param>
/// <param name="Cells">Its cells, lowest first; altitudes without forecast are left out.</param>
public sealed record WindsAloftStation(string Station, ImmutableArray<WindsAloftCell> Cells);
