using Batch.Flight.Earth;

namespace Batch.Flight.Route;

/// <summary>One shoreline, a closed polygon of geodesic sides.</summary>
/// <param name="Name">Name of the land.</param>
/// <param name="Ring">Number of the ring where a land has several.</param>
/// <param name="Vertices">Vertices in order, not repeated at the end, at least three.</param>
public sealed record LandRing(string Name, int Ring, ImmutableArray<GeoPoint> Vertices);
