using Batch.Flight.Air;
using Batch.Flight.Fleet;
using Batch.Flight.Route;

namespace Batch.Flight.Week;

/// <summary>Everything the books hold: the operator's reference data and one week of work, typed, each row with its place.</summary>
public sealed record OperatorWeek
{
    /// <summary>The books, in the order given.</summary>
    public ImmutableArray<InputBook> Inputs { get; init; } = [];

    /// <summary>The operator.</summary>
    public required Operator Operator { get; init; }

    /// <summary>Types by name, case ignored.</summary>
    public required ImmutableSortedDictionary<string, AircraftType> Types { get; init; }

    /// <summary>Aircraft by registration, case ignored.</summary>
    public required ImmutableSortedDictionary<string, Aircraft> Fleet { get; init; }

    /// <summary>Airports by ident, case ignored.</summary>
    public required ImmutableSortedDictionary<string, Airport> Airports { get; init; }

    /// <summary>Fixes in book order; idents may repeat.</summary>
    public ImmutableArray<Fix> Fixes { get; init; } = [];

    /// <summary>Airways by name, case ignored.</summary>
    public ImmutableSortedDictionary<string, Airway> Airways { get; init; } =
        ImmutableSortedDictionary<string, Airway>.Empty.WithComparers(StringComparer.OrdinalIgnoreCase);

    /// <summary>Shorelines.</summary>
    public ImmutableArray<LandRing> Land { get; init; } = [];

    /// <summary>Altitude grid.</summary>
    public ImmutableArray<SafeAltitudeCell> AltitudeGrid { get; init; } = [];

    /// <summary>Pilots by code, case ignored.</summary>
    public required ImmutableSortedDictionary<string, CrewMember> Crew { get; init; }

    /// <summary>What was already flown.</summary>
    public ImmutableArray<LoggedDuty> Logged { get; init; } = [];

    /// <summary>The operator's settings of checks.</summary>
    public ImmutableArray<CheckSetting> CheckSettings { get; init; } = [];

    /// <summary>Legs that could be read, in book order.</summary>
    public ImmutableArray<Leg> Legs { get; init; } = [];

    /// <summary>Legs that could not.</summary>
    public ImmutableArray<BrokenLeg> BrokenLegs { get; init; } = [];

    /// <summary>Passengers in book order.</summary>
    public ImmutableArray<ManifestLine> Manifest { get; init; } = [];

    /// <summary>Cargo in book order.</summary>
    public ImmutableArray<CargoLine> Cargo { get; init; } = [];

    /// <summary>Winds and temperatures, placed.</summary>
    public ImmutableArray<AirReport> Winds { get; init; } = [];

    /// <summary>Raw bulletins.</summary>
    public ImmutableArray<RawBulletin> Bulletins { get; init; } = [];

    /// <summary>Notices.</summary>
    public ImmutableArray<Notice> Notices { get; init; } = [];

    /// <summary>All complaints about the input, in book, sheet, row and column order.</summary>
    public ImmutableArray<Problem> Problems { get; init; } = [];

    /// <summary>Whether all but legs, loads and complaints are the very objects of another week.</summary>
    /// <param name="other">The other week.</param>
    public bool HasReferencesOf(OperatorWeek other) => HasGroundOf(other)
        && ReferenceEquals(Types, other.Types) && ReferenceEquals(Fleet, other.Fleet) && ReferenceEquals(Crew,
            other.Crew) && Logged == other.Logged && CheckSettings == other.CheckSettings;

    /// <summary>Whether what every leg is planned with is the very objects of another week: operator, airports, ways, land, weather, notices.</summary>
    /// <param name="other">The other week.</param>
    internal bool HasGroundOf(OperatorWeek other) =>
        ReferenceEquals(Operator, other.Operator) && ReferenceEquals(Airports, other.Airports) && ReferenceEquals(Airways, other.Airways)
        && Fixes == other.Fixes
            && Land == other.Land
            && AltitudeGrid == other.AltitudeGrid
            && Winds == other.Winds
            && Bulletins == other.Bulletins
            && Notices == other.Notices;
}
