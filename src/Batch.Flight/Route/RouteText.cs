using System.Globalization;
using System.Text.RegularExpressions;
using Batch.Flight.Earth;

namespace Batch.Flight.Route;

/// <summary>Reads the text of a route element by element into stops. One instance reads one text.</summary>
internal sealed partial class RouteText
{
    /// <summary>The element for straight on to the next point.</summary>
    public const string Direct = "DCT";

    private readonly NavigationBook _book;
    private readonly string[] _words;
    private readonly string _to;
    private readonly LocalDate _date;
    private readonly List<RouteStop> _stops = [];
    private readonly List<string> _elements = [];
    private readonly List<string> _notes = [];
    private Airway? _airway;
    private int _airwayPosition;
    private bool _isDirectPending;
    private bool _isSpeedNoted;

    public RouteText(NavigationBook book, RoutePoint from, RoutePoint to, string text, LocalDate date)
    {
        _book = book;
        _to = to.Ident;
        _date = date;
        _words = text.ToUpperInvariant().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        _stops.Add(StopAt(from));
        Fault = ReadAll(from.Ident) ?? Arrive(to);
    }

    /// <summary>What could not be understood; null where everything was.</summary>
    public RouteFault? Fault { get; }

    /// <summary>Departure, the points between, destination. To be used only without a <see cref="Fault"/>.</summary>
    public IReadOnlyList<RouteStop> Stops => _stops;

    /// <summary>The elements without airports and speed and level groups.</summary>
    public IReadOnlyList<string> Elements => _elements;

    /// <summary>What was decided.</summary>
    public IReadOnlyList<string> Notes => _notes;

    private static RouteStop StopAt(RoutePoint airport) => new() { Ident = airport.Ident, Choices = [new PlaceChoice(airport, null)] };

    private RouteFault? ReadAll(string from)
    {
        for (var index = 0; index < _words.Length; index++)
        {
            var word = _words[index];
            var slash = word.IndexOf('/', StringComparison.Ordinal);
            var element = slash < 0 ? word : word[..slash];
            var position = index + 1;
            if (element == "C" && slash > 0) return Wrong(position, "A cruise climb cannot be planned; write the levels at their points.");

            SpeedLevelGroup? group = null;
            if (slash >= 0 && (group = SpeedLevelGroup.Read(word[(slash + 1)..])) is null)
                return Wrong(position, "After a slash stand a speed and a level, such as N0250F160.");

            // The airports may be repeated in the text; they are no elements.
            var isDestination = index == _words.Length - 1 && element == _to;
            var isDeparture = index == 0 && element == from;
            if (!isDeparture && !isDestination && ReadElement(position, element) is { } fault) return fault;
            if (group is null) continue;
            if (isDestination) _notes.Add($"The speed and level in {word} were not used; the flight ends there.");
            else Ask(group, word);
        }

        return null;
    }

    private RouteFault? ReadElement(int position, string element)
    {
        if (element.Length == 0) return Wrong(position, "There is no point before the slash.");
        if (element == Direct)
        {
            if (_airway is not null) return NoFixAfterAirway();
            _isDirectPending = true;
            _elements.Add(element);
            return null;
        }

        if (SpeedLevelGroup.Read(element) is { } group)
        {
            if (_airway is not null) return NoFixAfterAirway();
            Ask(group, element);
            return null;
        }

        _elements.Add(element);
        var places = _book.Places(element);
        if (_book.Airway(element) is { } airway && (places.IsEmpty || IsMeantAsAirway(airway, position))) return Join(airway, position);
        if (!places.IsEmpty) return Reach(element, places, position);
        if (CoordinateText.LooksLikeOne(element)) return ReachCoordinate(element, position);
        if (BearingAndDistance().Match(element) is { Success: true } match) return ReachByBearing(element, match, position);
        if (element is "VFR" or "IFR") return Wrong(position, "A change of flight rules on the way cannot be planned.");
        return new RouteFault(_words[position - 1], position, element + " is neither a fix, an airport nor an airway of the books.",
            _book.NearElements(element));
    }

    // Only an ident that is also the name of an airway comes here.
    private bool IsMeantAsAirway(Airway airway, int position)
    {
        var next = position < _words.Length ? _words[position].Split('/')[0] : _to;
        return AirwayPiece.Passes(airway, _stops[^1].Ident) && AirwayPiece.Passes(airway, next);
    }

    private RouteFault? Join(Airway airway, int position)
    {
        if (_isDirectPending) return Wrong(position, "DCT leads to a point; " + airway.Name + " is an airway.");
        if (_airway is { } before)
        {
            var shared = AirwayPiece.Shared(before, airway);
            if (shared.Length != 1)
                return Wrong(position,
                    $"{before.Name} and {airway.Name} share {Count(shared.Length)}; name the fix where the route changes from one to the other.", shared);
            if (FlyAirway(shared[0]) is { } fault) return fault;
            _notes.Add($"The change from {before.Name} to {airway.Name} was taken at {shared[0]}, the fix they share.");
        }

        var last = _stops[^1].Ident;
        if (!AirwayPiece.Passes(airway, last))
            return Wrong(position, $"{airway.Name} does not pass {last}; name the fix where it is joined.", NearFixes(airway, last));
        _airway = airway;
        _airwayPosition = position;
        return null;
    }

    private RouteFault? Reach(string ident, ImmutableArray<PlaceChoice> places, int position)
    {
        if (_airway is { } airway)
            return AirwayPiece.Passes(airway, ident)
                ? FlyAirway(ident)
                : Wrong(position, $"{airway.Name} does not pass {ident}; name the fix where it is left.", NearFixes(airway, ident));
        _isDirectPending = false;
        _stops.Add(new RouteStop { Ident = ident, Choices = places });
        return null;
    }

    private RouteFault? ReachCoordinate(string element, int position)
    {
        if (CoordinateText.Read(element) is not { } point) return Wrong(position, "It looks like a coordinate, but " + CoordinateText.Complaint(element) + ".");
        return Reach(element, [new PlaceChoice(new RoutePoint { Ident = element, Position = point, Kind = "coordinate" }, null)], position);
    }

    private RouteFault? ReachByBearing(string element, Match match, int position)
    {
        var ident = match.Groups["place"].Value;
        var bearingDeg = Figures(match.Groups["bearing"].ValueSpan);
        var distanceNm = Figures(match.Groups["distance"].ValueSpan);
        if (bearingDeg > 360) return Wrong(position, "A bearing goes to 360.");
        var places = _book.Places(ident);
        if (places.IsEmpty) return Wrong(position, ident + " is not in the books, so no bearing can be taken from it.", _book.NearElements(ident));
        return Reach(element, [.. places.Select(place => FromPlace(element, place, bearingDeg, distanceNm))], position);
    }

    private PlaceChoice FromPlace(string element, PlaceChoice place, int bearingDeg, int distanceNm)
    {
        var from = place.Point.Position;
        var variationDeg = place.VariationDeg ?? MagneticModel.VariationDeg(from, Feet.Zero, _date);
        var point = Geodesic.Direct(from, bearingDeg + variationDeg, new NauticalMiles(distanceNm).Metres);
        return new PlaceChoice(new RoutePoint { Ident = element, Position = point, Kind = "coordinate" }, null);
    }

    private RouteFault? FlyAirway(string to)
    {
        if (_airway is not { } airway) return null;
        var from = _stops[^1].Ident;
        if (AirwayPiece.Between(airway, from, to) is not { } piece)
        {
            var why = string.Equals(from, to, StringComparison.OrdinalIgnoreCase)
                ? $"{airway.Name} is joined and left at {to}."
                : $"{airway.Name} may not be flown from {from} to {to}; its direction is restricted.";
            return Wrong(_airwayPosition, why);
        }

        var step = piece.First < piece.Last ? 1 : -1;
        for (var place = piece.First; place != piece.Last; place += step)
        {
            var ident = airway.Points[place + step].Fix;
            var choices = _book.Places(ident);
            if (choices.IsEmpty) return Wrong(_airwayPosition, $"{airway.Name} passes {ident}, which is not in the books.", _book.NearElements(ident));
            var minimum = airway.Points[step > 0 ? place : place - 1].MinimumAltitude;
            _stops.Add(new RouteStop { Ident = ident.ToUpperInvariant(), Choices = choices, Via = airway.Name, AirwayMinimum = minimum });
        }

        _airway = null;
        return null;
    }

    private RouteFault? Arrive(RoutePoint to)
    {
        if (_airway is not { } airway)
        {
            _stops.Add(StopAt(to));
            return null;
        }

        if (!AirwayPiece.Passes(airway, to.Ident)) return NoFixAfterAirway();
        if (FlyAirway(to.Ident) is { } fault) return fault;
        _stops[^1] = _stops[^1] with { Choices = [new PlaceChoice(to, null)] };
        return null;
    }

    private void Ask(SpeedLevelGroup group, string word)
    {
        if (group.Level is { } level) _stops[^1] = _stops[^1] with { LevelFromHere = level };
        if (_isSpeedNoted) return;
        _isSpeedNoted = true;
        _notes.Add($"The speed in {word} was not used; speeds come from the cruise table.");
    }

    private RouteFault NoFixAfterAirway() =>
        Wrong(_airwayPosition, "After an airway stands the fix where it is left.",
            _airway is { } airway ? [.. airway.Points.Select(point => point.Fix).Take(3)] : []);

    private RouteFault Wrong(int position, string why, ImmutableArray<string> near = default) =>
        new(_words[position - 1], position, why, near.IsDefault ? [] : near);

    private static ImmutableArray<string> NearFixes(Airway airway, string ident) => NearWords.Nearest(ident, airway.Points.Select(point => point.Fix));

    private static string Count(int shared) => shared == 0 ? "no fix" : "more than one fix";

    private static int Figures(ReadOnlySpan<char> figures) => int.Parse(figures, NumberStyles.None, CultureInfo.InvariantCulture);

    // ICAO Doc 4444, appendix 2, item 15: ident of the point, bearing from it in three figures of degrees magnetic, distance in three figures of nautical
    // miles.
    [GeneratedRegex("^(?<place>[A-Z][A-Z0-9]{1,6})(?<bearing>[0-9]{3})(?<distance>[0-9]{3})$", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture,
        20_000)]
    private static partial Regex BearingAndDistance();
}
