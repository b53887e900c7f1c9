namespace Batch.Flight.Plan;

/// <summary>Phase of a profile.</summary>
public enum FlightPhase
{
    /// <summary>Climb.</summary>
    Climb,

    /// <summary>Level cruise.</summary>
    Cruise,

    /// <summary>Descent.</summary>
    Descent,

    /// <summary>Approach and landing, an allowance of time and fuel without distance.</summary>
    Approach,
}
