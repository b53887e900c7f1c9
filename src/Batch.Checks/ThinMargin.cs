using Batch.Flight.Plan;

namespace Batch.Checks;

/// <summary>The condition that a leg meets by the least.</summary>
/// <param name="Plan">The plan of the leg.</param>
/// <param name="Finding">The answer of the check, with its margin.</param>
/// <param name="Share">The margin as a share of the limit, or of the width between limits; 0 or more.</param>
public sealed record ThinMargin(LegPlan Plan, Finding Finding, double Share);
