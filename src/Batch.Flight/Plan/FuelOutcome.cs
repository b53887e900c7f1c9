namespace Batch.Flight.Plan;

/// <summary>The fuel of a leg worked out together with its weight, or why it cannot be.</summary>
internal abstract record FuelOutcome
{
    private FuelOutcome()
    {
    }

    /// <summary>Worked out.</summary>
    /// <param name="Profile">The flight at the takeoff weight that goes with the fuel.</param>
    /// <param name="Alternates">Flights to the alternates.</param>
    /// <param name="Ladder">The fuel; its <see cref="FuelLadder.Most"/> is not yet worked out.</param>
    /// <param name="Assumptions">Assumptions made.</param>
    /// <param name="Notes">Decisions worth knowing.</param>
    public sealed record Solved(
        FlightProfile Profile,
        ImmutableArray<AlternatePlan> Alternates,
        FuelLadder Ladder,
        ImmutableArray<string> Assumptions,
        ImmutableArray<string> Notes) : FuelOutcome;

    /// <summary>Cannot be flown.</summary>
    /// <param name="Why">One sentence.</param>
    /// <param name="Where">Place; empty where it has none.</param>
    public sealed record NotFlyable(string Why, string Where) : FuelOutcome
    {
        /// <summary>Whether it is the weight that a table does not hold.</summary>
        public bool IsByWeight { get; init; }
    }
}
