using Batch.Flight.Fleet;
using Batch.Flight.Route;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>A leg with every reference resolved and everything that does not depend on fuel worked out.</summary>
internal sealed record LegSetup
{
    /// <summary>The leg.</summary>
    public required Leg Leg { get; init; }

    /// <summary>The aircraft.</summary>
    public required Aircraft Aircraft { get; init; }

    /// <summary>Its type.</summary>
    public required AircraftType Type { get; init; }

    /// <summary>Departure.</summary>
    public required Airport From { get; init; }

    /// <summary>Destination.</summary>
    public required Airport To { get; init; }

    /// <summary>Alternates in the order filed.</summary>
    public required ImmutableArray<Airport> Alternates { get; init; }

    /// <summary>Captain; null where the code does not resolve.</summary>
    public CrewMember? Captain { get; init; }

    /// <summary>Second pilot; null where there is none or the code does not resolve.</summary>
    public CrewMember? SecondPilot { get; init; }

    /// <summary>Flight rules taken.</summary>
    public required FlightRules Rules { get; init; }

    /// <summary>Purpose taken.</summary>
    public required LegPurpose Purpose { get; init; }

    /// <summary>Planning rules.</summary>
    public required PlanningRules Planning { get; init; }

    /// <summary>Route.</summary>
    public required FlownRoute Route { get; init; }

    /// <summary>Backup route; null where none is given or it does not resolve.</summary>
    public FlownRoute? Backup { get; init; }

    /// <summary>Level asked for: that of the Level cell or, where it is empty, the one with which the route text begins [ft]; null to choose.</summary>
    public Feet? Level { get; init; }

    /// <summary>Cruise setting.</summary>
    public required string Setting { get; init; }

    /// <summary>Lower of the type's and the aircraft's ceiling [ft]; null where neither is known.</summary>
    public Feet? Ceiling { get; init; }

    /// <summary>
    /// Above this altitude there would have to be oxygen, and none is aboard [ft]; null where it does not matter. An automatic level stays below it where it
    /// can.
    /// </summary>
    public Feet? OxygenFrom { get; init; }

    /// <summary>The ceiling of an automatic level: that of oxygen, unless it leaves no level.</summary>
    /// <param name="route">The route.</param>
    /// <param name="surface">Elevation of the higher airport.</param>
    public Feet? AutomaticCeiling(FlownRoute route, Feet surface)
    {
        if (OxygenFrom is not { } oxygen || Ceiling <= oxygen) return Ceiling;
        return LevelCandidates.Of(route, Rules, Type, Setting, oxygen, surface).IsEmpty ? Ceiling : oxygen;
    }

    /// <summary>Taxi fuel.</summary>
    public required Pounds Taxi { get; init; }

    /// <summary>Takeoff.</summary>
    public required Instant Takeoff { get; init; }

    /// <summary>Time from landing to on blocks.</summary>
    public required Duration TaxiIn { get; init; }

    /// <summary>Load, placed.</summary>
    public required LoadPlan Load { get; init; }

    /// <summary>UTC date of off blocks, for the magnetic model.</summary>
    public LocalDate Date => Leg.OffBlocks.InUtc().Date;

    /// <summary>Assumptions made so far.</summary>
    public required ImmutableArray<string> Assumptions { get; init; }

    /// <summary>Decisions worth knowing so far.</summary>
    public required ImmutableArray<string> Notes { get; init; }
}
