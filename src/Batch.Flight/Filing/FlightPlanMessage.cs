namespace Batch.Flight.Filing;

/// <summary>
/// A flight plan ready to be filed, item by item (ICAO Doc 4444, appendix 2), as planned; who files it checks it and adds what the books do not hold.
/// </summary>
public sealed record FlightPlanMessage
{
    /// <summary>What stands in the place of something that the books do not hold, to be written in.</summary>
    public const string Blank = "____";

    /// <summary>Item 7: aircraft identification.</summary>
    public required string Identification { get; init; }

    /// <summary>Item 8: flight rules and type of flight, such as <c>IN</c>.</summary>
    public required string RulesAndKind { get; init; }

    /// <summary>Item 9: type of aircraft and wake turbulence category.</summary>
    public required string TypeOfAircraft { get; init; }

    /// <summary>Item 10: equipment.</summary>
    public required string Equipment { get; init; }

    /// <summary>Item 13: departure and time.</summary>
    public required string Departure { get; init; }

    /// <summary>Item 15: speed, level and route.</summary>
    public required string Route { get; init; }

    /// <summary>Item 16: destination, elapsed time, alternates.</summary>
    public required string Destination { get; init; }

    /// <summary>Item 18: other information.</summary>
    public required string Other { get; init; }

    /// <summary>Item 19, which is kept and not sent: endurance and persons aboard.</summary>
    public required string Supplementary { get; init; }

    /// <summary>What is missing or cannot be written, as sentences.</summary>
    public required ImmutableArray<string> Missing { get; init; }

    /// <summary>The message as it is sent (ICAO Doc 4444, appendix 3, from memory), line by line.</summary>
    public ImmutableArray<string> Lines =>
    [
        $"(FPL-{Identification}-{RulesAndKind}",
        $"-{TypeOfAircraft}-{Equipment}",
        $"-{Departure}",
        $"-{Route}",
        $"-{Destination}",
        $"-{Other})",
    ];
}
