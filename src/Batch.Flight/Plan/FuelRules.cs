namespace Batch.Flight.Plan;

/// <summary>
/// The fuel amounts that a rule set and the operator demand of one leg, resolved for its rules, purpose and type. Times are turned into fuel by the planner.
/// </summary>
public sealed record FuelRules
{
    /// <summary>Final reserve by day.</summary>
    public required Duration FinalReserveDay { get; init; }

    /// <summary>Final reserve by night (takeoff, landing or landing plus reserve in the night).</summary>
    public required Duration FinalReserveNight { get; init; }

    /// <summary>How the final reserve is turned into fuel.</summary>
    public required ReserveBasis FinalReserveBasis { get; init; }

    /// <summary>Citation of the final reserve.</summary>
    public required string FinalReserveCitation { get; init; }

    /// <summary>Contingency as a fraction of trip fuel, zero or more.</summary>
    public double ContingencyFraction { get; init; }

    /// <summary>Least contingency as holding time at 1,500 ft above the destination; zero for none.</summary>
    public Duration ContingencyFloor { get; init; }

    /// <summary>Citation of the contingency; empty where there is none.</summary>
    public string ContingencyCitation { get; init; } = "";

    /// <summary>Holding time to carry where no alternate is filed; zero for none.</summary>
    public Duration WithoutAlternateHold { get; init; }

    /// <summary>Citation of the holding without an alternate; empty where there is none.</summary>
    public string WithoutAlternateCitation { get; init; } = "";

    /// <summary>Whether the rules ask for additional fuel for a failure at the critical point.</summary>
    public bool AsksForAdditional { get; init; }

    /// <summary>Citation of the alternate fuel.</summary>
    public string AlternateCitation { get; init; } = "";
}
