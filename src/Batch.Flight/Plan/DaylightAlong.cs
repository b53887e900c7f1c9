using Batch.Flight.Earth;
using Batch.Flight.Fleet;
using Batch.Flight.Route;

namespace Batch.Flight.Plan;

/// <summary>The sun at both ends of a leg and the night time on the way.</summary>
internal static class DaylightAlong
{
    /// <summary>The daylight of a leg.</summary>
    /// <param name="from">Departure.</param>
    /// <param name="to">Destination.</param>
    /// <param name="route">Route.</param>
    /// <param name="profile">Profile; night begins and ends within a slice where the sun passes 6° below the horizon.</param>
    /// <param name="times">Times.</param>
    public static Daylight Of(Airport from, Airport to, FlownRoute route, FlightProfile profile, LegTimes times)
    {
        var departure = Sun.On(times.Takeoff.InZone(from.Zone).Date, from.Zone, from.Position);
        var destination = Sun.On(times.Landing.InZone(to.Zone).Date, to.Zone, to.Position);
        var isNightTakeoff = Sun.IsNight(times.Takeoff, from.Position);
        var isNightLanding = Sun.IsNight(times.Landing, to.Position);
        return new Daylight
        {
            Departure = departure,
            Destination = destination,
            Night = NightTime(route, profile, times, isNightTakeoff, isNightLanding),
            IsNightTakeoff = isNightTakeoff,
            IsNightLanding = isNightLanding,
        };
    }

    private static Duration NightTime(FlownRoute route, FlightProfile profile, LegTimes times, bool isNightTakeoff, bool isNightLanding)
    {
        // Day at both ends and in the middle of a flight shorter than a night is day throughout.
        var middle = profile.Slices[profile.Slices.Length / 2];
        var isNightMiddle = Sun.IsNight(times.Takeoff + (profile.Time / 2), PositionAt(route, middle, (middle.StartNm + middle.EndNm) / 2));
        if (!isNightTakeoff && !isNightLanding && !isNightMiddle && profile.Time < Duration.FromHours(4)) return Duration.Zero;
        double hours = 0, nightHours = 0;
        var before = Below(times.Takeoff, PositionAt(route, profile.Slices[0], profile.Slices[0].StartNm));
        foreach (var slice in profile.Slices)
        {
            hours += slice.Hours;
            var after = Below(times.Takeoff + Duration.FromHours(hours), PositionAt(route, slice, slice.EndNm));
            nightHours += slice.Hours * ShareAboveZero(before, after);
            before = after;
        }

        return Duration.FromHours(nightHours);
    }

    /// <summary>How far the sun is below the end of civil twilight [deg]; less than 0 by day.</summary>
    private static double Below(Instant at, GeoPoint place) => Sun.CivilTwilightAltitudeDeg - Sun.AltitudeDeg(at, place);

    /// <summary>
    /// The share of the way from one value to another that lies above 0, on a straight line between them: within a slice of minutes the sun moves as good as
    /// evenly.
    /// </summary>
    private static double ShareAboveZero(double from, double to) => (from > 0, to > 0) switch
    {
        (true, true) => 1,
        (false, false) => 0,
        _ => Math.Max(from, to) / Math.Abs(to - from),
    };

    private static GeoPoint PositionAt(FlownRoute route, ProfileSlice slice, double alongNm)
    {
        var segment = route.Segments[slice.Segment];
        return segment.Path.At(alongNm - segment.Start.Value).Point;
    }
}
