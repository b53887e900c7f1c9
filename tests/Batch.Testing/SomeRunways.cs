using Batch.Flight.Air;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;

namespace Batch.Testing;

public static partial class Some
{
    private static readonly string[] RunwayAxes = ["weight [lb]", "pressure altitude [ft]", "temperature [°C]"];

    /// <summary>
    /// A distance table that is linear everywhere: over the obstacle 1,000 ft + 0.25 ft/lb above 6,000 lb + 0.1 ft/ft + 10 ft/K above 0 °C; the roll is half of
    /// it. Weights 6,000, 7,000 and 8,000 lb, altitudes 0 to 8,000 ft, temperatures 0 to 40 °C.
    /// </summary>
    public static PerformanceTable DistanceTable(string name, double scale = 1) => Table(name, RunwayAxes, ["ground roll [ft]", "over obstacle [ft]"],
    [
        .. from weight in new double[] { 6000, 7000, 8000 }
           from altitude in new double[] { 0, 4000, 8000 }
           from temperature in new double[] { 0, 20, 40 }
           let distance = scale * (1000 + (0.25 * (weight - 6000)) + (0.1 * altitude) + (10 * temperature))
           select (new[] { weight, altitude, temperature }, new[] { distance / 2, distance }),
    ]);

    /// <summary>A type with <see cref="DistanceTable"/> for takeoff and landing and every correction of a runway.</summary>
    public static AircraftType RunwayType { get; } = new()
    {
        Name = "Skua 9",
        Corrections = new RunwayCorrections
        {
            TakeoffHeadwindPerKnot = 0.01,
            TakeoffTailwindPerKnot = 0.03,
            LandingHeadwindPerKnot = 0.01,
            LandingTailwindPerKnot = 0.04,
            TakeoffUpslopePerPercent = 0.05,
            LandingDownslopePerPercent = 0.06,
            TakeoffGrass = 0.2,
            LandingGrass = 0.25,
            TakeoffWet = 0.05,
            LandingWet = 0.15,
        },
        Tables = new PerformanceTables
        {
            Takeoff = Flaps(("10", DistanceTable("Takeoff of Skua 9"))),
            Landing = Flaps(("30", DistanceTable("Landing of Skua 9"))),
            Speeds = Flaps(
                ("10", Table("Speeds of Skua 9", ["weight [lb]"], ["VR [kt]", "V50 [kt]", "VREF [kt]"], ([6000], [70, 80, double.NaN]),
                    ([8000], [80, 92, double.NaN])))),
        },
    };

    /// <summary>A paved, lighted, level runway with all distances alike.</summary>
    public static Runway Runway(string ident, double bearingDeg, double lengthFt) => new()
    {
        Ident = ident,
        TrueBearing = new TrueDegrees(bearingDeg),
        TakeoffRun = new Feet(lengthFt),
        LandingDistance = new Feet(lengthFt),
        Surface = RunwaySurface.Paved,
        Lighted = true,
    };

    /// <summary>7,000 lb at XAND on 09/27 of 2,000 ft at sea level, 20 °C, calm, standard pressure, no factor of a rule: the distance is 1,450 ft.</summary>
    public static RunwayRequest RunwayRequest { get; } = new()
    {
        Airport = Xand with { Runways = [Runway("09", 90, 2000), Runway("27", 270, 2000)] },
        Type = RunwayType,
        Weight = new Pounds(7000),
        Air = Surface(0, 0, 20),
        AltimeterSetting = new Hectopascals(1013.25),
        Rules = new RunwayRules { TakeoffCitation = "a", LandingCitation = "b" },
    };

    /// <summary>Air at the surface.</summary>
    public static AirSample Surface(double windFromDeg, double windKt, double temperatureC) =>
        new(TrueDegrees.Of(windFromDeg), new Knots(windKt), new Celsius(temperatureC), WindAssumed: false, TemperatureAssumed: false);

    /// <summary>Tables by flap.</summary>
    public static ImmutableSortedDictionary<string, PerformanceTable> Flaps(params (string Flap, PerformanceTable Table)[] tables) =>
        tables.ToImmutableSortedDictionary(entry => entry.Flap, entry => entry.Table, StringComparer.OrdinalIgnoreCase);
}
