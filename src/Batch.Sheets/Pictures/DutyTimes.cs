namespace Batch.Sheets.Pictures;

/// <summary>The times of one duty, for <see cref="DutyBar"/>.</summary>
internal sealed record DutyTimes
{
    /// <summary>Report.</summary>
    public required Instant Report { get; init; }

    /// <summary>Release, not before <see cref="Report"/>.</summary>
    public required Instant Release { get; init; }

    /// <summary>Zone of the place of report: the local scale.</summary>
    public required DateTimeZone Zone { get; init; }

    /// <summary>Flights in order of time, each with the name written under it.</summary>
    public ImmutableArray<(string Name, Instant OffBlocks, Instant OnBlocks)> Flights { get; init; } = [];

    /// <summary>When the duty must end by the rules; null where no rule limits it.</summary>
    public Instant? Limit { get; init; }

    /// <summary>Rest before the report; null where none is known.</summary>
    public Duration? RestBefore { get; init; }

    /// <summary>Rest after the release; null where none is known.</summary>
    public Duration? RestAfter { get; init; }
}
