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
    /// <param name="profile">Profile; each of its slices counts as night when the sun is more than 6° below the horizon at its middle.</param>
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
        var isNightMiddle = Sun.IsNight(times.Takeoff + (profile.Time / 2), PositionAt(route, middle));
        if (!isNightTakeoff && !isNightLanding && !isNightMiddle && profile.Time < Duration.FromHours(4)) return Duration.Zero;
        double hours = 0, nightHours = 0;
        foreach (var slice in profile.Slices)
        {
            var at = times.Takeoff + Duration.FromHours(hours + (slice.Hours / 2));
            if (Sun.IsNight(at, PositionAt(route, slice))) nightHours += slice.Hours;
            hours += slice.Hours;
        }

        return Duration.FromHours(nightHours);
    }

    private static GeoPoint PositionAt(FlownRoute route, ProfileSlice slice)
    {
        var segment = route.Segments[slice.Segment];
        return segment.Path.At(((slice.StartNm + slice.EndNm) / 2) - segment.Start.Value).Point;
    }
}
