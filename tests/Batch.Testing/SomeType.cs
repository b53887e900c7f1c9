using Batch.Flight.Air;
using Batch.Flight.Fleet;

namespace Batch.Testing;

public static partial class Some
{
    private static readonly ImmutableArray<string> ProfileAxes = ["weight [lb]", "ISA deviation [K]", "pressure altitude [ft]"];
    private static readonly ImmutableArray<string> Cumulative = ["time [min]", "fuel [lb]", "distance [NM]"];
    private static readonly ImmutableArray<string> CruiseValues = ["true airspeed [kt]", "fuel flow [lb/h]"];

    /// <summary>Still, standard air.</summary>
    public static AirField StillAir { get; } = new([]);

    /// <summary>One wind everywhere at all heights, standard temperature shifted by a deviation.</summary>
    public static AirField SteadyWind(double fromDeg, double knots, double deviationK = 0) =>
        new([Report(0, fromDeg, knots, deviationK), Report(36_000, fromDeg, knots, deviationK)]);

    /// <summary>
    /// Skua 9, an invented twin turboprop of 10,000 lb with smooth, physically sane tables to 28,000 ft: more weight and heat cost time and fuel everywhere;
    /// higher cruise is faster and burns less. Settings <c>long range</c> and <c>fast</c>.
    /// </summary>
    public static AircraftType Type() => new()
    {
        Name = "Skua 9",
        Description = "twin turboprop",
        Engine = EngineKind.Turboprop,
        Engines = 2,
        Fuel = FuelKind.JetA1,
        FuelDensity = 6.7,
        RequiredPilots = 1,
        Seats = 8,
        Pressurised = true,
        Ceiling = new Feet(28_000),
        MaximumRamp = new Pounds(10_060),
        MaximumTakeoff = new Pounds(10_000),
        MaximumLanding = new Pounds(9_700),
        MaximumZeroFuel = new Pounds(8_500),
        UsableFuel = new Pounds(2_500),
        TaxiFuel = new Pounds(60),
        ApproachFuel = new Pounds(30),
        ApproachTime = Duration.FromMinutes(5),
        GlideRatio = 11,
        Tables = SmoothTables,
    };

    /// <summary>
    /// Plank 1, an aircraft for sums done by hand, without allowances: climb 2 min, 10 lb and 4 NM, descent 1 min, 3 lb and 4 NM for every 1,000 ft; cruise 200
    /// kt and 400 lb/h at every weight, temperature and level up to 20,000 ft. Setting <c>cruise</c>.
    /// </summary>
    public static AircraftType PlainType() => new()
    {
        Name = "Plank 1",
        Tables = new PerformanceTables
        {
            Climb = Table("Climb of Plank 1", ProfileAxes, Cumulative,
                [Row([double.NaN, double.NaN, 0], 0, 0, 0), Row([double.NaN, double.NaN, 20_000], 40, 200, 80)]),
            Cruise = Settings(("cruise", Table(
                "Cruise of Plank 1", ProfileAxes, CruiseValues,
                [Row([double.NaN, double.NaN, 0], 200, 400), Row([double.NaN, double.NaN, 20_000], 200, 400)]))),
            CruiseSettings = ["cruise"],
            Descent = Table("Descent of Plank 1", ["pressure altitude [ft]"], Cumulative, [Row([0], 0, 0, 0), Row([20_000], 20, 60, 80)]),
        },
    };

    /// <summary>A table that has no faults.</summary>
    public static PerformanceTable Table(string name, ImmutableArray<string> axes, ImmutableArray<string> values, IReadOnlyList<TableRow> rows) =>
        PerformanceTable.TryCreate(name, axes, values, rows, out var table, out var faults) && table is not null
            ? table
            : throw new ArgumentException(string.Join(' ', faults), nameof(rows));

    /// <summary>One row of a table.</summary>
    public static TableRow Row(ImmutableArray<double> keys, params ImmutableArray<double> values) => new(keys, values, Origin.None);

    /// <summary>Cruise tables by setting.</summary>
    public static ImmutableSortedDictionary<string, PerformanceTable> Settings(params (string Setting, PerformanceTable Table)[] tables) =>
        tables.ToImmutableSortedDictionary(pair => pair.Setting, pair => pair.Table, StringComparer.OrdinalIgnoreCase);

    private static readonly PerformanceTables SmoothTables = new()
    {
        Climb = Table("Climb of Skua 9", ProfileAxes, Cumulative, [.. Grid(2000, (lb, kelvin, feet) =>
        {
            var minutes = feet / 2000 * (1 + (lb - 6000) / 8000) * (1 + kelvin / 100) * (1 + feet / 60_000);
            return [minutes, minutes * 8, minutes * (150 + feet / 500) / 60];
        })]),
        Cruise = Settings(
            ("long range", Table("Cruise (long range) of Skua 9", ProfileAxes, CruiseValues, [.. Grid(4000, (lb, kelvin, feet) =>
                [180 + feet / 400 - (lb - 6000) / 400 + kelvin / 5, 520 - feet / 100 + (lb - 6000) / 100 + kelvin])])),
            ("fast", Table("Cruise (fast) of Skua 9", ProfileAxes, CruiseValues, [.. Grid(4000, (lb, kelvin, feet) =>
                [200 + feet / 400 - (lb - 6000) / 400 + kelvin / 5, 650 - feet / 80 + (lb - 6000) / 80 + kelvin])]))),
        CruiseSettings = ["long range", "fast"],
        Descent = Table("Descent of Skua 9", ["pressure altitude [ft]"], Cumulative,
            [.. Enumerable.Range(0, 15).Select(step => Row([step * 2000], step * 1.25, step * 5.5, step * 4.5))]),
        Holding = Table("Holding of Skua 9", ["weight [lb]", "pressure altitude [ft]"], ["fuel flow [lb/h]"],
            [Row([6000, 0], 300), Row([6000, 20_000], 240), Row([10_000, 0], 380), Row([10_000, 20_000], 310)]),
    };

    private static IEnumerable<TableRow> Grid(double stepFt, Func<double, double, double, ImmutableArray<double>> values)
    {
        foreach (var lb in new double[] { 6000, 8000, 10_000 })
            foreach (var kelvin in new double[] { -20, 0, 20 })
                for (var feet = 0.0; feet <= 28_000; feet += stepFt)
                    yield return new TableRow([lb, kelvin, feet], values(lb, kelvin, feet), Origin.None);
    }

    /// <summary>Reports of one wind everywhere at all heights, standard temperature.</summary>
    public static IEnumerable<AirReport> Reports(double fromDeg, double knots) => [Report(0, fromDeg, knots, 0), Report(36_000, fromDeg, knots, 0)];

    private static AirReport Report(double altitudeFt, double fromDeg, double knots, double deviationK) => new()
    {
        Altitude = new Feet(altitudeFt),
        WindFrom = new TrueDegrees(fromDeg),
        WindSpeed = new Knots(knots),
        Temperature = StandardAtmosphere.TemperatureAt(new Feet(altitudeFt)) + deviationK,
    };
}
