namespace Batch.Flight.Plan;

/// <summary>What fails at the critical point, for the additional fuel.</summary>
public enum CriticalFailure
{
    /// <summary>The cabin loses its pressure.</summary>
    CabinPressure,

    /// <summary>One engine of several stops.</summary>
    Engine,
}
