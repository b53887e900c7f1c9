namespace Batch.Flight.Fleet;

/// <summary>What a loading station holds.</summary>
public enum StationKind
{
    /// <summary>Passenger seats.</summary>
    Seat,

    /// <summary>Baggage or cargo.</summary>
    Bags,

    /// <summary>Pilot seats.</summary>
    Crew,
}
