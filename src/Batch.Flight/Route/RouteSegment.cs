using Batch.Flight.Earth;

namespace Batch.Flight.Route;

/// <summary>The stretch between two consecutive points of a route.</summary>
public sealed record RouteSegment
{
    /// <summary>Start.</summary>
    public required RoutePoint From { get; init; }

    /// <summary>End.</summary>
    public required RoutePoint To { get; init; }

    /// <summary>Airway name, or <c>DCT</c>.</summary>
    public required string Via { get; init; }

    /// <summary>The geodesic between them.</summary>
    public required GeodesicPath Path { get; init; }

    /// <summary>Distance along the route at its start.</summary>
    public required NauticalMiles Start { get; init; }

    /// <summary>Magnetic variation at its start [deg], positive east.</summary>
    public required double VariationDeg { get; init; }

    /// <summary>Least altitude along it, from the airway or from the grid [ft]; null where neither says.</summary>
    public Feet? MinimumAltitude { get; init; }

    /// <summary>Where the minimum comes from: <c>airway V12</c>, <c>altitude grid</c>; empty for none.</summary>
    public string MinimumSource { get; init; } = "";

    /// <summary>Level asked for from here on by a speed/level group in the route text [ft]; null for none.</summary>
    public Feet? LevelFromHere { get; init; }

    /// <summary>Length.</summary>
    public NauticalMiles Length => Path.Length;

    /// <summary>True course at its start.</summary>
    public TrueDegrees TrueCourse => Path.InitialCourse;

    /// <summary>Magnetic course at its start.</summary>
    public MagneticDegrees MagneticCourse => TrueCourse.ToMagnetic(VariationDeg);
}
