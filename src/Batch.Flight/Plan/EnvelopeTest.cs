using Batch.Flight.Fleet;

namespace Batch.Flight.Plan;

/// <summary>A state of loading held against an envelope.</summary>
public sealed record EnvelopeTest
{
    /// <summary>The condition.</summary>
    public required EnvelopeCase Case { get; init; }

    /// <summary>The state, such as <c>takeoff</c>, <c>landing</c>, <c>zero fuel</c>, <c>during the flight</c>.</summary>
    public required string When { get; init; }

    /// <summary>Weight and centre of gravity of the worst point.</summary>
    public required EnvelopePoint Point { get; init; }

    /// <summary>Whether it lies inside or on the edge.</summary>
    public required bool IsInside { get; init; }

    /// <summary>
    /// Distance in arm to the nearest edge at this weight [in]; negative outside; the distance beyond the nearest vertex, negative, where the polygon has no
    /// extent at this weight.
    /// </summary>
    public required Inches ArmMargin { get; init; }

    /// <summary>Forward limit at this weight [in]; null where the polygon has no extent at this weight.</summary>
    public Inches? ForwardLimit { get; init; }

    /// <summary>Aft limit at this weight [in]; null where the polygon has no extent at this weight.</summary>
    public Inches? AftLimit { get; init; }

    /// <summary>Weight that could be added at this arm before the top edge [lb]; negative above it.</summary>
    public required Pounds WeightMargin { get; init; }
}
