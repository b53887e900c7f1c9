namespace Batch.Flight.Air;

/// <summary>What the wind does to a course flown at a true airspeed.</summary>
/// <param name="IsFlyable">The course can be held and leads forward; otherwise the heading and ground speed below must not be used.</param>
/// <param name="CorrectionDeg">Wind correction angle [deg], -90 to 90, right positive:
/// heading = course + correction. 0 where the wind cannot be corrected.</param>
/// <param name="Heading">True heading [deg].</param>
/// <param name="GroundSpeed">Speed over the ground along the course [kt]; zero or
/// negative where there is no progress, 0 where the wind cannot be corrected.</param>
/// <param name="Headwind">Wind component against the course [kt]; a tailwind is negative.</param>
/// <param name="Crosswind">Wind component across the course [kt], from the right positive.</param>
public readonly record struct WindSolution(
    bool IsFlyable, double CorrectionDeg, TrueDegrees Heading, Knots GroundSpeed, Knots Headwind, Knots Crosswind);
