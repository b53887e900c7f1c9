using Batch.Flight.Fleet;
using Batch.Flight.Plan;

namespace Batch.Checks.Crews;

/// <summary>One row of the Logged sheet beside what the week plans.</summary>
/// <param name="Date">Its day.</param>
/// <param name="From">Duty on; the start of the day where the times of duty are not said.</param>
/// <param name="To">Duty off; the end of the day where the times of duty are not said.</param>
/// <param name="FlightTime">Flight time beyond what the week plans of the same flying.</param>
/// <param name="IsTimed">Whether the times of duty are said; a row without them may lie anywhere in its day.</param>
/// <param name="IsPlannedToo">
/// Whether it is flying that the week plans as well: its duty overlaps a planned leg between its blocks, and that leg departs on its day or before. A duty of
/// the days before that runs into the report, or even into the leg, is another one.
/// </param>
internal sealed record LoggedFlying(LocalDate Date, Instant From, Instant To, Duration FlightTime, bool IsTimed, bool IsPlannedToo)
{
    /// <summary>Reads a row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="zone">Zone of the logged days.</param>
    /// <param name="legs">The planned legs of the person.</param>
    public static LoggedFlying Of(LoggedDuty row, DateTimeZone zone, ImmutableArray<LegPlan.Planned> legs)
    {
        var (from, to, isTimed) = row is { DutyOn: { } on, DutyOff: { } off } && off > on
            ? (on, off, true)
            : (StartOf(row.Date), StartOf(row.Date.PlusDays(1)), false);
        var meanwhile = legs.Where(leg => from < leg.Times.OnBlocks && to > leg.Times.OffBlocks).ToImmutableArray();
        var planned = meanwhile.Any(leg => leg.Times.OffBlocks.InZone(leg.From.Zone).Date <= row.Date)
            ? meanwhile.Aggregate(Duration.Zero, (sum, leg) => sum + leg.Times.Block)
            : Duration.Zero;
        return new LoggedFlying(row.Date, from, to, Duration.Max(row.FlightTime - planned, Duration.Zero), isTimed, planned > Duration.Zero);

        Instant StartOf(LocalDate date) => date.AtStartOfDayInZone(zone).ToInstant();
    }
}
