using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>Who and what sits where: the part of a load sheet that does not depend on fuel. Members are those of <see cref="LoadSheet"/>.</summary>
public sealed record LoadPlan
{
    /// <summary>The type.</summary>
    public required AircraftType Type { get; init; }

    /// <summary>Basic empty weight and moment; the moment is zero where it is not known.</summary>
    public required WeightAndBalance BasicEmpty { get; init; }

    /// <summary>Items in order: pilots beyond those in the empty weight, passengers, bags, cargo.</summary>
    public required ImmutableArray<LoadItem> Items { get; init; }

    /// <summary>Load by station, in station order.</summary>
    public required ImmutableArray<StationLoad> Stations { get; init; }

    /// <summary>Pilots aboard.</summary>
    public required int Pilots { get; init; }

    /// <summary>Passengers aboard, infants included.</summary>
    public required int Passengers { get; init; }

    /// <summary>Persons of two years or more for whom there is no seat.</summary>
    public required int WithoutSeat { get; init; }

    /// <summary>Bags or cargo for which no station was left.</summary>
    public required Pounds WithoutStation { get; init; }

    /// <summary>Zero-fuel state; the moment is that of what is known.</summary>
    public required WeightAndBalance ZeroFuel { get; init; }

    /// <summary>Whether moments are known: empty weight, fuel and every item.</summary>
    public required bool HasMoments { get; init; }

    /// <summary>Assumptions made, as sentences; name no person.</summary>
    public required ImmutableArray<string> Assumptions { get; init; }

    /// <summary>Passengers and every pilot beyond those counted in the empty weight.</summary>
    public int Occupants => Items.Count(IsOccupant);

    /// <summary>Weight of those occupants.</summary>
    public Pounds OccupantWeight => Sum(IsOccupant);

    /// <summary>Weight of bags and cargo.</summary>
    public Pounds Baggage => Sum(item => !IsOccupant(item));

    /// <summary>Weight of passengers, bags and cargo.</summary>
    public Pounds Payload => Sum(item => item.Kind != LoadItemKind.Pilot);

    private static bool IsOccupant(LoadItem item) => item.Kind is LoadItemKind.Pilot or LoadItemKind.Passenger;

    private Pounds Sum(Func<LoadItem, bool> which) => new(Items.Where(which).Sum(item => item.Weight.Value));
}
