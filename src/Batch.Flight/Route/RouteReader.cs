using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Flight.Route;

/// <summary>Turns the text of a route into points and geodesics.</summary>
public static class RouteReader
{
    /// <summary>
    /// Resolves a route between two airports. Elements, in any case, separated by blanks: fix or airport ident; airway, expanded in the direction flown, joined
    /// and left at any of its fixes; <c>DCT</c>; coordinate (<see cref="CoordinateText"/>); point by magnetic bearing and distance from another,
    /// <c>NOR180040</c>; speed and level (<see cref="SpeedLevelGroup"/>) alone or after a point and a slash, kept as <see cref="RouteSegment.LevelFromHere"/>.
    /// The airports themselves may be repeated at the ends. An empty text is the direct line. Where an ident stands at several places the shortest route is
    /// taken and said in <see cref="FlownRoute.Notes"/>. A point at the very place of the one before it is left out.
    /// </summary>
    /// <param name="book">Airports, fixes, airways, safe altitudes.</param>
    /// <param name="from">Departure.</param>
    /// <param name="to">Destination.</param>
    /// <param name="text">Route text.</param>
    /// <param name="date">Day of the flight, for the magnetic variation.</param>
    /// <param name="level">Cruise level [ft], for the magnetic variation; null: sea level.</param>
    /// <returns>The route, or the first element that could not be understood. Every segment has
    /// a length above zero, unless both airports are one and nothing lies between.</returns>
    public static RouteResult Resolve(NavigationBook book, Airport from, Airport to, string text, LocalDate date, Feet? level)
    {
        var read = new RouteText(book, NavigationBook.PointOf(from), NavigationBook.PointOf(to), text, date);
        if (read.Fault is { } fault) return new RouteResult.Unresolved(fault.Element, fault.Position, fault.Why, fault.Near);

        var notes = ImmutableArray.CreateBuilder<string>();
        notes.AddRange(read.Notes);
        var stops = WithoutRepeats(ShortestChoice(read.Stops, notes), notes);
        var segments = ImmutableArray.CreateBuilder<RouteSegment>(stops.Count - 1);
        var start = NauticalMiles.Zero;
        for (var index = 1; index < stops.Count; index++)
        {
            var segment = Segment(book, stops[index - 1], stops[index], start, date, level ?? Feet.Zero, notes);
            segments.Add(segment);
            start += segment.Length;
        }

        return new RouteResult.Resolved(new FlownRoute
        {
            Text = text.Trim(),
            Elements = read.Elements.Count == 0 ? [RouteText.Direct] : [.. read.Elements],
            Segments = segments.MoveToImmutable(),
            Notes = notes.ToImmutable(),
            Assumptions = [.. CompassCaution.Of(stops, date)],
            Length = start,
        });
    }

    private static RouteSegment Segment(
        NavigationBook book, RouteStop from, RouteStop to, NauticalMiles start, LocalDate date, Feet level, ImmutableArray<string>.Builder notes)
    {
        var place = from.Choices[0];
        var path = new GeodesicPath(place.Point.Position, to.Choices[0].Point.Position);
        var minimum = to.AirwayMinimum;
        var source = minimum is null ? "" : "airway " + to.Via;
        if (minimum is null && !book.Grid.IsEmpty)
        {
            minimum = book.Grid.HighestAlong(path, out var isCovered);
            source = minimum is null ? "" : "altitude grid";
            if (!isCovered) notes.Add($"The altitude grid does not cover all of {from.Ident} to {to.Ident}.");
        }

        return new RouteSegment
        {
            From = place.Point,
            To = to.Choices[0].Point,
            Via = to.Via,
            Path = path,
            Start = start,
            VariationDeg = place.VariationDeg ?? MagneticModel.VariationDeg(place.Point.Position, level, date),
            MinimumAltitude = minimum,
            MinimumSource = source,
            LevelFromHere = from.LevelFromHere,
        };
    }

    // The choice of places that makes the whole route shortest, stop by stop: for every place of a stop the shortest way there. Equal lengths keep the order of
    // the book.
    private static List<RouteStop> ShortestChoice(IReadOnlyList<RouteStop> stops, ImmutableArray<string>.Builder notes)
    {
        var chosen = stops.ToList();
        if (stops.All(stop => stop.Choices.Length == 1)) return chosen;

        var cameFrom = new int[stops.Count][];
        var lengths = new double[] { 0 };
        for (var index = 1; index < stops.Count; index++)
        {
            var (before, here) = (stops[index - 1].Choices, stops[index].Choices);
            var reached = new double[here.Length];
            cameFrom[index] = new int[here.Length];
            for (var place = 0; place < here.Length; place++)
            {
                reached[place] = double.PositiveInfinity;
                for (var source = 0; source < before.Length; source++)
                {
                    var lengthM = lengths[source] + Geodesic.Inverse(before[source].Point.Position, here[place].Point.Position).DistanceM;
                    if (lengthM >= reached[place]) continue;
                    reached[place] = lengthM;
                    cameFrom[index][place] = source;
                }
            }

            lengths = reached;
        }

        // Both ends have one place.
        for (int index = stops.Count - 1, place = 0; index > 0; place = cameFrom[index][place], index--)
            chosen[index] = stops[index] with { Choices = [stops[index].Choices[place]] };
        for (var index = 0; index < stops.Count; index++)
        {
            if (stops[index].Choices.Length == 1) continue;
            var point = chosen[index].Choices[0].Point;
            notes.Add($"{point.Ident} can be one of {Count(stops[index].Choices.Length)} places; the one at {CoordinateText.Write(point.Position)}, which makes the shorter route, was taken.");
        }

        return chosen;
    }

    private static List<RouteStop> WithoutRepeats(List<RouteStop> stops, ImmutableArray<string>.Builder notes)
    {
        for (var index = 1; index < stops.Count && stops.Count > 2;)
        {
            var (before, here) = (stops[index - 1], stops[index]);
            if (before.Choices[0].Point.Position != here.Choices[0].Point.Position)
            {
                index++;
                continue;
            }

            // The ends stay; between two points of the route the first does.
            var isEnd = index == stops.Count - 1;
            var (kept, dropped) = isEnd ? (here, before) : (before, here);
            if (!string.Equals(kept.Ident, dropped.Ident, StringComparison.OrdinalIgnoreCase))
                notes.Add($"{dropped.Ident} lies at the place of {kept.Ident} and was left out.");
            if (isEnd) stops[index] = here with { Via = before.Via, AirwayMinimum = before.AirwayMinimum };
            else stops[index - 1] = before with { LevelFromHere = here.LevelFromHere ?? before.LevelFromHere };
            stops.RemoveAt(isEnd ? index - 1 : index);
        }

        return stops;
    }

    private static string Count(int places) => places.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
