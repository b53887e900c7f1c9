using Batch.Flight.Fleet;
using Batch.Flight.Route;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>The cruise levels that a route and a type leave to choose from.</summary>
public static class LevelCandidates
{
    /// <summary>Least height of a candidate above the higher of the two airports [ft].</summary>
    public const double LeastHeightFt = 1000;

    /// <summary>
    /// The usable levels, lowest first: those of the semicircular rule for the direction that covers most of the distance, at or above every segment's minimum
    /// altitude and at least 1,000 ft above the surface, at or below the ceiling, and within the altitudes of the type's climb, cruise and descent tables.
    /// Visual flights may also use every 500 ft up to 3,000 ft above the surface. Empty where nothing is left or a table is missing.
    /// </summary>
    /// <param name="route">Route.</param>
    /// <param name="rules">Flight rules.</param>
    /// <param name="type">Type, for its tables.</param>
    /// <param name="setting">Cruise setting.</param>
    /// <param name="ceiling">The lowest of all ceilings that hold (type, aircraft, oxygen) [ft]; null for none.</param>
    /// <param name="surface">Elevation of the higher of the two airports [ft].</param>
    public static ImmutableArray<Feet> Of(FlownRoute route, FlightRules rules, AircraftType type, string setting, Feet? ceiling, Feet surface)
    {
        if (type.Tables.Climb is not { } climb || type.Tables.Descent is not { } descent || !type.Tables.Cruise.TryGetValue(setting, out var cruise)) return [];

        var lowestFt = Math.Max(surface.Value + LeastHeightFt, cruise.Lowest(2));
        foreach (var segment in route.Segments) lowestFt = Math.Max(lowestFt, segment.MinimumAltitude?.Value ?? double.NegativeInfinity);
        var highestFt = Math.Min(Math.Min(climb.Highest(2), cruise.Highest(2)), Math.Min(descent.Highest(0), ceiling?.Value ?? double.PositiveInfinity));

        var candidates = ImmutableArray.CreateBuilder<Feet>();
        var anyUpToFt = rules == FlightRules.Vfr ? surface.Value + Semicircular.AnyVisualLevelUpToFt : double.NegativeInfinity;
        for (var levelFt = Math.Ceiling(lowestFt / 500) * 500; levelFt <= Math.Min(anyUpToFt, highestFt); levelFt += 500) candidates.Add(new Feet(levelFt));
        foreach (var level in Semicircular.Levels(rules, IsMostlyEastbound(route)))
            if (level.Value >= lowestFt && level.Value <= highestFt && level.Value > anyUpToFt)
                candidates.Add(level);
        return candidates.ToImmutable();
    }

    /// <summary>Whether at least half of the distance is on segments whose magnetic course at their start is eastbound.</summary>
    /// <param name="route">Route.</param>
    public static bool IsMostlyEastbound(FlownRoute route)
    {
        var balanceNm = 0.0;
        foreach (var segment in route.Segments) balanceNm += Semicircular.IsEastbound(segment.MagneticCourse) ? segment.Length.Value : -segment.Length.Value;
        return balanceNm >= 0;
    }
}
