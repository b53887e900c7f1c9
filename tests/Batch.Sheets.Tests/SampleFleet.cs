using Batch.Flight.Earth;
using Batch.Flight.Fleet;

namespace Batch.Sheets.Tests;

/// <summary>An invented operator with one aircraft and four airports, made by hand.</summary>
internal static class SampleFleet
{
    public static readonly DateTimeZone East = DateTimeZoneProviders.Tzdb["America/New_York"];

    public static readonly DateTimeZone Islands = DateTimeZoneProviders.Tzdb["Atlantic/Azores"];

    public static Airport Airport(string ident, string name, double lat, double lon, double elevation, DateTimeZone zone) => new()
    {
        Ident = ident,
        Name = name,
        Position = new GeoPoint(lat, lon),
        Elevation = new Feet(elevation),
        Zone = zone,
        FuelsSold = [FuelKind.JetA1],
        Opens = new LocalTime(6, 0),
        Closes = new LocalTime(22, 0),
        QuietFrom = new LocalTime(23, 0),
        QuietTo = new LocalTime(5, 30),
        Lighting = "on request",
        ClearanceFrequency = "121.725",
        TowerFrequency = "118.300",
        Handler = "Ramp & Co",
        ApproachKind = "ILS",
        Customs = "on request",
    };

    public static AircraftType Type { get; } = new()
    {
        Name = "Skua 9",
        Description = "single-engine turboprop, nine seats",
        Engine = EngineKind.Turboprop,
        Engines = 1,
        Fuel = FuelKind.JetA1,
        FuelDensity = 6.7,
        RequiredPilots = 1,
        Seats = 9,
        Ceiling = new Feet(25_000),
        MaximumRamp = new Pounds(9_100),
        MaximumTakeoff = new Pounds(9_050),
        MaximumLanding = new Pounds(8_600),
        MaximumZeroFuel = new Pounds(8_000),
        UsableFuel = new Pounds(2_200),
        Envelopes =
        [
            new Envelope { Case = EnvelopeCase.Takeoff, Vertices = [At(5_000, 180), At(7_300, 181), At(9_050, 188), At(9_050, 204), At(5_000, 204)] },
            new Envelope { Case = EnvelopeCase.Landing, Vertices = [At(5_000, 180), At(7_300, 181), At(8_600, 186.2), At(8_600, 204), At(5_000, 204)] },
            new Envelope { Case = EnvelopeCase.ZeroFuel, Vertices = [At(5_000, 180), At(7_300, 181), At(8_000, 183.8), At(8_000, 204), At(5_000, 204)] },
        ],
    };

    public static Aircraft Aircraft { get; } = new()
    {
        Registration = "XQ-SKA",
        Type = "Skua 9",
        BasicEmptyWeight = new Pounds(5_240),
        BasicEmptyMoment = new PoundInches(5_240 * 186.4),
        PilotsIncluded = 1,
        Home = "XAND",
        Hours = 4_211.3,
        Landings = 5_120,
        NextInspectionAt = 4_230,
    };

    public static ImmutableArray<Station> Stations { get; } =
    [
        new Station { Name = "Cockpit right", Kind = StationKind.Crew, Arm = new Inches(136), Seats = 1 },
        new Station { Name = "Row 1", Kind = StationKind.Seat, Arm = new Inches(172), Seats = 2 },
        new Station { Name = "Row 2", Kind = StationKind.Seat, Arm = new Inches(208), Seats = 2 },
        new Station { Name = "Aft hold", Kind = StationKind.Bags, Arm = new Inches(282), Maximum = new Pounds(400) },
    ];

    public static ImmutableArray<CrewMember> Crew { get; } =
    [
        new CrewMember { Code = "ANA", Name = "Ana Quist", Mail = "ana@skerry.example", Base = "XAND" },
        new CrewMember { Code = "BEN", Name = "Ben Orlo", Mail = "ben@skerry.example", Base = "XAND" },
    ];

    private static EnvelopePoint At(double lb, double inches) => new(new Pounds(lb), new Inches(inches));
}
