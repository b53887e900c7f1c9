using Batch.Flight.Air;
using Batch.Flight.Fleet;
using Batch.Flight.Route;
using Batch.Flight.Week;

namespace Batch.Flight.Plan;

/// <summary>What every leg of a week is planned with: made once, shared by all.</summary>
internal sealed class PlanningContext
{
    /// <summary>Makes the context.</summary>
    /// <param name="week">The books.</param>
    /// <param name="rules">The planning rules of a leg flown by a type.</param>
    /// <param name="scenario">What is made worse; its weights and times are in the week already.</param>
    public PlanningContext(OperatorWeek week, Func<Leg, AircraftType, PlanningRules> rules, Scenario scenario)
    {
        Week = week;
        Rules = rules;
        Navigation = new NavigationBook(week);
        Weather = WeekWeather.Of(week).Under(scenario);
        Notices = new NoticeBoard(week.Notices);
        Manifest = new RowsByTrip<ManifestLine>(week.Manifest, line => line.Trip);
        Cargo = new RowsByTrip<CargoLine>(week.Cargo, line => line.Trip);
        Memo = new PlanMemo();
        AlternateLevels = new AlternateLevels();
    }

    private PlanningContext(PlanningContext like, OperatorWeek week, bool isReadAgain)
    {
        Week = week;
        Rules = like.Rules;
        Navigation = like.Navigation;
        Weather = like.Weather;
        Notices = like.Notices;
        AlternateLevels = like.AlternateLevels;
        var manifest = Trips(Differing(like.Week.Manifest, week.Manifest).Select(line => line.Trip));
        var cargo = Trips(Differing(like.Week.Cargo, week.Cargo).Select(line => line.Trip));
        Manifest = like.Manifest.With(week.Manifest, manifest);
        Cargo = like.Cargo.With(week.Cargo, cargo);
        var trips = manifest.Union(cargo);
        Memo = isReadAgain
            ? like.Memo.After(leg => trips.Contains(leg.Key.Trip) || HasOtherPeopleOrAircraft(leg, like.Week, week))
            : like.Memo.Over(leg => trips.Contains(leg.Key.Trip));
    }

    /// <summary>The books.</summary>
    public OperatorWeek Week { get; }

    /// <summary>The planning rules of a leg flown by a type.</summary>
    public Func<Leg, AircraftType, PlanningRules> Rules { get; }

    /// <summary>Airports, fixes, airways and the altitude grid.</summary>
    public NavigationBook Navigation { get; }

    /// <summary>Weather.</summary>
    public WeekWeather Weather { get; }

    /// <summary>Winds and temperatures.</summary>
    public AirField Air => Weather.Air;

    /// <summary>Notices.</summary>
    public NoticeBoard Notices { get; }

    /// <summary>Passengers by trip.</summary>
    public RowsByTrip<ManifestLine> Manifest { get; }

    /// <summary>Cargo by trip.</summary>
    public RowsByTrip<CargoLine> Cargo { get; }

    /// <summary>What was planned already.</summary>
    public PlanMemo Memo { get; }

    /// <summary>Levels of flights to alternates.</summary>
    public AlternateLevels AlternateLevels { get; }

    /// <summary>The same reference data with other legs and loads; what was planned already is taken over where nothing changed.</summary>
    /// <param name="week">The week, its reference data the same objects.</param>
    public PlanningContext With(OperatorWeek week) => new(this, week, isReadAgain: false);

    /// <summary>The same week read again, with what was planned already taken over where nothing changed; null where too much changed for that.</summary>
    /// <param name="week">The week; what says the same as before is the same object.</param>
    public PlanningContext? After(OperatorWeek week) =>
        week.HasGroundOf(Week) && SameKeys(week.Fleet, Week.Fleet) && SameKeys(week.Types, Week.Types) && SameKeys(week.Crew,
            Week.Crew) && WeekWeather.HasDaysOf(Week, week) ? new(this, week, isReadAgain: true) : null;

    private static bool SameKeys<T>(ImmutableSortedDictionary<string, T> one, ImmutableSortedDictionary<string, T> other) =>
        ReferenceEquals(one, other) || one.Keys.SequenceEqual(other.Keys, StringComparer.Ordinal);

    private static bool HasOtherPeopleOrAircraft(Leg leg, OperatorWeek before, OperatorWeek week)
    {
        var aircraft = week.Fleet.GetValueOrDefault(leg.Aircraft);
        return IsOther(before.Fleet, week.Fleet, leg.Aircraft)
            || IsOther(before.Types, week.Types, aircraft?.Type ?? "")
            || IsOther(before.Crew, week.Crew, leg.Captain)
            || IsOther(before.Crew, week.Crew, leg.SecondPilot);
    }

    private static bool IsOther<T>(ImmutableSortedDictionary<string, T> before, ImmutableSortedDictionary<string, T> now, string key)
        where T : class => !ReferenceEquals(before.GetValueOrDefault(key), now.GetValueOrDefault(key));

    private static ImmutableHashSet<string> Trips(IEnumerable<string> trips) => trips.ToImmutableHashSet(StringComparer.OrdinalIgnoreCase);

    private static IEnumerable<T> Differing<T>(ImmutableArray<T> before, ImmutableArray<T> after)
        where T : class
    {
        if (before == after) yield break;
        if (before.Length == after.Length)
        {
            // Rows were replaced where they stood.
            for (var row = 0; row < before.Length; row++)
            {
                if (ReferenceEquals(before[row], after[row])) continue;
                yield return before[row];
                yield return after[row];
            }

            yield break;
        }

        var old = before.ToHashSet<object>(ReferenceEqualityComparer.Instance);
        var now = after.ToHashSet<object>(ReferenceEqualityComparer.Instance);
        foreach (var row in before)
            if (!now.Contains(row)) yield return row;
        foreach (var row in after)
            if (!old.Contains(row)) yield return row;
    }
}
