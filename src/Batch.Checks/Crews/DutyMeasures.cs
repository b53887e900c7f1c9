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
        InPeriod("flightInQuarter", "flight time in the calendar quarter", "calendar quarter", Quarter),
        InPeriod("flightInTwoQuarters", "flight time in two consecutive quarters", "two consecutive quarters", Quarter.PlusMonths(-3)),
        InPeriod("flightInYear", "flight time in the calendar year", "calendar year", new LocalDate(Date.Year, 1, 1)),
        .. Duty,
        Rest,
        LongRests,
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
        _leg.Plan.SecondPilot is null ? "one pilot" : "two pilots");

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

    private DutyLimit InPeriod(string key, string name, string amount, LocalDate from) => Limited(
        new DutyLimit
        {
            Key = key,
            Name = name,
            At = _leg.Plan.Key,
            From = from.AtStartOfDayInZone(_leg.Plan.From.Zone).ToInstant(),
            Until = OnBlocks,
            Used = _record.FlightTime(from, OnBlocks, Date).TotalHours,
            Unknown = _record.KnownFrom <= from ? "" : Begins,
        },
        new FlightTimeInYear(),
        amount);

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
                    Unknown = atBest > known ? "The duty in these 24 hours is not wholly logged with its times." : "",
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
                    Unknown = _record.KnownFrom <= Quarter ? "" : Begins,
                },
                new LongRests(),
                "rests in the quarter");
        }
    }

    private string Begins => _record.KnownFrom is { } first ? $"The log begins on {Words.Day(first)}." : "Nothing is logged.";

    private string Unlogged(Instant since) =>
        _record.Unplanned(since, OnBlocks) is { } unplanned ? $"Leg {unplanned.Leg} in this time could not be planned."
        : _record.KnownSince is { } known && known <= since || _record.KnownFrom is { } first && first.AtStartOfDayInZone(_leg.Plan.From.Zone).ToInstant() <= since ? ""
        : Begins;

    private DutyLimit Limited(DutyLimit measure, ICheck check, string amount) =>
        _rules.RulingFor(check, _leg)?.AmountOrNone(amount) is { } limit
            ? measure with { Limit = limit.Value, Citation = limit.Citation, IsBasisUnconfirmed = !limit.IsConfirmed }
            : measure;
}
