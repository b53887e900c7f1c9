using System.Collections.Frozen;
using Batch.Checks.Remedies;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks;

/// <summary>A planned week made ready for looking things up, once for all legs.</summary>
internal sealed class WeekUnderCheck
{
    private readonly Dictionary<LegKey, LegPlan> _legs = [];
    private readonly Dictionary<string, AircraftWeek> _aircraft = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<string, CrewWeek> _crew = new(StringComparer.OrdinalIgnoreCase);
    private readonly Footprint? _seen;
    private readonly Dictionary<string, CheckSetting> _settings;
    private readonly FrozenDictionary<string, ImmutableArray<LoggedDuty>> _logged;
    private readonly Lazy<Instant?> _begins;
    private readonly Lazy<LocalDate?> _loggedUntil;

    /// <summary>Makes it.</summary>
    /// <param name="plan">The week.</param>
    public WeekUnderCheck(PlannedWeek plan)
        : this(
            plan,
            Tabled(plan.Input.CheckSettings),
            new NoticeBoard(plan.Input.Notices),
            plan.Input.Logged.GroupBy(row => row.Crew, StringComparer.OrdinalIgnoreCase)
                .ToFrozenDictionary(group => group.Key, group => group.OrderBy(row => row.Date).ToImmutableArray(), StringComparer.OrdinalIgnoreCase))
    {
    }

    private WeekUnderCheck(PlannedWeek plan, Dictionary<string, CheckSetting> settings, NoticeBoard board,
        FrozenDictionary<string, ImmutableArray<LoggedDuty>> logged)
    {
        Plan = plan;
        Board = board;
        _settings = settings;
        _logged = logged;
        _begins = new Lazy<Instant?>(() => plan.Legs.OfType<LegPlan.Planned>()
            .Select(leg => (Instant?)leg.Times.OffBlocks.InZone(leg.From.Zone).Date.AtStartOfDayInZone(leg.From.Zone).ToInstant()).Min());
        _loggedUntil = new Lazy<LocalDate?>(() => LastLogged(plan.Input.Logged, Begins));
        foreach (var leg in plan.Legs)
        {
            _legs.TryAdd(leg.Key, leg);
        }

        foreach (var aircraft in plan.Aircraft)
        {
            _aircraft.TryAdd(aircraft.Registration, aircraft);
        }

        foreach (var crew in plan.Crew)
        {
            _crew.TryAdd(crew.Code, crew);
        }
    }

    private WeekUnderCheck(WeekUnderCheck like, Footprint seen)
    {
        (Plan, Board, _settings, _logged, _begins, _loggedUntil) = (like.Plan, like.Board, like._settings, like._logged, like._begins, like._loggedUntil);
        (_legs, _aircraft, _crew, _seen) = (like._legs, like._aircraft, like._crew, seen);
    }

    /// <summary>The week.</summary>
    public PlannedWeek Plan { get; }

    /// <summary>The same week, noting what is looked at in it.</summary>
    /// <param name="seen">Takes the notes.</param>
    public WeekUnderCheck Noting(Footprint seen) => new(this, seen);

    /// <summary>The plan of a leg; null where the week has none.</summary>
    /// <param name="key">Its key.</param>
    public LegPlan? Leg(LegKey key)
    {
        _seen?.Trip(key.Trip);
        return _legs.GetValueOrDefault(key);
    }

    /// <summary>What an aircraft does; null where the week does not know it.</summary>
    /// <param name="registration">Registration.</param>
    public AircraftWeek? Aircraft(string registration)
    {
        _seen?.Aircraft(registration);
        return _aircraft.GetValueOrDefault(registration);
    }

    /// <summary>What a person does; null where the week does not know the code.</summary>
    /// <param name="code">Code.</param>
    public CrewWeek? Crew(string code)
    {
        _seen?.Pilot(code);
        return _crew.GetValueOrDefault(code);
    }

    /// <summary>The operator's setting of a check; null where there is none.</summary>
    /// <param name="check">Check id.</param>
    public CheckSetting? Setting(string check) => _settings.GetValueOrDefault(check);

    /// <summary>What is logged for a person, in date order.</summary>
    /// <param name="code">Code.</param>
    public ImmutableArray<LoggedDuty> Logged(string code) => _logged.GetValueOrDefault(code, []);

    /// <summary>Last day of the Logged sheet, whoever flew on it: up to it the log of everybody is taken as kept; null where the sheet is empty.</summary>
    public LocalDate? LoggedUntil
    {
        get
        {
            _seen?.Days();
            return _loggedUntil.Value;
        }
    }

    /// <summary>
    /// Start of the first day of the planned week, at its departure; from here on the week itself says what everybody does; null without a planned leg.
    /// </summary>
    public Instant? Begins
    {
        get
        {
            _seen?.Days();
            return _begins.Value;
        }
    }

    /// <summary>The notices.</summary>
    public NoticeBoard Board { get; }

    /// <summary>Notices about exactly a subject that hold at an instant.</summary>
    /// <param name="subject">Airport, fix, airway or registration; runways of an airport are left out.</param>
    /// <param name="at">The instant.</param>
    public IEnumerable<Notice> Notices(string subject, Instant at) => Board.About(subject, at, at)
        .Where(notice => notice.HoldsAt(at) && IsAbout(notice, subject));

    /// <summary>Notices about a runway that hold at an instant: <c>XAND 09</c>, or both directions as <c>XAND 09/27</c>.</summary>
    /// <param name="airport">Airport.</param>
    /// <param name="runway">Designator.</param>
    /// <param name="at">The instant.</param>
    public IEnumerable<Notice> Notices(string airport, string runway, Instant at) => Board.About(airport, at, at)
        .Where(notice => notice.HoldsAt(at)
            && !IsAbout(notice, airport)
            && notice.Subject.Split([' ', '/'], StringSplitOptions.RemoveEmptyEntries).Skip(1).Contains(runway, StringComparer.OrdinalIgnoreCase));

    /// <summary>Another plan of the same books made ready.</summary>
    /// <param name="plan">The plan; only legs and loads differ.</param>
    public WeekUnderCheck With(PlannedWeek plan)
    {
        var week = new WeekUnderCheck(plan, _settings, Board, _logged);
        return _seen is { } seen ? week.Noting(seen) : week;
    }

    // A row of a day after the week has begun says nothing of how far the log is kept: it may be a slip of the date.
    private static LocalDate? LastLogged(ImmutableArray<LoggedDuty> rows, Instant? begins) =>
        rows.Where(row => begins is not { } start || row.Date <= start.InUtc().Date).Select(row => (LocalDate?)row.Date).Max();

    private static Dictionary<string, CheckSetting> Tabled(ImmutableArray<CheckSetting> settings)
    {
        var table = new Dictionary<string, CheckSetting>(StringComparer.OrdinalIgnoreCase);
        foreach (var setting in settings)
        {
            table.TryAdd(setting.Check, setting);
        }

        return table;
    }

    private static bool IsAbout(Notice notice, string subject) => string.Equals(notice.Subject.Trim(), subject, StringComparison.OrdinalIgnoreCase);
}
