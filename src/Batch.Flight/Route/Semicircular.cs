using Batch.Flight.Week;

namespace Batch.Flight.Route;

/// <summary>
/// Cruise levels by magnetic course. Visual: 14 CFR 91.159(a). Instrument: 14 CFR 91.179(b), with reduced vertical separation minimum from FL290 to FL410 and
/// 4,000 ft steps above. The instrument rule binds in uncontrolled airspace; in controlled airspace the level is the one assigned, and this is the one to ask
/// for.
/// </summary>
public static class Semicircular
{
    /// <summary>Height above the surface up to which a visual flight may choose any level [ft] (14 CFR 91.159).</summary>
    public const double AnyVisualLevelUpToFt = 3000;

    /// <summary>From here up a visual flight has no level by rule: the altitude is the one air traffic control assigns [ft] (14 CFR 91.159(b)).</summary>
    public const double VisualBelowFt = 18_000;

    private const double ReducedSeparationToFt = 41_000;
    private const double HighestFt = 51_000;

    private static readonly ImmutableArray<Feet> InstrumentEast = All(FlightRules.Ifr, isEastbound: true);
    private static readonly ImmutableArray<Feet> InstrumentWest = All(FlightRules.Ifr, isEastbound: false);
    private static readonly ImmutableArray<Feet> VisualEast = All(FlightRules.Vfr, isEastbound: true);
    private static readonly ImmutableArray<Feet> VisualWest = All(FlightRules.Vfr, isEastbound: false);

    /// <summary>Whether a course counts as eastbound: 000 up to and with 179; the half degree up to 180 belongs to it.</summary>
    /// <param name="course">Magnetic course.</param>
    public static bool IsEastbound(MagneticDegrees course) => course.Value < 180;

    /// <summary>The levels that fit a course, lowest first, up to FL510; visual levels end below 18,000 ft.</summary>
    /// <param name="rules">Flight rules.</param>
    /// <param name="isEastbound">Whether the course is eastbound.</param>
    public static ImmutableArray<Feet> Levels(FlightRules rules, bool isEastbound) => (rules, isEastbound) switch
    {
        (FlightRules.Ifr, true) => InstrumentEast,
        (FlightRules.Ifr, false) => InstrumentWest,
        (FlightRules.Vfr, true) => VisualEast,
        (FlightRules.Vfr, false) => VisualWest,
    };

    /// <summary>Whether a level fits a course.</summary>
    /// <param name="rules">Flight rules.</param>
    /// <param name="course">Magnetic course.</param>
    /// <param name="level">Level as altitude [ft].</param>
    /// <param name="surface">Elevation of the surface below [ft]; a visual flight up to 3,000 ft above it may have any level.</param>
    public static bool Fits(FlightRules rules, MagneticDegrees course, Feet level, Feet surface)
    {
        if (rules == FlightRules.Vfr && (level - surface).Value <= AnyVisualLevelUpToFt) return true;
        // Whole feet: a level that was converted, such as FL140, may be a hair beside its thousand.
        return FitsRule(rules, IsEastbound(course), Math.Round(level.Value));
    }

    /// <summary>The paragraph that a level follows from.</summary>
    /// <param name="rules">Flight rules.</param>
    public static string Citation(FlightRules rules) => rules switch
    {
        FlightRules.Ifr => "14 CFR 91.179(b)",
        FlightRules.Vfr => "14 CFR 91.159(a)",
    };

    private static bool FitsRule(FlightRules rules, bool isEastbound, double levelFt)
    {
        if (rules == FlightRules.Vfr) return levelFt < VisualBelowFt && IsThousand(levelFt - 500, isEastbound);
        // With reduced separation the odd and even thousands go on through FL290; above FL410: 450, 490 eastbound, 430, 470, 510 westbound.
        if (levelFt <= ReducedSeparationToFt) return IsThousand(levelFt, isEastbound);
        return (levelFt - ReducedSeparationToFt) % 4000 == (isEastbound ? 0 : 2000);
    }

    private static bool IsThousand(double levelFt, bool isOdd) => levelFt > 0 && levelFt % 2000 == (isOdd ? 1000 : 0);

    private static ImmutableArray<Feet> All(FlightRules rules, bool isEastbound)
    {
        var levels = ImmutableArray.CreateBuilder<Feet>();
        for (var levelFt = 1000; levelFt <= HighestFt; levelFt += 500)
            if (FitsRule(rules, isEastbound, levelFt))
                levels.Add(new Feet(levelFt));
        return levels.ToImmutable();
    }
}
