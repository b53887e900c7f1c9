namespace Batch.Flight.Fleet;

/// <summary>An aircraft type as the operator book describes it. A null member means that the book gives no value; nothing here is a default.</summary>
public sealed record AircraftType
{
    /// <summary>Name by which the other sheets refer to it.</summary>
    public required string Name { get; init; }

    /// <summary>Free description.</summary>
    public string Description { get; init; } = "";

    /// <summary>How it is powered.</summary>
    public EngineKind? Engine { get; init; }

    /// <summary>Number of engines, 1 or more.</summary>
    public int? Engines { get; init; }

    /// <summary>The fuel it burns.</summary>
    public FuelKind? Fuel { get; init; }

    /// <summary>Density of its fuel [lb/US gal], such as 6.7.</summary>
    public double? FuelDensity { get; init; }

    /// <summary>Pilots the type certificate requires, 1 or 2.</summary>
    public int? RequiredPilots { get; init; }

    /// <summary>Passenger seats.</summary>
    public int? Seats { get; init; }

    /// <summary>Whether the cabin is pressurised.</summary>
    public bool? Pressurised { get; init; }

    /// <summary>Greatest operating altitude [ft].</summary>
    public Feet? Ceiling { get; init; }

    /// <summary>Maximum ramp (taxi) weight.</summary>
    public Pounds? MaximumRamp { get; init; }

    /// <summary>Maximum takeoff weight.</summary>
    public Pounds? MaximumTakeoff { get; init; }

    /// <summary>Maximum landing weight.</summary>
    public Pounds? MaximumLanding { get; init; }

    /// <summary>Maximum zero-fuel weight.</summary>
    public Pounds? MaximumZeroFuel { get; init; }

    /// <summary>Usable fuel with full tanks.</summary>
    public Pounds? UsableFuel { get; init; }

    /// <summary>Fuel for start, run-up and taxi out.</summary>
    public Pounds? TaxiFuel { get; init; }

    /// <summary>Fuel for the approach and landing beyond the descent table.</summary>
    public Pounds? ApproachFuel { get; init; }

    /// <summary>Time for the approach and landing beyond the descent table.</summary>
    public Duration? ApproachTime { get; init; }

    /// <summary>Still-air distance over height in a power-off glide, a plain ratio.</summary>
    public double? GlideRatio { get; init; }

    /// <summary>Mean aerodynamic chord, in percent of which the working shows centres of gravity besides; null where the book gives none.</summary>
    public MeanAerodynamicChord? Chord { get; init; }

    /// <summary>The category it is certificated in; null where the book does not say.</summary>
    public CertificationCategory? Certification { get; init; }

    /// <summary>Approach category A to E.</summary>
    public string ApproachCategory { get; init; } = "";

    /// <summary>ICAO type designator for flight plans.</summary>
    public string Designator { get; init; } = "";

    /// <summary>ICAO flight-plan equipment, item 10.</summary>
    public string Equipment { get; init; } = "";

    /// <summary>Corrections of takeoff and landing distance.</summary>
    public RunwayCorrections Corrections { get; init; } = new();

    /// <summary>Loading stations in book order.</summary>
    public ImmutableArray<Station> Stations { get; init; } = [];

    /// <summary>Fuel moment against fuel weight, rising in fuel.</summary>
    public ImmutableArray<FuelMoment> FuelMoments { get; init; } = [];

    /// <summary>Envelopes, at most one a case.</summary>
    public ImmutableArray<Envelope> Envelopes { get; init; } = [];

    /// <summary>Performance tables.</summary>
    public PerformanceTables Tables { get; init; } = new();

    /// <summary>Where the Types row was read.</summary>
    public Origin Origin { get; init; } = Origin.None;
}
