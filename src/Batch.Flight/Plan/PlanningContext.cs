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
    public PlanningContext(OperatorWeek week, Func<Leg, AircraftType, PlanningRules> rules)
    {
        Week = week;
        Rules = rules;
        Navigation = new NavigationBook(week);
        Weather = WeekWeather.Of(week);
        Notices = new NoticeBoard(week.Notices);
        Manifest = week.Manifest.ToLookup(line => line.Trip, StringComparer.OrdinalIgnoreCase);
        Cargo = week.Cargo.ToLookup(line => line.Trip, StringComparer.OrdinalIgnoreCase);
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
}
