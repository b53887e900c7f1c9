namespace Batch.Flight.Plan;

/// <summary>Where a chain buys fuel ahead.</summary>
/// <param name="AfterLanding">For each leg the fuel to be left on landing [lb].</param>
/// <param name="Notes">For each leg a sentence about what it carries or why it does not; empty where it is not asked to.</param>
/// <param name="Trials">Each leg as it was flown for this choice, null where it could not be; empty where nothing had to be flown.</param>
internal sealed record CarryChoice(ImmutableArray<Pounds> AfterLanding, ImmutableArray<string> Notes, ImmutableArray<LegTrial?> Trials)
{
    /// <summary>A leg as it was flown for this choice; null where it was not.</summary>
    /// <param name="leg">Index of the leg.</param>
    public LegTrial? Trial(int leg) => leg < Trials.Length ? Trials[leg] : null;
}
