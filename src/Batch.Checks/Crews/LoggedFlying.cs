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
    /// <summary>Reads the rows of a person. What the week plans of a leg is taken off once, however many rows of the day are of it.</summary>
    /// <param name="rows">The rows, days off left out.</param>
    /// <param name="zone">Zone of the logged days.</param>
    /// <param name="legs">The planned legs of the person.</param>
    public static IEnumerable<LoggedFlying> Of(IEnumerable<LoggedDuty> rows, DateTimeZone zone, ImmutableArray<LegPlan.Planned> legs)
    {
        var left = legs.Select(leg => leg.Times.Block).ToArray();
        foreach (var row in rows)
        {
            var (from, to, isTimed) = row is { DutyOn: { } on, DutyOff: { } off } && off > on
                ? (on, off, true)
                : (StartOf(row.Date), StartOf(row.Date.PlusDays(1)), false);
            var meanwhile = Enumerable.Range(0, legs.Length).Where(i => from < legs[i].Times.OnBlocks && to > legs[i].Times.OffBlocks).ToArray();
            var isPlannedToo = Array.Exists(meanwhile, i => legs[i].Times.OffBlocks.InZone(legs[i].From.Zone).Date <= row.Date);
            var beyond = row.FlightTime;
            foreach (var i in isPlannedToo ? meanwhile : [])
            {
                var planned = Duration.Min(left[i], beyond);
                left[i] -= planned;
                beyond -= planned;
            }

            yield return new LoggedFlying(row.Date, from, to, beyond, isTimed, isPlannedToo);
        }

        Instant StartOf(LocalDate date) => date.AtStartOfDayInZone(zone).ToInstant();
    }
}
