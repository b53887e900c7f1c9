using Batch.Flight.Earth;

namespace Batch.Flight.Plan;

/// <summary>A place on the profile: top of climb, top of descent.</summary>
/// <param name="Distance">Along the route from the departure.</param>
/// <param name="Elapsed">Since takeoff.</param>
/// <param name="Position">Position.</param>
/// <param name="Altitude">Altitude [ft].</param>
public sealed record ProfilePoint(NauticalMiles Distance, Duration Elapsed, GeoPoint Position, Feet Altitude);
