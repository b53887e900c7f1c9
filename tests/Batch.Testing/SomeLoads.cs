using Batch.Flight.Fleet;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Testing;

public static partial class Some
{
    /// <summary>Standard weights that no regulation names, so that a test sees where a weight came from.</summary>
    public static StandardWeights Weights { get; } = new()
    {
        Adult = new Pounds(190),
        Man = new Pounds(201),
        Woman = new Pounds(179),
        Child = new Pounds(82),
        Infant = new Pounds(22),
        Pilot = new Pounds(205),
        Bag = new Pounds(30),
        Source = "test weights",
    };

    /// <summary>
    /// A type for load sheets: two pilot seats at 100 in, rows of two seats at 130, 160 and 190 in, an aft compartment of 200 lb at 230 in and a nose
    /// compartment of 60 lb at 40 in; fuel at 150 in up to 600 lb and at 156 in mean up to 1,800 lb; the same envelope for every case.
    /// </summary>
    public static AircraftType LoadType { get; } = new()
    {
        Name = "Skua 9",
        RequiredPilots = 1,
        MaximumRamp = new Pounds(8050),
        MaximumTakeoff = new Pounds(8000),
        MaximumLanding = new Pounds(7600),
        MaximumZeroFuel = new Pounds(7000),
        UsableFuel = new Pounds(1800),
        Stations =
        [
            new Station { Name = "Pilots", Kind = StationKind.Crew, Arm = new Inches(100), Seats = 2 },
            new Station { Name = "Row 1", Kind = StationKind.Seat, Arm = new Inches(130), Seats = 2, FillOrder = 2 },
            new Station { Name = "Row 2", Kind = StationKind.Seat, Arm = new Inches(160), Seats = 2, FillOrder = 1 },
            new Station { Name = "Row 3", Kind = StationKind.Seat, Arm = new Inches(190), Seats = 2, Maximum = new Pounds(380) },
            new Station { Name = "Aft", Kind = StationKind.Bags, Arm = new Inches(230), Maximum = new Pounds(200), FillOrder = 1 },
            new Station { Name = "Nose", Kind = StationKind.Bags, Arm = new Inches(40), Maximum = new Pounds(60), FillOrder = 2 },
        ],
        FuelMoments = [new FuelMoment(new Pounds(600), new PoundInches(90_000)), new FuelMoment(new Pounds(1800), new PoundInches(280_800))],
        Envelopes = [.. Enum.GetValues<EnvelopeCase>()
            .Select(envelopeCase => Envelope(envelopeCase, (5000, 130), (7000, 130), (8000, 138), (8000, 152), (5000, 152)))],
    };

    /// <summary>An aircraft of <see cref="LoadType"/>: 5,200 lb at 140 in, one pilot counted in.</summary>
    public static Aircraft LoadAircraft { get; } = new()
    {
        Registration = "ABCDE",
        Type = "Skua 9",
        BasicEmptyWeight = new Pounds(5200),
        BasicEmptyMoment = new PoundInches(728_000),
        PilotsIncluded = 1,
    };

    /// <summary>A request with nobody but the captain, 1,000 lb of fuel, 20 lb of taxi and 500 lb of trip fuel.</summary>
    public static LoadRequest LoadRequest { get; } = new()
    {
        Aircraft = LoadAircraft,
        Type = LoadType,
        Captain = Pilot("P1", 190),
        Weights = Weights,
        Block = new Pounds(1000),
        Taxi = new Pounds(20),
        Trip = new Pounds(500),
    };

    /// <summary>An envelope of vertices of weight [lb] and arm [in].</summary>
    public static Envelope Envelope(EnvelopeCase envelopeCase, params (double WeightLb, double ArmIn)[] vertices) =>
        new() { Case = envelopeCase, Vertices = [.. vertices.Select(vertex => new EnvelopePoint(new Pounds(vertex.WeightLb), new Inches(vertex.ArmIn)))] };

    /// <summary>A pilot.</summary>
    public static CrewMember Pilot(string code, double? weightLb) =>
        new() { Code = code, Name = "Pilot " + code, Weight = weightLb is { } weight ? new Pounds(weight) : null };

    /// <summary>A passenger of every leg of trip T1.</summary>
    public static ManifestLine Passenger(PersonCategory? category, double? weightLb = null, double? bagsLb = 0, int? bagCount = null, string seat = "") => new()
    {
        Trip = "T1",
        Legs = LegSelection.All,
        Name = "Somebody",
        Category = category,
        Weight = weightLb is { } weight ? new Pounds(weight) : null,
        Bags = bagsLb is { } bags ? new Pounds(bags) : null,
        BagCount = bagCount,
        Seat = seat,
    };

    /// <summary>Cargo of every leg of trip T1.</summary>
    public static CargoLine Cargo(string what, double weightLb, string station = "") =>
        new() { Trip = "T1", Legs = LegSelection.All, What = what, Weight = new Pounds(weightLb), Station = station };

    /// <summary>A performance table from rows of keys and values.</summary>
    /// <exception cref="InvalidOperationException">The rows have faults.</exception>
    public static PerformanceTable Table(string name, string[] axes, string[] values, params (double[] Keys, double[] Values)[] rows) =>
        PerformanceTable.TryCreate(name, [.. axes], [.. values], [.. rows.Select(row => new TableRow([.. row.Keys], [.. row.Values], Origin.None))],
            out var table, out var faults)
            ? table ?? throw new InvalidOperationException("No table was made.")
            : throw new InvalidOperationException(string.Join(' ', faults.Select(fault => fault.Text)));
}
