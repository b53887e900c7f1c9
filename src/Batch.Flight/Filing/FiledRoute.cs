using Batch.Flight.Plan;
using Batch.Flight.Route;

namespace Batch.Flight.Filing;

/// <summary>Item 15 of a flight plan: speed, level and route as planned (ICAO Doc 4444, appendix 2, item 15).</summary>
internal static class FiledRoute
{
    private const string Coordinate = "coordinate";

    /// <summary>
    /// Writes it: an airway once between the points where it is joined and left, DCT where none leads on (not between two coordinates), a speed and level
    /// behind the point where a new level begins.
    /// </summary>
    /// <param name="plan">The leg.</param>
    public static string Of(LegPlan.Planned plan)
    {
        var levelsFrom = plan.Planning.FlightLevelsFrom;
        var cruise = plan.Profile.Slices.Where(slice => slice.Phase == FlightPhase.Cruise).ToArray();
        var speed = cruise.Length > 0 ? cruise[0].TrueAirspeedKt : FastestOf(plan.Profile);
        var level = cruise.Length > 0 ? cruise[0].EndFt : plan.Profile.Level.Value;
        var words = new List<string> { FlightPlanField.SpeedAndLevel(new Knots(speed), new Feet(level), levelsFrom) };
        var segments = plan.Route.Segments;
        for (var index = 0; index < segments.Length; index++)
        {
            var (segment, isLast) = (segments[index], index == segments.Length - 1);
            var isAirway = segment.Via != RouteText.Direct;
            var isGoingOn = isAirway && index > 0 && segments[index - 1].Via == segment.Via && !words[^1].Contains('/', StringComparison.Ordinal);
            var isBetweenCoordinates = !isAirway && IsCoordinate(segment.From) && IsCoordinate(segment.To);
            if (!isGoingOn && !isBetweenCoordinates) words.Add(segment.Via);
            if (isLast) break;
            var next = segments[index + 1];
            var change = cruise.FirstOrDefault(slice => slice.Segment > index);
            var isNewLevel = next.LevelFromHere is { } asked
                && change.Phase == FlightPhase.Cruise
                && Math.Abs(change.EndFt - asked.Value) < 1
                && Math.Abs(change.EndFt - level) >= 1;
            if (isNewLevel) level = change.EndFt;
            else if (isAirway && next.Via == segment.Via) continue;
            words.Add(Point(segment.To)
                + (isNewLevel ? "/" + FlightPlanField.SpeedAndLevel(new Knots(change.TrueAirspeedKt), new Feet(level), levelsFrom) : ""));
        }

        return string.Join(' ', words);
    }

    // A point whose ident is no designator of two to five letters and figures is one of the operator's own, which nobody else knows.
    private static string Point(RoutePoint point) =>
        point.Kind == Coordinate || FlightPlanField.IsSignificantPoint(point.Ident) ? point.Ident.ToUpperInvariant() : CoordinateText.Write(point.Position);

    private static bool IsCoordinate(RoutePoint point) => point.Kind == Coordinate || !FlightPlanField.IsSignificantPoint(point.Ident);

    // A leg too short to level off: the greatest speed on the way.
    private static double FastestOf(FlightProfile profile) => profile.Slices.Max(slice => slice.TrueAirspeedKt);
}
