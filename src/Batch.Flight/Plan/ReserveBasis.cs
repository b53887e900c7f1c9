namespace Batch.Flight.Plan;

/// <summary>The fuel flow with which a reserve time is turned into fuel.</summary>
public enum ReserveBasis
{
    /// <summary>Normal cruise flow at the planned level and setting, at the weight at the end of cruise.</summary>
    Cruise,

    /// <summary>Holding flow at 1,500 ft above the alternate (or the destination where there is none), ISA, at the estimated arrival weight.</summary>
    Holding,
}
