using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Flies a route from takeoff to landing by a type's tables.</summary>
public static class ProfileFlyer
{
    /// <summary>Least cruise between climb and descent [min]; with less the level is too high for the route.</summary>
    public const double LeastCruiseMinutes = 2;

    /// <summary>
    /// Flies a route at a level.
    /// <para>Climb: slices of at most 1,000 ft up from <see cref="ProfileRequest.StartElevation"/>, each the difference of the cumulative climb table at the
    /// takeoff weight and the deviation from the standard temperature in its middle, its air distance turned into ground distance by the wind there.</para>
    /// <para>Cruise: steps of at most 25 NM; speed and flow at the weight, temperature and wind in the middle of each. Where the route asks for a higher level
    /// (<see cref="Route.RouteSegment.LevelFromHere"/>, not on the first segment, whose level is the requested one) it climbs there by the climb table at the
    /// weight it has; a lower level is not flown, nor one that leaves too little cruise, and <see cref="FlightProfile.Notes"/> says so.</para>
    /// <para>Descent: backward from <see cref="ProfileRequest.EndElevation"/> at the destination in the same way, the table as it is; its winds are those of
    /// the time found with a first, still-air arrival and refined once. Last the approach allowance of the type, which takes time and fuel and no
    /// distance.</para>
    /// <para>The burn bias holds for all fuel. Cumulative tables fall to zero at sea level; below it they stay zero.</para>
    /// </summary>
    /// <param name="request">Route, type, level, setting, weight, time and air.</param>
    /// <returns>
    /// The profile; <see cref="ProfileResult.TooShort"/> where less than two minutes of cruise remain; <see cref="ProfileResult.NotFlyable"/> with the place
    /// for a missing table, a query outside one (unless edges may be used), a crosswind above the true airspeed or no ground speed.
    /// </returns>
    public static ProfileResult Fly(ProfileRequest request)
    {
        var tables = request.Type.Tables;
        if (tables.Climb is not { } climb) return Missing(request.Type, "climb table");
        if (tables.Descent is not { } descent) return Missing(request.Type, "descent table");
        if (!tables.Cruise.TryGetValue(request.Setting, out var cruise))
        {
            var known = tables.CruiseSettings.IsDefaultOrEmpty ? "none" : string.Join(", ", tables.CruiseSettings);
            return new ProfileResult.NotFlyable($"{request.Type.Name} has no cruise setting '{request.Setting}'; it has: {known}.", "");
        }

        if ((Incomplete(climb) ?? Incomplete(descent) ?? Incomplete(cruise)) is { } gap) return new ProfileResult.NotFlyable(gap, "");
        if (request.Level < request.StartElevation || request.Level < request.EndElevation)
        {
            var which = request.Level < request.StartElevation ? "departure" : "destination";
            return new ProfileResult.NotFlyable($"The level {ProfileTrack.Altitude(request.Level.Value)} lies below the elevation of the {which}.", "");
        }

        return new ProfileFlight(request, climb, cruise, descent).Fly();
    }

    private static string? Incomplete(PerformanceTable table)
    {
        for (var value = 0; value < table.ValueNames.Length; value++)
            if (!table.Has(value))
                return $"{table.Name} gives no {table.ValueNames[value]}.";
        return null;
    }

    private static ProfileResult.NotFlyable Missing(AircraftType type, string what) => new($"{type.Name} has no {what}.", "");
}
