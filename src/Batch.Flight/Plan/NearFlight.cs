namespace Batch.Flight.Plan;

/// <summary>A leg worked out from some fuel, to begin near it when it is worked out from other fuel.</summary>
/// <param name="Level">Level.</param>
/// <param name="AlternateLevels">Levels of the flights to the alternates, in the order filed.</param>
/// <param name="Ladder">The fuel.</param>
internal sealed record NearFlight(Feet Level, ImmutableArray<Feet> AlternateLevels, FuelLadder Ladder)
{
    /// <summary>What of an outcome is worth beginning near; null where there is none.</summary>
    /// <param name="outcome">The leg worked out.</param>
    public static NearFlight? Of(FuelOutcome outcome) =>
        outcome is FuelOutcome.Solved solved ? new NearFlight(solved.Profile.Level, [.. solved.Alternates.Select(plan => plan.Level)], solved.Ladder) : null;
}
