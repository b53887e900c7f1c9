using Batch.Flight.Earth;

namespace Batch.Flight.Plan;

/// <summary>One line of the navigation log: a point, and the stretch that leads to it from the line before.</summary>
public sealed record LogLine
{
    /// <summary>Ident of the point; <c>TOC</c> and <c>TOD</c> for top of climb and descent.</summary>
    public required string Point { get; init; }

    /// <summary>Kind of the point.</summary>
    public required LogPointKind Kind { get; init; }

    /// <summary>Position.</summary>
    public required GeoPoint Position { get; init; }

    /// <summary>Airway or DCT on which the point is reached; empty for the first line.</summary>
    public string Via { get; init; } = "";

    /// <summary>True course at the start of the stretch; null for the first line, as all that follows down to the burn.</summary>
    public TrueDegrees? TrueCourse { get; init; }

    /// <summary>Magnetic course at the start of the stretch.</summary>
    public MagneticDegrees? MagneticCourse { get; init; }

    /// <summary>Magnetic variation at the start of the stretch [deg], positive east.</summary>
    public double? VariationDeg { get; init; }

    /// <summary>Magnetic heading.</summary>
    public MagneticDegrees? Heading { get; init; }

    /// <summary>Length of the stretch.</summary>
    public NauticalMiles Distance { get; init; }

    /// <summary>Altitude at the point [ft].</summary>
    public required Feet Altitude { get; init; }

    /// <summary>Least altitude of the stretch [ft].</summary>
    public Feet? MinimumAltitude { get; init; }

    /// <summary>Wind direction, true, weighted by time over the stretch.</summary>
    public TrueDegrees? WindFrom { get; init; }

    /// <summary>Wind speed.</summary>
    public Knots? WindSpeed { get; init; }

    /// <summary>Outside air temperature.</summary>
    public Celsius? Temperature { get; init; }

    /// <summary>True airspeed, mean over the stretch.</summary>
    public Knots? TrueAirspeed { get; init; }

    /// <summary>Ground speed, mean over the stretch.</summary>
    public Knots? GroundSpeed { get; init; }

    /// <summary>Time for the stretch.</summary>
    public Duration Time { get; init; }

    /// <summary>Fuel burned on the stretch.</summary>
    public Pounds Burn { get; init; }

    /// <summary>Fuel remaining at the point.</summary>
    public required Pounds Remaining { get; init; }

    /// <summary>Estimated time over the point.</summary>
    public required Instant Over { get; init; }

    /// <summary>Distance along the route at the point.</summary>
    public required NauticalMiles AlongRoute { get; init; }
}
