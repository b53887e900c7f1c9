using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;

namespace Batch.Checks.Crews;

/// <summary>
/// What is known of one pilot's flying and duty: the planned legs and duties of the week and the Logged sheet. Flying that is both planned and logged counts
/// once, with the greater of the two flight times.
/// </summary>
internal sealed class DutyRecord
{
    private readonly ImmutableArray<LegPlan.Planned> _legs;
    private readonly ImmutableArray<ChainStep> _unplanned;
    private readonly ImmutableArray<DutyDay> _duties;
    private readonly ImmutableArray<LoggedFlying> _logged;
    private readonly string _code;
    private readonly DateTimeZone _zone;
    private readonly LocalDate? _loggedUntil;
    private readonly Instant? _weekBegins;

    /// <summary>What is known with a leg as it is looked at.</summary>
    /// <param name="leg">The leg that is looked at; its own times stand for those in the week.</param>
    /// <param name="code">Code of the pilot.</param>
    public DutyRecord(LegUnderCheck leg, string code)
        : this(leg.Week, code, leg.Plan.From.Zone, leg.Plan)
    {
    }

    /// <summary>What is known with the week as it is planned.</summary>
    /// <param name="week">The week.</param>
    /// <param name="code">Code of the pilot.</param>
    /// <param name="zone">Zone of the logged days.</param>
    /// <param name="instead">A leg that stands for the one of its key in the week; null for none.</param>
    public DutyRecord(WeekUnderCheck week, string code, DateTimeZone zone, LegPlan.Planned? instead = null)
    {
        var person = week.Crew(code);
        var steps = person?.Steps ?? [];
        _legs = [.. steps.Select(step => step.Leg == instead?.Key ? instead : week.Leg(step.Leg)).OfType<LegPlan.Planned>()];
        _unplanned = [.. steps.Where(step => week.Leg(step.Leg) is LegPlan.Unplanned)];
        _duties = person?.Duties ?? [];
        _code = code;
        _zone = zone;
        _loggedUntil = week.LoggedUntil;
        _weekBegins = week.Begins;
        _logged = [.. LoggedFlying.Of(week.Logged(code).Where(row => !IsDayOff(row)), zone, _legs)];
        KnownFrom = week.Logged(code) is [var first, ..] ? first.Date : null;
    }

    /// <summary>First day of the calendar quarter of a date.</summary>
    /// <param name="date">The date.</param>
    public static LocalDate QuarterOf(LocalDate date) => new(date.Year, ((date.Month - 1) / 3 * 3) + 1, 1);

    /// <summary>The first logged date; null where nothing is logged.</summary>
    public LocalDate? KnownFrom { get; }

    /// <summary>Whether a row of the Logged sheet says that its day was free: no flight time and no times of duty.</summary>
    /// <param name="row">The row.</param>
    public static bool IsDayOff(LoggedDuty row) => row.FlightTime == Duration.Zero && row.DutyOn is null && row.DutyOff is null;

    /// <summary>
    /// The first part of a time of which nothing is known. Known is what lies from the person's first logged day to the last day of the Logged sheet, whoever
    /// flew on it, a day without a row in between being free; and what the week plans, from its first day on where the log reaches up to it, else from the
    /// person's first report (a duty that is not logged may reach into the week).
    /// </summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    public (Instant From, Instant To)? Gap(Instant from, Instant to)
    {
        if (KnownFrom is { } first && _loggedUntil is { } last && StartOf(first) <= from)
        {
            from = Instant.Max(from, StartOf(last.PlusDays(1)));
        }

        var planned = _weekBegins is not { } begins ? (Instant?)null : from >= begins ? begins : _duties.Select(duty => (Instant?)duty.Report).Min() ?? begins;
        var end = planned is { } start ? Instant.Min(to, start) : to;
        return from < end ? (from, end) : null;
    }

    /// <summary>What is missing of a time, as the object of a sentence; null where all of it is known.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    public string? Missing(Instant from, Instant to)
    {
        if (Gap(from, to) is not { } gap)
        {
            return null;
        }

        if (KnownFrom is not { } first || _loggedUntil is not { } last)
        {
            return $"nothing is logged for {_code}";
        }

        var begins = gap.From.InZone(_zone).Date;
        var ends = LocalDate.Max(begins, (Instant.Min(gap.To, _weekBegins ?? gap.To) - Duration.Epsilon).InZone(_zone).Date);
        return StartOf(first) > gap.From
            ? $"the log of {_code} begins on {Words.Day(first)}"
            : $"the Logged sheet ends on {Words.Day(last)}, and {Words.Day(begins)}{(ends > begins ? $" to {Words.Day(ends)}" : "")} {(ends > begins ? "are" : "is")} missing for {_code} (a row with 0 h says a day off)";
    }

    private Instant StartOf(LocalDate date) => date.AtStartOfDayInZone(_zone).ToInstant();

    /// <summary>Unplanned legs that may fly in a time.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    public ChainStep? Unplanned(Instant from, Instant to) => _unplanned.FirstOrDefault(step => step.OffBlocks >= from && step.OffBlocks < to);

    /// <summary>Flight time in a time; a leg or logged day that lies in it in part counts with what can be in it.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    public Duration FlightTime(Instant from, Instant to) => Sum(
        _legs.Select(leg => Overlap(leg.Times.OffBlocks, leg.Times.OnBlocks, from, to))
            .Concat(_logged.Select(row => Duration.Min(row.FlightTime, Overlap(row.From, row.To, from, to)))));

    /// <summary>Flight time on days, both included, up to the end of a leg; a leg counts on its day at the departure.</summary>
    /// <param name="from">First day.</param>
    /// <param name="until">End of the leg.</param>
    /// <param name="day">Its day.</param>
    public Duration FlightTime(LocalDate from, Instant until, LocalDate day) => Sum(
        _legs.Where(leg => leg.Times.OnBlocks <= until && leg.Times.OffBlocks.InZone(leg.From.Zone).Date >= from).Select(leg => leg.Times.Block)
            .Concat(_logged.Where(row => row.Date >= from && row.Date <= day).Select(row => row.FlightTime)));

    /// <summary>The duty that a leg belongs to; null where the week has none.</summary>
    /// <param name="leg">The leg.</param>
    public DutyDay? DutyOf(LegPlan.Planned leg) => _duties.FirstOrDefault(duty => duty.Legs.Contains(leg.Key));

    /// <summary>Duty in a time, as far as it is logged with its times or planned.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    public Duration Duty(Instant from, Instant to) => Sum(
        Apart(Timed.OrderBy(duty => duty.From)).Select(duty => Overlap(duty.From, duty.To, from, to)));

    /// <summary>A logged day in a time whose duty has no times; null where there is none.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    public LocalDate? Untimed(Instant from, Instant to) => Untold.Where(row => row.To > from && row.From < to).Select(row => (LocalDate?)row.Date).Min();

    /// <summary>
    /// The last duty, planned or logged with its times, that began before an instant at which a planned duty begins; null where none is known.
    /// </summary>
    /// <param name="at">The instant.</param>
    public (Instant From, Instant To)? DutyBefore(Instant at) =>
        _duties.Select(duty => (From: duty.Report, To: duty.Release))
            .Concat(_logged.Where(row => row.IsTimed && (!row.IsPlannedToo || row.To <= at)).Select(row => (row.From, row.To)))
            .Where(duty => duty.From < at).OrderBy(duty => duty.To).Select(duty => ((Instant, Instant)?)duty).LastOrDefault();

    /// <summary>The longest time free of duty in a time, with and without what is not known counted as duty.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    public (Duration AtBest, Duration Known) LongestRest(Instant from, Instant to)
    {
        var known = Timed.ToImmutableArray();
        var unsure = known.Concat(Untold.Select(row => (row.From, row.To))).Concat(Gap(from, to) is { } gap ? [gap] : ImmutableArray<(Instant, Instant)>.Empty);
        return (LongestGap(known, from, to), LongestGap(unsure, from, to));
    }

    /// <summary>
    /// How often 24 consecutive hours free of duty fit into a time; a longer rest counts as often as 24 hours fit into it, and a logged day without times
    /// counts as duty.
    /// </summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End.</param>
    public int LongRests(Instant from, Instant to)
    {
        var busy = Timed.Concat(Untold.Select(row => (row.From, row.To)));
        var rests = 0;
        var free = from;
        foreach (var (start, end) in busy.Where(time => time.To > from && time.From < to).OrderBy(time => time.From))
        {
            rests += Fitting(start - free);
            free = Instant.Max(free, end);
        }

        return rests + Fitting(to - free);
    }

    /// <summary>When the last recovery rest ended before an instant, with and without what is not known counted as duty; null where there was none.</summary>
    /// <param name="from">Start of the time looked at.</param>
    /// <param name="until">Its end; a rest that reaches it ends there.</param>
    /// <param name="isRecovery">Whether a time free of duty is one.</param>
    public (Instant? AtBest, Instant? Known) LastRecovery(Instant from, Instant until, Func<Instant, Instant, bool> isRecovery)
    {
        var known = Timed.ToImmutableArray();
        var unsure = known.Concat(Untold.Select(row => (row.From, row.To)))
            .Concat(Gap(from, until) is { } gap ? [gap] : ImmutableArray<(Instant, Instant)>.Empty);
        return (Last(known), Last(unsure));

        Instant? Last(IEnumerable<(Instant From, Instant To)> busy)
        {
            Instant? last = null;
            var free = from;
            foreach (var (start, end) in busy.Where(time => time.To > from && time.From < until).OrderBy(time => time.From))
            {
                if (start > free && isRecovery(free, start)) last = start;
                free = Instant.Max(free, end);
            }

            return until > free && isRecovery(free, until) ? until : last;
        }
    }

    // Every duty whose times are known.
    private IEnumerable<(Instant From, Instant To)> Timed => _duties.Select(duty => (duty.Report, duty.Release))
        .Concat(_logged.Where(row => row.IsTimed).Select(row => (row.From, row.To)));

    // Logged days that may have held duty at any time; where the week plans the same flying it has the times.
    private IEnumerable<LoggedFlying> Untold => _logged.Where(row => row is { IsTimed: false, IsPlannedToo: false });

    // The same times in order, each without what those before it cover.
    private static IEnumerable<(Instant From, Instant To)> Apart(IEnumerable<(Instant From, Instant To)> inOrder)
    {
        var until = Instant.MinValue;
        foreach (var (from, to) in inOrder)
        {
            yield return (Instant.Max(from, until), Instant.Max(to, until));
            until = Instant.Max(to, until);
        }
    }

    private static int Fitting(Duration gap) => Math.Max(0, (int)Math.Floor(gap.TotalHours / 24));

    private static Duration LongestGap(IEnumerable<(Instant From, Instant To)> busy, Instant from, Instant to)
    {
        var longest = Duration.Zero;
        var free = from;
        foreach (var (start, end) in busy.Where(time => time.To > from && time.From < to).OrderBy(time => time.From))
        {
            longest = Duration.Max(longest, start - free);
            free = Instant.Max(free, end);
        }

        return Duration.Max(longest, to - free);
    }

    private static Duration Overlap(Instant from, Instant to, Instant start, Instant end) =>
        Duration.Max(Instant.Min(to, end) - Instant.Max(from, start), Duration.Zero);

    private static Duration Sum(IEnumerable<Duration> times) => times.Aggregate(Duration.Zero, (sum, time) => sum + time);
}
