namespace Batch.Flight.Earth;

/// <summary>The shortest line between two points, prepared for many positions along it.</summary>
public sealed class GeodesicPath
{
    /// <summary>Length.</summary>
    public NauticalMiles Length { get; private init; }

    /// <summary>True course at the start.</summary>
    public TrueDegrees InitialCourse { get; private init; }
}
