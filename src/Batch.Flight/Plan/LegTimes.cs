namespace Batch.Flight.Plan;

/// <summary>The times of a leg.</summary>
/// <param name="OffBlocks">Off blocks.</param>
/// <param name="Takeoff">Takeoff.</param>
/// <param name="TopOfClimb">Top of climb.</param>
/// <param name="TopOfDescent">Top of descent.</param>
/// <param name="Landing">Landing.</param>
/// <param name="OnBlocks">On blocks.</param>
public sealed record LegTimes(Instant OffBlocks, Instant Takeoff, Instant TopOfClimb, Instant TopOfDescent, Instant Landing, Instant OnBlocks)
{
    /// <summary>Off blocks to on blocks; flight time in the sense of 14 CFR 1.1.</summary>
    public Duration Block => OnBlocks - OffBlocks;

    /// <summary>Takeoff to landing.</summary>
    public Duration Air => Landing - Takeoff;
}
