using Batch.Checks.Rules;

namespace Batch.Checks.Crews;

/// <summary>The recovery rest that comes again: long enough, with its local nights, and not too long ago when this duty ends.</summary>
internal sealed class RecoveryRest : ICheck
{
    /// <inheritdoc/>
    public string Id => "CREW-16";

    /// <inheritdoc/>
    public string Title => "Recovery rest";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["the plan", "Logged", "Logged: duty on and off", "Operator: report", "Operator: release"];

    /// <inheritdoc/>
    public bool LooksAround => true;

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["recovery rest", Between];

    /// <summary>Name of the amount that is the most time between two recovery rests.</summary>
    public const string Between = "between recovery rests";

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => leg.Seats.Select(seat => Look(leg, ruling, seat));

    /// <summary>How many local nights, eight hours between 22:00 and 08:00 (ORO.FTL.105), a rest holds.</summary>
    /// <param name="from">Its start.</param>
    /// <param name="to">Its end.</param>
    /// <param name="zone">The zone.</param>
    public static int LocalNights(Instant from, Instant to, DateTimeZone zone)
    {
        var nights = 0;
        for (var evening = from.InZone(zone).Date.PlusDays(-1); evening <= to.InZone(zone).Date; evening = evening.PlusDays(1))
        {
            var begins = Instant.Max(from, evening.At(new LocalTime(22, 0)).InZoneLeniently(zone).ToInstant());
            var ends = Instant.Min(to, evening.PlusDays(1).At(new LocalTime(8, 0)).InZoneLeniently(zone).ToInstant());
            nights += ends - begins >= Duration.FromHours(8) ? 1 : 0;
        }

        return nights;
    }

    /// <summary>
    /// When the last recovery rest before a duty ended, with and without what is not known counted as duty, and from when on that was looked for.
    /// </summary>
    /// <param name="ruling">The ruling, with all its amounts.</param>
    /// <param name="record">What is known of the person.</param>
    /// <param name="done">Release after the leg.</param>
    /// <param name="report">Report of its duty.</param>
    /// <param name="zone">Zone of the local nights.</param>
    public static (Instant From, Instant? AtBest, Instant? Known) Last(Ruling ruling, DutyRecord record, Instant done, Instant report, DateTimeZone zone)
    {
        var (least, nights, longest) = (ruling.Amount("recovery rest"), ruling.Amount("local nights"), ruling.Amount(Between));
        // A recovery rest that ends inside the time allowed shows itself in its last hours.
        var from = done - Duration.FromHours(longest.Value) - Duration.FromHours(Math.Max(2 * least.Value, 24 * (nights.Value + 1)));
        var (atBest, known) = record.LastRecovery(
            from, report, (start, end) => (end - start).TotalHours >= least.Value - Ruling.Noise && LocalNights(start, end, zone) >= nights.Value);
        return (from, atBest, known);
    }

    private static Finding Look(LegUnderCheck leg, Ruling ruling, LegUnderCheck.Seat seat)
    {
        var record = leg.Duty(seat.Code);
        if (record.DutyOf(leg.Plan) is not { } duty)
        {
            return ruling.NotChecked($"the week holds no duty of {seat.Code} with this leg", seat.Cell);
        }

        var (least, nights, longest) = (ruling.Amount("recovery rest"), ruling.Amount("local nights"), ruling.Amount(Between));
        var zone = leg.Plan.From.Zone;
        var done = leg.Plan.Times.OnBlocks + (leg.Operator.Release ?? Duration.Zero);
        var (from, atBest, known) = Last(ruling, record, done, duty.Report, zone);
        var words = $"a recovery rest of {Words.Amount(least.Value, "h")} with {Words.Count((int)nights.Value, "local night", "local nights")}";
        if (known is { } last && (done - last).TotalHours <= longest.Value + Ruling.Noise)
        {
            return ReportAndRelease.Known(leg, ruling, Answer(last, true));
        }

        if (atBest is { } possible && (done - possible).TotalHours <= longest.Value + Ruling.Noise)
        {
            return ruling.NotChecked(record.Missing(from, duty.Report) is { } missing
                ? $"{missing}, so whether {seat.Code} had {words} in the {Words.Amount(longest.Value, "h")} before the release is not known"
                : record.Untimed(from, duty.Report) is { } untimed
                    ? $"the duty of {seat.Code} on {Words.Day(untimed)} is logged without its times, so whether {words} lies around it is not known"
                : $"whether {seat.Code} had {words} is not known", seat.Cell);
        }

        return record.Unplanned(from, duty.Report) is { } unplanned && atBest is null
            ? ruling.NotChecked($"leg {unplanned.Leg} of {seat.Code} before this duty could not be planned, so the rests around it are not known", seat.Cell)
            : Answer(atBest, false);

        Finding Answer(Instant? end, bool isKept)
        {
            var hours = end is { } at ? (done - at).TotalHours : (double?)null;
            var answer = isKept
                ? ruling.Pass($"{seat.Code} had {words} that ended {Words.LocalDay(end ?? done, zone)}, {Words.Amount(hours ?? 0, "h")} before the release after this leg; {Words.Amount(longest.Value, "h")} are allowed.", longest)
                : ruling.Trips(longest, $"{(end is { } before ? $"The last time that {seat.Code} had {words} ended {Words.LocalDay(before, zone)}, {Words.Amount(hours ?? 0, "h")} before the release after this leg" : $"{seat.Code} had no rest such as {words} for as long as is looked back")}; no more than {Words.Amount(longest.Value, "h")} may lie between two.", seat.Cell);
            return hours is { } known ? answer with { Required = longest.Value, Actual = known, Margin = longest.Value - known, Unit = "h" } : answer;
        }
    }
}
