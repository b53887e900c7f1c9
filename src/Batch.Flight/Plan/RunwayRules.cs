namespace Batch.Flight.Plan;

/// <summary>Factors that a rule set and the operator put on runway distances before they are compared with what is available.</summary>
public sealed record RunwayRules
{
    /// <summary>Factor on the takeoff distance over the obstacle against the takeoff distance available; 1 for the plain distance.</summary>
    public double TakeoffFactor { get; init; } = 1;

    /// <summary>Factor on the landing distance over the obstacle against the landing distance available; 1 for the plain distance.</summary>
    public double LandingFactor { get; init; } = 1;

    /// <summary>Citation of the takeoff comparison.</summary>
    public required string TakeoffCitation { get; init; }

    /// <summary>Citation of the landing comparison.</summary>
    public required string LandingCitation { get; init; }
}
