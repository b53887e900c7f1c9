using Batch.Flight.Fleet;

namespace Batch.Checks;

/// <summary>The week of one person as the rules on flight time, duty and rest see it: what was logged before, what is planned, what is left.</summary>
public sealed record DutyTable
{
    /// <summary>Code of the person as the legs name it.</summary>
    public required string Code { get; init; }

    /// <summary>Row of the Crew sheet; null where the sheet does not have the code.</summary>
    public required CrewMember? Member { get; init; }

    /// <summary>First logged day; null where nothing is logged.</summary>
    public required LocalDate? LoggedFrom { get; init; }

    /// <summary>Planned duties in time order; a leg that could not be planned is in none of them.</summary>
    public required ImmutableArray<DutyPeriod> Periods { get; init; }

    /// <summary>Every limit where it is tightest in the week, in one order for every person; empty without a duty.</summary>
    public required ImmutableArray<DutyLimit> Limits { get; init; }

    /// <summary>Flight time of the planned legs, block to block.</summary>
    public required Duration FlightTime { get; init; }
}
