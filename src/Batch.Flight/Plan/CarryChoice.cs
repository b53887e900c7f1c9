namespace Batch.Flight.Plan;

/// <summary>Where a chain buys fuel ahead.</summary>
/// <param name="AfterLanding">For each leg the fuel to be left on landing [lb].</param>
/// <param name="Notes">For each leg a sentence about what it carries or why it does not; empty where it is not asked to.</param>
internal sealed record CarryChoice(ImmutableArray<Pounds> AfterLanding, ImmutableArray<string> Notes);
