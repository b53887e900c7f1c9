using Batch.Flight.Fleet;
using Batch.Flight.Week;

namespace Batch.Flight.Route;

/// <summary>The airports, fixes, airways and safe altitudes of the books, prepared for looking up. Idents and names are found in any case.</summary>
public sealed class NavigationBook
{
    private readonly ImmutableSortedDictionary<string, Airport> _airports;
    private readonly Dictionary<string, Airway> _airways = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, ImmutableArray<PlaceChoice>> _places = new(StringComparer.OrdinalIgnoreCase);
    private readonly ImmutableArray<string> _known;

    /// <summary>Prepares the books of a week.</summary>
    /// <param name="week">The week; only its airports, fixes, airways and altitude grid are used.</param>
    public NavigationBook(OperatorWeek week)
        : this(week.Airports.Values, week.Fixes, week.Airways.Values, week.AltitudeGrid)
    {
    }

    /// <summary>Prepares airports, fixes, airways and safe altitudes.</summary>
    /// <param name="airports">Airports, idents unique.</param>
    /// <param name="fixes">Fixes in book order; the same ident may stand at several places.</param>
    /// <param name="airways">Airways, names unique.</param>
    /// <param name="altitudeGrid">Squares of the altitude grid, of any size; where squares overlap the highest counts.</param>
    public NavigationBook(
        IEnumerable<Airport> airports, IEnumerable<Fix> fixes, IEnumerable<Airway> airways, ImmutableArray<SafeAltitudeCell> altitudeGrid)
    {
        _airports = airports.ToImmutableSortedDictionary(airport => airport.Ident, airport => airport, StringComparer.OrdinalIgnoreCase);
        foreach (var airway in airways) _airways[airway.Name] = airway;
        foreach (var fix in fixes) Add(fix.Ident, new PlaceChoice(PointOf(fix), fix.VariationDeg));
        foreach (var airport in _airports.Values) Add(airport.Ident, new PlaceChoice(PointOf(airport), null));
        _known = [.. _places.Keys.Concat(_airways.Keys).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal)];
        Grid = new SafeAltitudeGrid(altitudeGrid);
    }

    internal SafeAltitudeGrid Grid { get; }

    /// <summary>The airport of an ident; null where the books have none.</summary>
    /// <param name="ident">Location indicator.</param>
    public Airport? Airport(string ident) => _airports.GetValueOrDefault(ident);

    /// <summary>The airway of a name; null where the books have none.</summary>
    /// <param name="name">Name, such as <c>V12</c>.</param>
    public Airway? Airway(string name) => _airways.GetValueOrDefault(name);

    /// <summary>The places that an ident names: fixes in book order, then the airport; empty where the books have none.</summary>
    /// <param name="ident">Ident.</param>
    public ImmutableArray<RoutePoint> Points(string ident) => [.. Places(ident).Select(place => place.Point)];

    /// <summary>Airport idents near to one that is not in the books, best first.</summary>
    /// <param name="ident">Ident as written.</param>
    public ImmutableArray<string> NearAirports(string ident) => NearWords.Nearest(ident, _airports.Keys);

    /// <summary>Idents of fixes and airports and names of airways near to a word that is none of them, best first.</summary>
    /// <param name="element">Route element as written.</param>
    public ImmutableArray<string> NearElements(string element) => NearWords.Nearest(element, _known);

    /// <summary>The point of a route at an airport.</summary>
    /// <param name="airport">The airport.</param>
    public static RoutePoint PointOf(Airport airport) =>
        new() { Ident = airport.Ident, Position = airport.Position, Kind = "airport", Name = airport.Name };

    internal ImmutableArray<PlaceChoice> Places(string ident) => _places.GetValueOrDefault(ident, []);

    private static RoutePoint PointOf(Fix fix) => new()
    {
        Ident = fix.Ident,
        Position = fix.Position,
        Kind = fix.Kind.Length == 0 ? "waypoint" : fix.Kind,
        Name = fix.Name,
        Frequency = fix.Frequency,
    };

    // A row that repeats a place says nothing new.
    private void Add(string ident, PlaceChoice place)
    {
        var known = Places(ident);
        if (!known.Any(other => other.Point.Position == place.Point.Position)) _places[ident] = known.Add(place);
    }
}
