namespace Batch.Flight.Fleet;

/// <summary>What a pilot has flown already, one row a day of duty.</summary>
public sealed record LoggedDuty
{
    /// <summary>Code of the pilot.</summary>
    public required string Crew { get; init; }

    /// <summary>Day.</summary>
    public required LocalDate Date { get; init; }

    /// <summary>Flight time, block to block.</summary>
    public required Duration FlightTime { get; init; }

    /// <summary>Start of duty; null where not said.</summary>
    public Instant? DutyOn { get; init; }

    /// <summary>End of duty; null where not said.</summary>
    public Instant? DutyOff { get; init; }

    /// <summary>How far the flight time went over the limit of the day for causes beyond control; null where not said.</summary>
    public Duration? Overrun { get; init; }

    /// <summary>Idents of the airports landed at on the day; empty where not said.</summary>
    public ImmutableArray<string> Airports { get; init; } = [];

    /// <summary>Where it was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
