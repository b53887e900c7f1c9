namespace Batch.Flight.Earth;

/// <summary>The sun's events of one local civil day at one place.</summary>
public sealed record SunDay
{
    /// <summary>Sunrise; null where there is none that day.</summary>
    public Instant? Sunrise { get; init; }

    /// <summary>Sunset; null where there is none that day.</summary>
    public Instant? Sunset { get; init; }

    /// <summary>Start of morning civil twilight; null where there is none that day.</summary>
    public Instant? CivilDawn { get; init; }

    /// <summary>End of evening civil twilight; null where there is none that day.</summary>
    public Instant? CivilDusk { get; init; }

    /// <summary>Whether the sun rises and sets.</summary>
    public required SunState DayState { get; init; }

    /// <summary>Whether civil twilight begins and ends.</summary>
    public required SunState CivilState { get; init; }
}
