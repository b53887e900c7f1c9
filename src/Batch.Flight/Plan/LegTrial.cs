namespace Batch.Flight.Plan;

/// <summary>A leg worked out as far as is needed to compare fuel bought here or there.</summary>
/// <param name="Flight">Levels and fuel.</param>
/// <param name="Most">Most fuel that may be aboard; null where no limit is known.</param>
/// <param name="IsBalanced">Whether every test of the centre of gravity is passed.</param>
internal sealed record LegTrial(NearFlight Flight, Pounds? Most, bool IsBalanced)
{
    /// <summary>The fuel.</summary>
    public FuelLadder Ladder => Flight.Ladder;

    /// <summary>How much is aboard beyond the limits [lb]; zero or less within them.</summary>
    public double OverLb => Most is { } most ? (Ladder.Aboard - most).Value : double.NegativeInfinity;
}
