using System.Globalization;
using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Route;

namespace Batch.Flight.Plan;

/// <summary>The route under a profile: where it is, which way it leads and what the air does there.</summary>
internal sealed class ProfileTrack(FlownRoute route, AirField air, Instant takeoff)
{
    /// <summary>Distances closer than this are the same place [NM].</summary>
    public const double SamePlaceNm = 1e-9;

    private const double FlightLevelFromFt = 10_000;

    private readonly ImmutableArray<RouteSegment> _segments = route.Segments;

    /// <summary>Length of the route [NM].</summary>
    public double LengthNm { get; } = (route.Segments[^1].Start + route.Segments[^1].Length).Value;

    /// <summary>Index of the last segment.</summary>
    public int Last => _segments.Length - 1;

    /// <summary>The segments.</summary>
    public ImmutableArray<RouteSegment> Segments => _segments;

    /// <summary>Distance along the route at a segment's start [NM].</summary>
    public double StartNm(int segment) => _segments[segment].Start.Value;

    /// <summary>Distance along the route at a segment's end [NM].</summary>
    public double EndNm(int segment) => segment == Last ? LengthNm : _segments[segment + 1].Start.Value;

    /// <summary>Position and true course at a distance along the route, which may lie beyond the ends of the segment: its line goes on.</summary>
    public GeodesicEnd At(int segment, double alongNm) => _segments[segment].Path.At(alongNm - _segments[segment].Start.Value);

    /// <summary>Wind and temperature as met at a place on the route.</summary>
    public AirSample Air(GeodesicEnd at, double altitudeFt, double hours) => air.Met(at, new Feet(altitudeFt), takeoff + Duration.FromHours(hours));

    /// <summary>Whether the air changes between two times since takeoff [h].</summary>
    public bool AirChangesBetween(double earlierHours, double laterHours) =>
        air.ChangesBetween(takeoff + Duration.FromHours(earlierHours), takeoff + Duration.FromHours(laterHours));

    /// <summary>
    /// The wind triangle of a step whose air and course are set, filled in; a step without airspeed stays over its place.
    /// </summary>
    /// <returns>What is wrong with the wind; null where it can be flown.</returns>
    public ProfileTrouble? Steer(ref ProfileSlice slice)
    {
        if (slice.TrueAirspeedKt == 0 && slice.Phase != FlightPhase.Cruise)
        {
            slice = slice with { TrueHeadingDeg = slice.TrueCourseDeg };
            return null;
        }

        var solution = WindTriangle.Solve(new TrueDegrees(slice.TrueCourseDeg), new Knots(slice.TrueAirspeedKt), slice.Air.WindFrom, slice.Air.WindSpeed);
        if (!solution.IsFlyable)
        {
            var airspeed = Math.Round(slice.TrueAirspeedKt);
            var why = Math.Abs(solution.Crosswind.Value) > slice.TrueAirspeedKt
                ? string.Create(CultureInfo.InvariantCulture,
                    $"The crosswind of {Math.Abs(solution.Crosswind.Value):0} kt is above the true airspeed of {airspeed:0} kt.")
                : string.Create(CultureInfo.InvariantCulture,
                    $"A headwind of {solution.Headwind.Value:0} kt leaves no ground speed at a true airspeed of {airspeed:0} kt.");
            return new ProfileTrouble(why, Where(slice.Segment, slice.StartNm, slice.StartFt));
        }

        slice = slice with { TrueHeadingDeg = solution.Heading.Value, GroundSpeedKt = solution.GroundSpeed.Value };
        return null;
    }

    /// <summary>A place on the route for people, such as <c>12 NM past NORRA at FL160</c>.</summary>
    public string Where(int segment, double alongNm, double altitudeFt)
    {
        var pastNm = Math.Round(Math.Clamp(alongNm, 0, LengthNm) - StartNm(segment), MidpointRounding.AwayFromZero);
        var place = pastNm < 1 ? "over " : string.Create(CultureInfo.InvariantCulture, $"{pastNm:0} NM past ");
        return place + _segments[segment].From.Ident + " at " + Altitude(altitudeFt);
    }

    /// <summary>An altitude for people: a flight level where it is a whole one at 10,000 ft or above, else feet.</summary>
    public static string Altitude(double altitudeFt) => altitudeFt >= FlightLevelFromFt && altitudeFt % 500 == 0
        ? string.Create(CultureInfo.InvariantCulture, $"FL{altitudeFt / 100:000}")
        : string.Create(CultureInfo.InvariantCulture, $"{altitudeFt:#,##0} ft");
}
