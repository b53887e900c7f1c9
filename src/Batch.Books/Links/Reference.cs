using Batch.Flight.Fleet;

namespace Batch.Books.Links;

/// <summary>What the legs refer to.</summary>
/// <param name="Types">Types.</param>
/// <param name="Fleet">Aircraft.</param>
/// <param name="Airports">Airports with their runways.</param>
/// <param name="Crew">Pilots.</param>
internal sealed record Reference(Register<AircraftType> Types, Register<Aircraft> Fleet, Register<Airport> Airports, Register<CrewMember> Crew);
