using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>
/// The airports of the book on which a type can land after a failure: the longest landing distance available is no shorter than the shortest landing distance
/// of its tables at the maximum landing weight in standard, still air on a dry level runway; where the book has no runways, no such table or no such weight,
/// the airport is taken. The leg's own airports always count. Opening hours and weather are not looked at: the case is an emergency.
/// </summary>
internal sealed class DiversionAirports
{
    /// <summary>Distances on the sphere differ from those on the ellipsoid by at most half a per cent.</summary>
    private const double SphereShare = 0.99;

    private const double EarthRadiusNm = 6_371_008.8 / NauticalMiles.MetresPerNauticalMile;

    private readonly Airport[] _airports;
    private readonly (double X, double Y, double Z)[] _places;

    /// <summary>Finds them.</summary>
    /// <param name="week">The books.</param>
    /// <param name="setup">The leg.</param>
    public DiversionAirports(OperatorWeek week, LegSetup setup)
    {
        var own = setup.Alternates.Add(setup.From).Add(setup.To).Select(airport => airport.Ident).ToHashSet(StringComparer.OrdinalIgnoreCase);
        _airports = [.. week.Airports.Values.Where(airport => own.Contains(airport.Ident) || IsLongEnough(airport, setup.Type))];
        _places = [.. _airports.Select(airport => AirStation.OnUnitSphere(airport.Position))];
    }

    /// <summary>The airports, in the order of their idents.</summary>
    public ReadOnlySpan<Airport> All => _airports;

    /// <summary>Distances from a point that are never more than the true ones [NM].</summary>
    /// <param name="point">The point.</param>
    /// <param name="leastNm">Filled, one for each of <see cref="All"/>.</param>
    /// <returns>Index of the nearest.</returns>
    public int Distances(GeoPoint point, Span<double> leastNm)
    {
        var (x, y, z) = AirStation.OnUnitSphere(point);
        var nearest = 0;
        for (var index = 0; index < _places.Length; index++)
        {
            var (dx, dy, dz) = (_places[index].X - x, _places[index].Y - y, _places[index].Z - z);
            leastNm[index] = 2 * Math.Asin(Math.Min(1, Math.Sqrt(dx * dx + dy * dy + dz * dz) / 2)) * EarthRadiusNm * SphereShare;
            if (leastNm[index] < leastNm[nearest]) nearest = index;
        }

        return nearest;
    }

    private static bool IsLongEnough(Airport airport, AircraftType type)
    {
        if (airport.Runways.IsEmpty || type.MaximumLanding is not { } weight) return true;
        var longestFt = airport.Runways.Max(runway => runway.LandingDistance.Value);
        var known = false;
        foreach (var table in type.Tables.Landing.Values)
        {
            if (!table.Has(1)) continue;
            known = true;
            var distancesFt = new double[table.ValueNames.Length];
            table.Read([weight.Value, airport.Elevation.Value, StandardAtmosphere.TemperatureAt(airport.Elevation).Value], distancesFt);
            if (distancesFt[1] <= longestFt) return true;
        }

        return !known;
    }
}
