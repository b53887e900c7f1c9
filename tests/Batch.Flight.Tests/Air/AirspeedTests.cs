using System.Globalization;
using Batch.Flight.Air;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Air;

public sealed class AirspeedTests
{
    private static readonly CheckFile Speeds = CheckFile.Read("airspeed.csv");

    public static IEnumerable<object[]> SpeedIds => Speeds.Ids();

    [Theory]
    [MemberData(nameof(SpeedIds))]
    public void A_speed_agrees_with_the_published_one(string id)
    {
        var row = Speeds[id];
        var given = row.Parts("inputs");
        var tolerance = row.Number("tolerance");
        switch (row["kind"])
        {
            case "cas_to_impact_pressure":
                Assert.Equal(row.Number("value"), Airspeed.ImpactPressure(Speed(given["cas"])).Value * 100 / Pascals(row["unit"]), tolerance);
                break;
            case "mach_to_qc_over_p":
                Assert.Equal(row.Number("value"), Airspeed.PressureRatio(Number(given["mach"])), tolerance);
                Assert.Equal(Number(given["mach"]), Airspeed.MachOfRatio(row.Number("value")), 1e-4);
                break;
            case "tas_to_mach":
                Assert.Equal(row.Number("value"), Airspeed.MachFromTrue(Speed(given["tas"]), Temperature(given)), tolerance);
                break;
            case "mach_to_tas_cas":
                var fromMach = Airspeed.TrueFromMach(Number(given["mach"]), Temperature(given));
                Assert.Equal(row.Number("value"), fromMach.Value, tolerance);
                AssertPrinted(row, "cas_kt", Airspeed.CalibratedFromTrue(fromMach, Altitude(given), Temperature(given)).Value);
                break;
            case "cas_to_tas" or "cas_to_tas_mach":
                var found = Airspeed.TrueFromCalibrated(Speed(given["cas"]), Altitude(given), Temperature(given));
                Assert.Equal(row.Number("value"), found.Value, tolerance);
                Assert.Equal(Speed(given["cas"]).Value, Airspeed.CalibratedFromTrue(found, Altitude(given), Temperature(given)).Value, 1e-9);
                AssertPrinted(row, "mach", Airspeed.MachFromTrue(found, Temperature(given)));
                AssertPrinted(row, "eas_kt", found.Value * Math.Sqrt(StandardAtmosphere.DensityRatioAt(Altitude(given), Temperature(given))));
                AssertPrinted(row, "isa_dev", StandardAtmosphere.DeviationK(Temperature(given), Altitude(given)));
                break;
            default:
                Assert.Fail($"{row["kind"]} is not compared");
                break;
        }
    }

    [Fact]
    public void Calibrated_to_true_and_back_is_the_same_speed() =>
        Gen.Select(Gen.Double[1, 900], Gen.Double[-2000, 50000], Gen.Double[-70, 50]).Sample((speedKt, altitudeFt, oatC) =>
        {
            var found = Airspeed.TrueFromCalibrated(new Knots(speedKt), new Feet(altitudeFt), new Celsius(oatC));
            Assert.Equal(speedKt, Airspeed.CalibratedFromTrue(found, new Feet(altitudeFt), new Celsius(oatC)).Value, 1e-6);
        });

    [Fact]
    public void Mach_to_true_and_back_is_the_same_number() =>
        Gen.Select(Gen.Double[0, 3], Gen.Double[-70, 50]).Sample((mach, oatC) =>
            Assert.Equal(mach, Airspeed.MachFromTrue(Airspeed.TrueFromMach(mach, new Celsius(oatC)), new Celsius(oatC)), 1e-12));

    [Fact]
    public void A_higher_calibrated_speed_is_a_higher_true_speed_through_the_speed_of_sound()
    {
        var before = 0.0;
        for (var speedKt = 1; speedKt < 1200; speedKt++)
        {
            var found = Airspeed.TrueFromCalibrated(new Knots(speedKt), new Feet(20000), new Celsius(-24.6)).Value;
            Assert.True(found > before);
            before = found;
        }
    }

    [Fact]
    public void Standing_still_is_no_speed() =>
        Assert.Equal(Knots.Zero, Airspeed.TrueFromCalibrated(Knots.Zero, new Feet(5000), new Celsius(10)));

    [Theory]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_speed_that_is_none_is_refused(double speedKt) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Airspeed.TrueFromCalibrated(new Knots(speedKt), Feet.Zero, new Celsius(15)));

    private static void AssertPrinted(CheckRow row, string part, double actual)
    {
        if (!row.Parts("note").TryGetValue(part, out var text)) return;
        Assert.Equal(Number(text), actual, CheckRow.HalfDigitOf(text) + 0.005 * (part == "isa_dev" ? 1 : 0));
    }

    private static Knots Speed(string text) => new(Number(text) * (text.Split(' ')[1] switch
    {
        "kt" => 1,
        "mph" => 1609.344 / 1852,
        "km/h" => 1000.0 / 1852,
        var other => throw new FormatException($"'{other}' is no unit of speed here."),
    }));

    private static double Pascals(string unit) => unit switch
    {
        "lb/ft2" => 47.88025898,
        "inHg" => 3386.389,
        "mmHg" => 133.322387415,
        _ => throw new FormatException($"'{unit}' is no unit of pressure here."),
    };

    private static Feet Altitude(IReadOnlyDictionary<string, string> given) =>
        new(Number(given["pressure_alt"]) / (given["pressure_alt"].EndsWith(" m", StringComparison.Ordinal) ? Feet.MetresPerFoot : 1));

    private static Celsius Temperature(IReadOnlyDictionary<string, string> given) => given["oat"] switch
    {
        "ISA" => StandardAtmosphere.TemperatureAt(Altitude(given)),
        var text when text.EndsWith("degF", StringComparison.Ordinal) => new Celsius((Number(text) - 32) / 1.8),
        var text => new Celsius(Number(text)),
    };

    private static double Number(string text) => double.Parse(text.Split(' ')[0], NumberStyles.Float, CultureInfo.InvariantCulture);
}
