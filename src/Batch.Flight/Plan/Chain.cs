namespace Batch.Flight.Plan;

/// <summary>Legs of one aircraft or person put in order of time, each with what comes before it.</summary>
internal static class Chain
{
    /// <summary>The chain.</summary>
    /// <param name="plans">Legs in any order; rows that could not be read at all (no off blocks) are left out.</param>
    /// <param name="startsAt">Ident of the place before the first leg; empty where not known.</param>
    public static ImmutableArray<ChainStep> Of(IEnumerable<LegPlan> plans, string startsAt)
    {
        var steps = ImmutableArray.CreateBuilder<ChainStep>();
        ChainStep? before = null;
        foreach (var step in plans.Select(Step).OfType<ChainStep>().OrderBy(step => step.OffBlocks).ThenBy(step => step.Leg))
        {
            var linked = step with
            {
                Before = before?.Leg,
                StandsAt = before is null ? startsAt : before.To,
                Ground = before?.OnBlocks is { } onBlocks ? step.OffBlocks - onBlocks : null,
            };
            steps.Add(linked);
            before = linked;
        }

        return steps.DrainToImmutable();
    }

    private static ChainStep? Step(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned => new ChainStep
        {
            Leg = planned.Key,
            From = planned.From.Ident,
            To = planned.To.Ident,
            OffBlocks = planned.Times.OffBlocks,
            OnBlocks = planned.Times.OnBlocks,
        },
        LegPlan.Unplanned { Leg: { } leg } => new ChainStep { Leg = leg.Key, From = leg.From, To = leg.To, OffBlocks = leg.OffBlocks },
        _ => null,
    };
}
