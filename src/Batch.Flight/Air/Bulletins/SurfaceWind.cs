namespace Batch.Flight.Air.Bulletins;

/// <summary>The wind at the ground, as a report or forecast gives it.</summary>
public sealed record SurfaceWind
{
    /// <summary>Direction it blows from, true, in whole degrees 0 to 360 (0 with a calm); null where variable or not reported.</summary>
    public int? DirectionDeg { get; init; }

    /// <summary>The direction is variable (VRB).</summary>
    public bool IsVariable { get; init; }

    /// <summary>Mean speed in the unit reported.</summary>
    public required double ReportedSpeed { get; init; }

    /// <summary>Speed of gusts in the unit reported; null where there are none.</summary>
    public double? ReportedGust { get; init; }

    /// <summary>The unit reported: KT, MPS or KMH.</summary>
    public required string Unit { get; init; }

    /// <summary>The speed is at least the one given (P before it).</summary>
    public bool SpeedAtLeast { get; init; }

    /// <summary>One end of the variation of direction, true [deg]; null where not reported.</summary>
    public int? VariesFromDeg { get; init; }

    /// <summary>The other end, clockwise of the first [deg]; null where not reported.</summary>
    public int? VariesToDeg { get; init; }

    /// <summary>Mean speed.</summary>
    public Knots Speed => new(ReportedSpeed * KnotsPerUnit);

    /// <summary>Speed of gusts; null where there are none.</summary>
    public Knots? Gust => ReportedGust is { } gust ? new Knots(gust * KnotsPerUnit) : null;

    /// <summary>There is no wind: 00000KT.</summary>
    public bool IsCalm => ReportedSpeed == 0 && ReportedGust is null && DirectionDeg == 0;

    private double KnotsPerUnit => Unit switch
    {
        "MPS" => 3600 / NauticalMiles.MetresPerNauticalMile,
        "KMH" => 1000 / NauticalMiles.MetresPerNauticalMile,
        _ => 1,
    };
}
