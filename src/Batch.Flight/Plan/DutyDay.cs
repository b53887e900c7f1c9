using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>One duty of a person: legs with less than the rest that would separate two duties between them.</summary>
public sealed record DutyDay
{
    /// <summary>Report.</summary>
    public required Instant Report { get; init; }

    /// <summary>Release.</summary>
    public required Instant Release { get; init; }

    /// <summary>Legs in order.</summary>
    public required ImmutableArray<LegKey> Legs { get; init; }

    /// <summary>Flight time, block to block.</summary>
    public required Duration FlightTime { get; init; }

    /// <summary>Night landings.</summary>
    public required int NightLandings { get; init; }

    /// <summary>Rest before; null for the first of the week where nothing is logged.</summary>
    public Duration? RestBefore { get; init; }

    /// <summary>Report to release.</summary>
    public Duration Length => Release - Report;
}
