using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Rules;

/// <summary>The facts that decide which rules hold for a leg. A null fact is not known.</summary>
internal sealed record LegFacts
{
    /// <summary>Flight rules.</summary>
    public required FlightRules Rules { get; init; }

    /// <summary>Purpose.</summary>
    public required LegPurpose Purpose { get; init; }

    /// <summary>How the type is powered.</summary>
    public required EngineKind? Engine { get; init; }

    /// <summary>Number of engines.</summary>
    public required int? Engines { get; init; }

    /// <summary>Passenger seats of the type.</summary>
    public required int? Seats { get; init; }

    /// <summary>Pilots that the type certificate requires, 1 or 2.</summary>
    public int? Pilots { get; init; }

    /// <summary>Whether the cabin is pressurised.</summary>
    public required bool? Pressurised { get; init; }

    /// <summary>Whether passengers are aboard.</summary>
    public required bool? Passengers { get; init; }

    /// <summary>Category of the type certificate.</summary>
    public CertificationCategory? Category { get; init; }

    /// <summary>Maximum takeoff weight [kg].</summary>
    public required double? TakeoffKg { get; init; }

    /// <summary>The facts before planning; an empty rules cell counts as IFR and an empty purpose cell as charter, the stricter of each.</summary>
    /// <param name="leg">The leg as read.</param>
    /// <param name="type">Its type.</param>
    public static LegFacts Of(Leg leg, AircraftType type) => Of(type, leg.Rules ?? FlightRules.Ifr, leg.Purpose ?? LegPurpose.Charter, null);

    /// <summary>The facts of a planned leg.</summary>
    /// <param name="plan">The plan.</param>
    public static LegFacts Of(LegPlan.Planned plan) => Of(plan.Type, plan.Rules, plan.Purpose, plan.Load.Passengers > 0);

    private static LegFacts Of(AircraftType type, FlightRules rules, LegPurpose purpose, bool? passengers) => new()
    {
        Rules = rules,
        Purpose = purpose,
        Engine = type.Engine,
        Engines = type.Engines,
        Seats = type.Seats,
        Pilots = type.RequiredPilots,
        Pressurised = type.Pressurised,
        Category = type.Certification,
        Passengers = passengers,
        TakeoffKg = type.MaximumTakeoff?.Kilograms,
    };
}
