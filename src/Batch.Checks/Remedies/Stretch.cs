using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Remedies;

/// <summary>A leg that may be handed over, with the time it takes as far as that is known.</summary>
/// <param name="Leg">The leg as read.</param>
/// <param name="OffBlocks">Off blocks.</param>
/// <param name="OnBlocks">On blocks; off blocks again where the leg has no plan.</param>
internal sealed record Stretch(Leg Leg, Instant OffBlocks, Instant OnBlocks)
{
    /// <summary>The stretch of a leg; null where its row could not be read.</summary>
    /// <param name="plan">The leg.</param>
    public static Stretch? Of(LegPlan plan) => plan switch
    {
        LegPlan.Planned planned => new Stretch(planned.Leg, planned.Times.OffBlocks, planned.Times.OnBlocks),
        LegPlan.Unplanned { Leg: { } leg } => new Stretch(leg, leg.OffBlocks, leg.OffBlocks),
        _ => null,
    };
}
