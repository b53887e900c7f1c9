using Batch.Checks;
using Batch.Flight.Plan;
using Batch.Sheets.Views;

namespace Batch.Sheets.Board;

/// <summary>When a leg is shown on the time line.</summary>
internal static class LegTime
{
    /// <summary>How long a leg without a plan is drawn; it is marked as of unknown length.</summary>
    private static readonly Duration Drawn = Duration.FromMinutes(30);

    /// <summary>Off blocks to on blocks; of a leg that was not planned half an hour from off blocks; null where off blocks could not be read.</summary>
    /// <param name="leg">The leg.</param>
    public static (Instant From, Instant To)? Of(CheckedLeg leg) => leg.Plan switch
    {
        LegPlan.Planned planned => (planned.Times.OffBlocks, planned.Times.OnBlocks),
        _ => LegView.Names(leg.Plan).Read is { } read ? (read.OffBlocks, read.OffBlocks + Drawn) : null,
    };
}
