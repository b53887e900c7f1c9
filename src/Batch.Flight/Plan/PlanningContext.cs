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
        Manifest = week.Manifest.ToLookup(line => line.Trip, StringComparer.OrdinalIgnoreCase);
        Cargo = week.Cargo.ToLookup(line => line.Trip, StringComparer.OrdinalIgnoreCase);
        Memo = new PlanMemo();
        AlternateLevels = new AlternateLevels();
    }

    private PlanningContext(PlanningContext like, OperatorWeek week)
    {
        Week = week;
        Rules = like.Rules;
        Navigation = like.Navigation;
        Weather = like.Weather;
        Notices = like.Notices;
        AlternateLevels = like.AlternateLevels;
        var sameManifest = week.Manifest == like.Week.Manifest;
        var sameCargo = week.Cargo == like.Week.Cargo;
        Manifest = sameManifest ? like.Manifest : week.Manifest.ToLookup(line => line.Trip, StringComparer.OrdinalIgnoreCase);
        Cargo = sameCargo ? like.Cargo : week.Cargo.ToLookup(line => line.Trip, StringComparer.OrdinalIgnoreCase);
        var trips = (sameManifest ? [] : Differing(like.Week.Manifest, week.Manifest).Select(line => line.Trip))
            .Concat(sameCargo ? [] : Differing(like.Week.Cargo, week.Cargo).Select(line => line.Trip));
        Memo = new PlanMemo(like.Memo, trips.ToImmutableHashSet(StringComparer.OrdinalIgnoreCase));
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
    public ILookup<string, ManifestLine> Manifest { get; }

    /// <summary>Cargo by trip.</summary>
    public ILookup<string, CargoLine> Cargo { get; }

    /// <summary>What was planned already.</summary>
    public PlanMemo Memo { get; }

    /// <summary>Levels of flights to alternates.</summary>
    public AlternateLevels AlternateLevels { get; }

    /// <summary>The same reference data with other legs and loads; what was planned already is taken over where nothing changed.</summary>
    /// <param name="week">The week, its reference data the same objects.</param>
    public PlanningContext With(OperatorWeek week) => new(this, week);

    private static IEnumerable<T> Differing<T>(ImmutableArray<T> before, ImmutableArray<T> after)
        where T : class
    {
        var old = before.ToHashSet<object>(ReferenceEqualityComparer.Instance);
        var now = after.ToHashSet<object>(ReferenceEqualityComparer.Instance);
        return before.Where(row => !now.Contains(row)).Concat(after.Where(row => !old.Contains(row)));
    }
}
