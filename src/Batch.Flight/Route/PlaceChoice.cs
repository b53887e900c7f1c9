namespace Batch.Flight.Route;

/// <summary>One of the places that an ident may mean.</summary>
/// <param name="Point">The place.</param>
/// <param name="VariationDeg">Its own variation [deg], positive east; null: by the magnetic model.</param>
internal sealed record PlaceChoice(RoutePoint Point, double? VariationDeg);
