using Batch.Flight.Earth;

namespace Batch.Flight.Plan;

/// <summary>
/// The point of the cruise at which a failure asks for most beyond what the other items of the fuel ladder leave aboard, and the way from there to the airport
/// that needs least.
/// </summary>
public sealed record CriticalPoint
{
    /// <summary>What fails.</summary>
    public required CriticalFailure Failure { get; init; }

    /// <summary>Along the route from the departure.</summary>
    public required NauticalMiles Distance { get; init; }

    /// <summary>Since takeoff.</summary>
    public required Duration Elapsed { get; init; }

    /// <summary>Position.</summary>
    public required GeoPoint Position { get; init; }

    /// <summary>Altitude at the failure [ft].</summary>
    public required Feet Altitude { get; init; }

    /// <summary>Weight at the failure.</summary>
    public required Pounds Weight { get; init; }

    /// <summary>Ident of the airport that needs least.</summary>
    public required string Airport { get; init; }

    /// <summary>Distance to it, direct.</summary>
    public required NauticalMiles AirportDistance { get; init; }

    /// <summary>Altitude flown to it [ft].</summary>
    public required Feet Level { get; init; }

    /// <summary>Descent from the cruise to that altitude.</summary>
    public required Pounds Descent { get; init; }

    /// <summary>Level flight at that altitude.</summary>
    public required Pounds Cruise { get; init; }

    /// <summary>Descent to the airport, approach and landing.</summary>
    public required Pounds Approach { get; init; }

    /// <summary>Holding at 1,500 ft above the airport.</summary>
    public required Pounds Holding { get; init; }

    /// <summary>All of it.</summary>
    public Pounds Needed => Descent + Cruise + Approach + Holding;

    /// <summary>What trip, contingency, alternate and final reserve leave aboard at the point.</summary>
    public required Pounds Left { get; init; }

    /// <summary>What is missing at the point; negative where more is left than needed.</summary>
    public Pounds Shortfall => Needed - Left;
}
