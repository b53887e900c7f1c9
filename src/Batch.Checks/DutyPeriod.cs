using Batch.Flight.Week;

namespace Batch.Checks;

/// <summary>One planned duty of a person, from report to release, with the limits as they stand in it.</summary>
public sealed record DutyPeriod
{
    /// <summary>Report.</summary>
    public required Instant Report { get; init; }

    /// <summary>Release.</summary>
    public required Instant Release { get; init; }

    /// <summary>Ident of the airport of the report.</summary>
    public required string From { get; init; }

    /// <summary>Ident of the airport of the release.</summary>
    public required string To { get; init; }

    /// <summary>Time zone of the report.</summary>
    public required DateTimeZone ReportZone { get; init; }

    /// <summary>Time zone of the release.</summary>
    public required DateTimeZone ReleaseZone { get; init; }

    /// <summary>Legs in order.</summary>
    public required ImmutableArray<LegKey> Legs { get; init; }

    /// <summary>Flight time, block to block.</summary>
    public required Duration FlightTime { get; init; }

    /// <summary>Night landings.</summary>
    public required int NightLandings { get; init; }

    /// <summary>Time free of duty since the release before; null where that release is not known.</summary>
    public Duration? RestBefore { get; init; }

    /// <summary>The limits where they are tightest in this duty, in one order for every duty.</summary>
    public required ImmutableArray<DutyLimit> Limits { get; init; }

    /// <summary>Report to release.</summary>
    public Duration Length => Release - Report;
}
