namespace Batch.Flight.Plan;

/// <summary>The fuel of a leg: what the rules require, item by item, and what is planned aboard.</summary>
public sealed record FuelLadder
{
    /// <summary>Start, run-up and taxi out.</summary>
    public required Pounds Taxi { get; init; }

    /// <summary>Takeoff to landing.</summary>
    public required Pounds Trip { get; init; }

    /// <summary>Contingency.</summary>
    public required Pounds Contingency { get; init; }

    /// <summary>To the farthest filed alternate, or the holding instead where none is filed.</summary>
    public required Pounds Alternate { get; init; }

    /// <summary>Final reserve.</summary>
    public required Pounds FinalReserve { get; init; }

    /// <summary>Time of the final reserve.</summary>
    public required Duration FinalReserveTime { get; init; }

    /// <summary>Flow with which the final reserve was computed.</summary>
    public required PoundsPerHour FinalReserveFlow { get; init; }

    /// <summary>Additional fuel: the greatest shortfall of <see cref="CriticalPoints"/>, zero or more.</summary>
    public required Pounds Additional { get; init; }

    /// <summary>The worst point of the cruise for each failure that was reckoned; empty where the rules ask for none or none could be.</summary>
    public ImmutableArray<CriticalPoint> CriticalPoints { get; init; } = [];

    /// <summary>The dispatcher's or captain's extra beyond the requirement.</summary>
    public required Pounds Discretionary { get; init; }

    /// <summary>Fuel that the aircraft must still have on landing because a later departure cannot be fuelled; zero where it can.</summary>
    public required Pounds NeededAfterLanding { get; init; }

    /// <summary>Least block fuel: taxi, trip, contingency, alternate, final reserve and additional.</summary>
    public Pounds Required => Taxi + Trip + Contingency + Alternate + FinalReserve + Additional;

    /// <summary>Fuel aboard before fuelling.</summary>
    public required Pounds Before { get; init; }

    /// <summary>Whether <see cref="Before"/> is known: from the book or from the leg before; else it was taken as the empty tank.</summary>
    public required bool IsBeforeKnown { get; init; }

    /// <summary>Whether the departure sells this fuel; null where the book does not say.</summary>
    public required bool? IsSoldHere { get; init; }

    /// <summary>Fuel to load here.</summary>
    public required Pounds Uplift { get; init; }

    /// <summary>Fuel aboard at off blocks.</summary>
    public required Pounds Aboard { get; init; }

    /// <summary>Fuel at takeoff.</summary>
    public Pounds Takeoff => Aboard - Taxi;

    /// <summary>Fuel on landing.</summary>
    public Pounds Landing => Takeoff - Trip;

    /// <summary>What must be left on landing by the rules: contingency is spent, so alternate, final reserve and additional.</summary>
    public Pounds RequiredOnLanding => Alternate + FinalReserve + Additional;

    /// <summary>Aboard beyond the requirement; negative when short.</summary>
    public Pounds Margin => Aboard - Required;

    /// <summary>Most fuel that could be aboard at off blocks.</summary>
    public required Pounds Most { get; init; }

    /// <summary>
    /// The limit that binds <see cref="Most"/>: tank, ramp weight, takeoff weight, landing weight, zero-fuel weight, departure runway, arrival runway; empty
    /// where no limit is known.
    /// </summary>
    public required string MostBoundBy { get; init; }

    /// <summary>Rounds of the iteration of fuel and weight, those of the flights near which it began included.</summary>
    public required int Rounds { get; init; }

    /// <summary>Whether the iteration came to rest within 1 lb.</summary>
    public required bool IsConverged { get; init; }
}
