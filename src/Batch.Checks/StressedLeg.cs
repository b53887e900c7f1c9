using Batch.Flight.Plan;

namespace Batch.Checks;

/// <summary>A leg under a scenario with what it does not meet any more.</summary>
/// <param name="Plan">The plan under the scenario.</param>
/// <param name="Findings">The answers that are worse than as planned, at least one:
/// those without a margin to compare first, then the farthest beyond its limit.</param>
public sealed record StressedLeg(LegPlan Plan, ImmutableArray<Finding> Findings);
