using Batch.Flight.Air;
namespace Batch.Flight.Plan;

/// <summary>
/// One step of a profile: a slice of climb or descent of at most 1,000 ft, a stretch of cruise of at most 25 NM, or the approach allowance. Never crosses a
/// route point.
/// </summary>
public readonly record struct ProfileSlice
{
    /// <summary>Phase.</summary>
    public required FlightPhase Phase { get; init; }

    /// <summary>Index of the route segment it lies on.</summary>
    public required int Segment { get; init; }

    /// <summary>Distance along the route at its start [NM].</summary>
    public required double StartNm { get; init; }

    /// <summary>Distance along the route at its end [NM].</summary>
    public required double EndNm { get; init; }

    /// <summary>Altitude at its start [ft].</summary>
    public required double StartFt { get; init; }

    /// <summary>Altitude at its end [ft].</summary>
    public required double EndFt { get; init; }

    /// <summary>Time it takes [h].</summary>
    public required double Hours { get; init; }

    /// <summary>Fuel it burns [lb].</summary>
    public required double BurnLb { get; init; }

    /// <summary>Distance through the air [NM].</summary>
    public required double AirNm { get; init; }

    /// <summary>Wind and temperature taken, at its middle.</summary>
    public required AirSample Air { get; init; }

    /// <summary>True airspeed [kt].</summary>
    public required double TrueAirspeedKt { get; init; }

    /// <summary>Ground speed [kt].</summary>
    public required double GroundSpeedKt { get; init; }

    /// <summary>True course at its middle [deg].</summary>
    public required double TrueCourseDeg { get; init; }

    /// <summary>True heading at its middle [deg].</summary>
    public required double TrueHeadingDeg { get; init; }

    /// <summary>Distance over the ground [NM].</summary>
    public double GroundNm => EndNm - StartNm;
}
