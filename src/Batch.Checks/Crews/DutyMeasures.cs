using Batch.Checks.Rules;

namespace Batch.Checks.Crews;

/// <summary>Flight time, duty and rest of one person at the end of one leg, against what the rules allow.</summary>
internal sealed class DutyMeasures
{
    private static readonly Duration Day = Duration.FromHours(24);

    private readonly LegUnderCheck _leg;
    private readonly RuleSet _rules;
    private readonly DutyRecord _record;

    /// <summary>Makes it.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="record">What is known of the person.</param>
    public DutyMeasures(LegUnderCheck leg, RuleSet rules, DutyRecord record)
    {
        _leg = leg;
        _rules = rules;
        _record = record;
    }

    /// <summary>Every measure, in the order of the table.</summary>
    public IEnumerable<DutyLimit> All =>
    [
        InDay,
        InWeek,
        InPeriod("flightInQuarter", "flight time in the calendar quarter", "calendar quarter"),
        InPeriod("flightInTwoQuarters", "flight time in two consecutive quarters", "two consecutive quarters"),
        InPeriod("flightInYear", "flight time in the calendar year", "calendar year"),
        .. Limits(InPeriod("flightIn28Days", "flight time in 28 days", "28 days"), InPeriod("flightIn12Months", "flight time in 12 months", "12 months")),
        .. Limits([.. DutyInDays.Spans.Select(span => InDays(span.Amount, span.Days))]),
        .. Duty,
        Rest,
        LongRests,
        .. SinceRecovery,
    ];

    private LocalDate Date => _leg.Plan.Times.OffBlocks.InZone(_leg.Plan.From.Zone).Date;

    private LocalDate Quarter => DutyRecord.QuarterOf(Date);

    private Instant OnBlocks => _leg.Plan.Times.OnBlocks;

    private Instant Done => OnBlocks + (_leg.Operator.Release ?? Duration.Zero);

    private DutyLimit InDay => Limited(
        new DutyLimit
        {
            Key = "flightIn24Hours",
            Name = "flight time in 24 hours",
            At = _leg.Plan.Key,
            From = OnBlocks - Day,
            Until = OnBlocks,
            Used = _record.FlightTime(OnBlocks - Day, OnBlocks).TotalHours,
            Unknown = Unlogged(OnBlocks - Day),
        },
        new FlightTimeInDay(),
        FlightTimeInDay.LimitOf(_leg));

    private DutyLimit InWeek => new()
    {
        Key = "flightIn7Days",
        Name = "flight time in 7 days",
        At = _leg.Plan.Key,
        From = OnBlocks - (7 * Day),
        Until = OnBlocks,
        Used = _record.FlightTime(OnBlocks - (7 * Day), OnBlocks).TotalHours,
        Unknown = Unlogged(OnBlocks - (7 * Day)),
    };

    // Measures of one rule set only are given where it names a limit; a column that is empty for everybody else helps nobody.
    private static IEnumerable<DutyLimit> Limits(params DutyLimit[] measures) => measures.Where(measure => measure.Limit is not null);

    private DutyLimit InDays(string amount, int days)
    {
        var zone = _leg.Plan.From.Zone;
        var from = Date.PlusDays(1 - days).AtStartOfDayInZone(zone).ToInstant();
        return Limited(
            new DutyLimit
            {
                Key = $"dutyIn{days.ToString(System.Globalization.CultureInfo.InvariantCulture)}Days",
                Name = amount,
                At = _leg.Plan.Key,
                From = from,
                Until = Done,
                Used = _record.Duty(from, Done).TotalHours,
                Unknown = Open(from, Done) is { Length: > 0 } open
                    ? open
                    : _record.Untimed(from, Done) is { } untimed ? $"The duty on {Words.Day(untimed)} is logged without its times." : "",
            },
            new DutyInDays(),
            amount);
    }

    private DutyLimit InPeriod(string key, string name, string amount)
    {
        var from = FlightTimeInYear.Spans(Date).First(span => span.Amount == amount).From;
        return Limited(
            new DutyLimit
            {
                Key = key,
                Name = name,
                At = _leg.Plan.Key,
                From = from.AtStartOfDayInZone(_leg.Plan.From.Zone).ToInstant(),
                Until = OnBlocks,
                Used = _record.FlightTime(from, OnBlocks, Date).TotalHours,
                Unknown = Open(from.AtStartOfDayInZone(_leg.Plan.From.Zone).ToInstant(), OnBlocks),
            },
            new FlightTimeInYear(),
            amount);
    }

    private IEnumerable<DutyLimit> Duty => _record.DutyOf(_leg.Plan) is { } duty
        ? [Limited(
            new DutyLimit
            {
                Key = "duty",
                Name = "duty",
                At = _leg.Plan.Key,
                From = duty.Report,
                Until = Done,
                Used = (Done - duty.Report).TotalHours,
            },
            new Rest(),
            "duty")]
        : [];

    private DutyLimit Rest
    {
        get
        {
            var (atBest, known) = _record.LongestRest(Done - Day, Done);
            return Limited(
                new DutyLimit
                {
                    Key = "restIn24Hours",
                    Name = "longest rest in the 24 hours before the release",
                    At = _leg.Plan.Key,
                    From = Done - Day,
                    Until = Done,
                    Used = known.TotalHours,
                    IsLeast = true,
                    Unknown = atBest > known
                        ? Open(Done - Day, Done) is { Length: > 0 } open ? open : "The duty in these 24 hours is not wholly logged with its times."
                        : "",
                },
                new Rest(),
                "rest");
        }
    }

    private DutyLimit LongRests
    {
        get
        {
            var from = Quarter.AtStartOfDayInZone(_leg.Plan.From.Zone).ToInstant();
            return Limited(
                new DutyLimit
                {
                    Key = "longRestsInQuarter",
                    Name = "24-hour rests in the quarter, weeks left counted",
                    At = _leg.Plan.Key,
                    From = from,
                    Until = Done,
                    Used = _record.LongRests(from, Done) + Crews.LongRests.WeeksLeft(Quarter, Done.InZone(_leg.Plan.From.Zone).Date),
                    Unit = "rests",
                    IsLeast = true,
                    Unknown = Open(from, Done),
                },
                new LongRests(),
                "rests in the quarter");
        }
    }

    private IEnumerable<DutyLimit> SinceRecovery
    {
        get
        {
            var check = new RecoveryRest();
            if (_record.DutyOf(_leg.Plan) is not { } duty
                || _rules.RulingFor(check, _leg) is not { } ruling
                || ruling.AmountOrNone(RecoveryRest.Between) is null)
            {
                return [];
            }

            var (from, atBest, known) = RecoveryRest.Last(ruling, _record, Done, duty.Report, _leg.Plan.From.Zone);
            var since = known ?? from;
            return Limits(Limited(
                new DutyLimit
                {
                    Key = "sinceRecoveryRest",
                    Name = known is null ? "time since a recovery rest, none found" : "time since the last recovery rest",
                    At = _leg.Plan.Key,
                    From = since,
                    Until = Done,
                    Used = (Done - since).TotalHours,
                    Unknown = atBest == known
                        ? ""
                        : Open(since, duty.Report) is { Length: > 0 } open ? open : "The duty in this time is not wholly logged with its times.",
                },
                check,
                RecoveryRest.Between));
        }
    }

    private string Open(Instant from, Instant until) => _record.Missing(from, until) is { } missing ? Words.Capital(missing) + "." : "";

    private string Unlogged(Instant since) =>
        _record.Unplanned(since, OnBlocks) is { } unplanned ? $"Leg {unplanned.Leg} in this time could not be planned."
        : Open(since, OnBlocks);

    private DutyLimit Limited(DutyLimit measure, ICheck check, string amount) =>
        _rules.RulingFor(check, _leg)?.AmountOrNone(amount) is { } limit
            ? measure with { Limit = limit.Value, Citation = limit.Citation, IsBasisUnconfirmed = !limit.IsConfirmed }
            : measure;
}
