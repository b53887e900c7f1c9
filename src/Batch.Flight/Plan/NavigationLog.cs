using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Route;

namespace Batch.Flight.Plan;

/// <summary>The navigation log of a flown profile.</summary>
public static class NavigationLog
{
    /// <summary>
    /// One line for the departure, every route point, every top of climb, the top of descent and the destination. Course, variation and heading are those at
    /// the start of the stretch; wind (by components), temperature and airspeed are means by time over it, the ground speed is its length by its time; the
    /// heading holds that wind. A route that asks for higher levels has a top of climb for each; where one lies on a route point its line follows that point's,
    /// with a stretch of no length. The last stretch holds the time and fuel of the approach allowance too, which is not in its speeds. Distances, times and
    /// burns add up to the profile's.
    /// </summary>
    /// <param name="profile">The profile.</param>
    /// <param name="route">The route it was flown on.</param>
    /// <param name="takeoff">Instant of takeoff.</param>
    /// <param name="fuelAtTakeoff">Fuel aboard at takeoff.</param>
    /// <param name="date">Day, for the magnetic variation between route points.</param>
    public static ImmutableArray<LogLine> Of(FlightProfile profile, FlownRoute route, Instant takeoff, Pounds fuelAtTakeoff, LocalDate date)
    {
        var lines = ImmutableArray.CreateBuilder<LogLine>(route.Segments.Length + 3);
        var slices = profile.Slices;
        lines.Add(new LogLine
        {
            Point = route.From.Ident,
            Kind = LogPointKind.Airport,
            Position = route.From.Position,
            Altitude = new Feet(slices.Length > 0 ? slices[0].StartFt : profile.Level.Value),
            Remaining = fuelAtTakeoff,
            Over = takeoff,
            AlongRoute = NauticalMiles.Zero,
        });

        var stretch = new LogStretch();
        double hours = 0, burnLb = 0;
        for (var index = 0; index < slices.Length; index++)
        {
            ref readonly var slice = ref slices.ItemRef(index);
            stretch.Add(slice);
            hours += slice.Hours;
            burnLb += slice.BurnLb;

            var isLast = index == slices.Length - 1;
            var isAtPoint = isLast || slices[index + 1].Segment != slice.Segment;
            var isTopOfClimb = !isLast && slice.Phase == FlightPhase.Climb && slices[index + 1].Phase == FlightPhase.Cruise;
            var isTopOfDescent = !isLast && slice.Phase == FlightPhase.Cruise && slices[index + 1].Phase == FlightPhase.Descent;
            var segment = route.Segments[slice.Segment];
            if (isAtPoint)
            {
                var kind = isLast ? LogPointKind.Airport : LogPointKind.Fix;
                Add(segment.To.Ident, kind, segment.To.Position, segment, slice);
            }

            if (isTopOfClimb || isTopOfDescent)
            {
                var position = isAtPoint ? segment.To.Position : segment.Path.At(slice.EndNm - segment.Start.Value).Point;
                Add(isTopOfClimb ? "TOC" : "TOD", isTopOfClimb ? LogPointKind.TopOfClimb : LogPointKind.TopOfDescent, position, segment, slice);
            }
        }

        return lines.ToImmutable();

        void Add(string point, LogPointKind kind, GeoPoint position, RouteSegment segment, in ProfileSlice slice)
        {
            var over = takeoff + Duration.FromHours(hours);
            lines.Add(Line(stretch, segment, date) with
            {
                Point = point,
                Kind = kind,
                Position = position,
                Altitude = new Feet(slice.EndFt),
                Time = over - lines[^1].Over,
                Remaining = new Pounds(fuelAtTakeoff.Value - burnLb),
                Over = over,
                AlongRoute = new NauticalMiles(slice.EndNm),
            });
            stretch = new LogStretch();
        }
    }

    // What belongs to the stretch; the point is set by the caller.
    private static LogLine Line(LogStretch stretch, RouteSegment segment, LocalDate date)
    {
        var line = new LogLine
        {
            Point = "",
            Kind = LogPointKind.Fix,
            Position = default,
            Via = segment.Via,
            Distance = new NauticalMiles(stretch.GroundNm),
            Altitude = default,
            MinimumAltitude = segment.MinimumAltitude,
            Burn = new Pounds(stretch.BurnLb),
            Remaining = default,
            Over = default,
            AlongRoute = default,
        };
        if (!(stretch.MovingHours > 0)) return line;

        var pastNm = stretch.StartNm - segment.Start.Value;
        var start = segment.Path.At(pastNm);
        var variationDeg = pastNm <= 0 ? segment.VariationDeg : MagneticModel.VariationDeg(start.Point, new Feet(stretch.StartFt), date);
        var course = pastNm <= 0 ? segment.TrueCourse : TrueDegrees.Of(start.AzimuthDeg);
        var airspeed = new Knots(stretch.AirNm / stretch.MovingHours);
        var wind = stretch.Wind;
        var solution = WindTriangle.Solve(course, airspeed, wind.From, wind.Speed);
        return line with
        {
            TrueCourse = course,
            MagneticCourse = course.ToMagnetic(variationDeg),
            VariationDeg = variationDeg,
            Heading = solution.IsFlyable ? solution.Heading.ToMagnetic(variationDeg) : null,
            WindFrom = wind.From,
            WindSpeed = wind.Speed,
            Temperature = new Celsius(stretch.TemperatureC),
            TrueAirspeed = airspeed,
            GroundSpeed = new Knots(stretch.GroundNm / stretch.MovingHours),
        };
    }
}
