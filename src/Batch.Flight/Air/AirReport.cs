using Batch.Flight.Earth;

namespace Batch.Flight.Air;

/// <summary>Wind and temperature at one place and altitude, for a time.</summary>
public sealed record AirReport
{
    /// <summary>Place; null: everywhere.</summary>
    public GeoPoint? Place { get; init; }

    /// <summary>Valid from, inclusive; null: open.</summary>
    public Instant? From { get; init; }

    /// <summary>Valid to, exclusive; null: open.</summary>
    public Instant? To { get; init; }

    /// <summary>Altitude [ft].</summary>
    public required Feet Altitude { get; init; }

    /// <summary>Direction the wind blows from, true.</summary>
    public required TrueDegrees WindFrom { get; init; }

    /// <summary>Wind speed [kt].</summary>
    public required Knots WindSpeed { get; init; }

    /// <summary>Temperature; null where not reported.</summary>
    public Celsius? Temperature { get; init; }
}
