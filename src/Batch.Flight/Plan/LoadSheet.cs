using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>The load of a leg with its weights and centres of gravity.</summary>
public sealed record LoadSheet
{
    /// <summary>Basic empty weight and moment.</summary>
    public required WeightAndBalance BasicEmpty { get; init; }

    /// <summary>Items in order: pilots beyond those in the empty weight, passengers, bags, cargo.</summary>
    public required ImmutableArray<LoadItem> Items { get; init; }

    /// <summary>Load by station, in station order.</summary>
    public required ImmutableArray<StationLoad> Stations { get; init; }

    /// <summary>Pilots aboard.</summary>
    public required int Pilots { get; init; }

    /// <summary>Passengers aboard, infants included.</summary>
    public required int Passengers { get; init; }

    /// <summary>
    /// Persons counted as occupants in the weight computation: passengers and every pilot beyond those counted in the empty weight. What the loading card says.
    /// </summary>
    public required int Occupants { get; init; }

    /// <summary>Weight of those occupants.</summary>
    public required Pounds OccupantWeight { get; init; }

    /// <summary>Weight of bags and cargo.</summary>
    public required Pounds Baggage { get; init; }

    /// <summary>Weight of passengers, bags and cargo.</summary>
    public required Pounds Payload { get; init; }

    /// <summary>Persons of two years or more for whom there is no seat.</summary>
    public required int WithoutSeat { get; init; }

    /// <summary>Bags or cargo [lb] for which no station was left.</summary>
    public required Pounds WithoutStation { get; init; }

    /// <summary>Zero-fuel state.</summary>
    public required WeightAndBalance ZeroFuel { get; init; }

    /// <summary>Ramp state, block fuel aboard.</summary>
    public required WeightAndBalance Ramp { get; init; }

    /// <summary>Takeoff state.</summary>
    public required WeightAndBalance Takeoff { get; init; }

    /// <summary>Landing state.</summary>
    public required WeightAndBalance Landing { get; init; }

    /// <summary>Takeoff to landing to zero fuel, as the fuel burns: at least at every vertex of the fuel moment curve.</summary>
    public required ImmutableArray<EnvelopePoint> BurnLine { get; init; }

    /// <summary>Envelope tests; empty where the type has no envelope or the aircraft no moment.</summary>
    public required ImmutableArray<EnvelopeTest> Tests { get; init; }

    /// <summary>Whether moments are known (empty weight, every station used, fuel).</summary>
    public required bool HasMoments { get; init; }

    /// <summary>
    /// How far the centre of gravity may lie elsewhere if passengers choose other seats; null where it is not computed or nobody can sit elsewhere.
    /// </summary>
    public LoadSpread? Spread { get; init; }

    /// <summary>Assumptions made, as sentences; name no person.</summary>
    public ImmutableArray<string> Assumptions { get; init; } = [];
}
