using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>What stands at a station.</summary>
/// <param name="Station">The station.</param>
/// <param name="Weight">Load there [lb].</param>
/// <param name="Persons">Persons who occupy a seat there.</param>
public sealed record StationLoad(Station Station, Pounds Weight, int Persons);
