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
/// Whether it is flying that the week plans as well: a row on a day of the week whose duty overlaps a planned leg between its blocks. A duty of the days before that runs into the
/// first report, or even into the first leg, is another one.
/// </param>
internal sealed record LoggedFlying(LocalDate Date, Instant From, Instant To, Duration FlightTime, bool IsTimed, bool IsPlannedToo)
{
    /// <summary>Reads a row.</summary>
    /// <param name="row">The row.</param>
    /// <param name="zone">Zone of the logged days.</param>
    /// <param name="legs">The planned legs of the person.</param>
    /// <param name="firstDay">First day of the week in that zone; null without a planned leg.</param>
    public static LoggedFlying Of(LoggedDuty row, DateTimeZone zone, ImmutableArray<LegPlan.Planned> legs, LocalDate? firstDay)
    {
        var (from, to, isTimed) = row is { DutyOn: { } on, DutyOff: { } off } && off > on ? (on, off, true) : (StartOf(row.Date), StartOf(row.Date.PlusDays(1)), false);
        var planned = row.Date >= firstDay
            ? legs.Where(leg => from < leg.Times.OnBlocks && to > leg.Times.OffBlocks).Aggregate(Duration.Zero, (sum, leg) => sum + leg.Times.Block)
            : Duration.Zero;
        return new LoggedFlying(row.Date, from, to, Duration.Max(row.FlightTime - planned, Duration.Zero), isTimed, planned > Duration.Zero);

        Instant StartOf(LocalDate date) => date.AtStartOfDayInZone(zone).ToInstant();
    }
}
