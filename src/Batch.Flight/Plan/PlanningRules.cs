namespace Batch.Flight.Plan;

/// <summary>What the planner needs to know of the rules for one leg.</summary>
public sealed record PlanningRules
{
    /// <summary>Name of the rule set with its date, such as <c>us-charter 2026-09</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Fuel amounts.</summary>
    public required FuelRules Fuel { get; init; }

    /// <summary>Runway factors.</summary>
    public required RunwayRules Runway { get; init; }

    /// <summary>Standard weights.</summary>
    public required StandardWeights Weights { get; init; }

    /// <summary>Altitude above which an aircraft without pressure needs oxygen [ft]; null where the rules ask for none or the type is pressurised.</summary>
    public Feet? OxygenFrom { get; init; }

    /// <summary>Height from which a level is filed as a flight level [ft]; below it as an altitude.</summary>
    public Feet FlightLevelsFrom { get; init; } = new(10_000);
}
