using System.Globalization;
using Batch.Flight.Air;
using Batch.Testing;

namespace Batch.Flight.Tests.Air;

public sealed class StandardAtmosphereTests
{
    private static readonly CheckFile Computed = CheckFile.Read("atmosphere-computed.csv");
    private static readonly CheckFile Printed = CheckFile.Read("atmosphere-printed.csv");
    private static readonly CheckFile Altitudes = CheckFile.Read("pressure-density-altitude.csv");

    public static IEnumerable<object[]> ComputedIds => Computed.Ids();

    public static IEnumerable<object[]> PrintedIds => Printed.Ids();

    public static IEnumerable<object[]> AltitudeIds => Altitudes.Ids();

    [Theory]
    [MemberData(nameof(ComputedIds))]
    public void A_level_has_the_values_of_the_defining_constants(string id)
    {
        var row = Computed[id];
        var altitude = new Feet(row.Number("geopotential_alt_ft"));
        var temperature = StandardAtmosphere.TemperatureAt(altitude);
        var pressure = StandardAtmosphere.PressureAt(altitude);
        AssertPrinted(row, "temp_c", temperature.Value);
        AssertPrinted(row, "temp_k", temperature.Kelvin);
        AssertPrinted(row, "pressure_hpa", pressure.Value);
        AssertPrinted(row, "pressure_inhg", pressure.Value / Hectopascals.HectopascalsPerInchOfMercury);
        AssertPrinted(row, "theta", temperature.Kelvin / StandardAtmosphere.SeaLevelTemperatureK);
        AssertPrinted(row, "delta", pressure.Value / StandardAtmosphere.SeaLevelPressureHpa);
        AssertPrinted(row, "sigma", StandardAtmosphere.DensityRatioAt(altitude));
        AssertPrinted(row, "density_kg_m3", StandardAtmosphere.DensityAt(altitude));
        AssertPrinted(row, "sound_kt", StandardAtmosphere.SoundSpeedAt(temperature).Value);
        Assert.Equal(altitude.Value, StandardAtmosphere.AltitudeAt(pressure).Value, 1e-6);
        Assert.Equal(altitude.Value, StandardAtmosphere.DensityAltitude(altitude, temperature).Value, 1e-6);
        Assert.Equal(12.5, StandardAtmosphere.DeviationK(temperature + 12.5, altitude), 1e-9);
    }

    [Theory]
    [MemberData(nameof(PrintedIds))]
    public void A_printed_table_agrees_to_its_precision(string id)
    {
        var row = Printed[id];
        var heightM = row.Number("altitude") * (row["altitude_unit"] == "ft" ? Feet.MetresPerFoot : 1);
        if (row["altitude_kind"] == "geometric") heightM = 6356766 * heightM / (6356766 + heightM);
        var altitude = new Feet(heightM / Feet.MetresPerFoot);
        var temperature = StandardAtmosphere.TemperatureAt(altitude);
        var pascals = StandardAtmosphere.PressureAt(altitude).Value * 100;
        var density = StandardAtmosphere.DensityAt(altitude);
        var sound = StandardAtmosphere.SoundSpeedAt(temperature);
        var found = (row["quantity"], row["value_unit"]) switch
        {
            ("temperature", "degF") => temperature.Value * 1.8 + 32,
            ("temperature", "K") => temperature.Kelvin,
            ("pressure", "inHg") => pascals / 3386.389,
            ("pressure", "Pa") => pascals,
            ("pressure", "psi") => pascals / 6894.757293,
            ("pressure", "lb/ft2") => pascals / 47.880259,
            ("density", "lb/ft3") => density / 16.01846337,
            ("density", "1e-4 slug/ft3") => density / 515.3788184 * 1e4,
            ("density_percent", _) => density / 1.225 * 100,
            ("speed_of_sound", "kt") => sound.Value,
            ("speed_of_sound", "mph") => sound.Value * 1852 / 1609.344,
            var other => throw new InvalidOperationException($"{other} is not compared"),
        };
        Assert.Equal(row.Number("value"), found, row.Number("tolerance"));
    }

    [Theory]
    [MemberData(nameof(AltitudeIds))]
    public void Pressure_and_density_altitude_agree_with_the_published_ones(string id)
    {
        var row = Altitudes[id];
        var given = row.Parts("inputs");
        var pressureAltitude = given.TryGetValue("pressure_alt", out var direct)
            ? new Feet(Number(direct))
            : StandardAtmosphere.PressureAltitude(new Feet(Number(given["elevation"])), Setting(given["altimeter"]));
        var found = row["output"] == "pressure_altitude" ? pressureAltitude : StandardAtmosphere.DensityAltitude(pressureAltitude, Temperature(given["oat"]));
        Assert.Equal(row.Number("value"), found.Value, row.Number("tolerance"));
    }

    [Fact]
    public void The_layers_meet_without_a_step()
    {
        var (below, above) = (new Feet(36089.2388), new Feet(36089.2389));
        Assert.Equal(StandardAtmosphere.PressureAt(below).Value, StandardAtmosphere.PressureAt(above).Value, 1e-5);
        Assert.Equal(-56.5, StandardAtmosphere.TemperatureAt(above).Value, 1e-9);
        Assert.Equal(36089.2388, StandardAtmosphere.AltitudeAt(StandardAtmosphere.PressureAt(below)).Value, 1e-6);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(-20000)]
    [InlineData(70000)]
    public void Altitudes_outside_the_standard_are_refused(double altitudeFt) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardAtmosphere.PressureAt(new Feet(altitudeFt)));

    [Fact]
    public void No_air_is_colder_than_absolute_zero() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardAtmosphere.SoundSpeedAt(new Celsius(-273.15)));

    private static double Number(string text) => double.Parse(text.Split(' ')[0], NumberStyles.Float, CultureInfo.InvariantCulture);

    private static Hectopascals Setting(string text) =>
        new(text.EndsWith("inHg", StringComparison.Ordinal) ? Number(text) * Hectopascals.HectopascalsPerInchOfMercury : Number(text));

    private static Celsius Temperature(string text) => new(text.EndsWith("degF", StringComparison.Ordinal) ? (Number(text) - 32) / 1.8 : Number(text));

    private static void AssertPrinted(CheckRow row, string column, double actual) => Assert.Equal(row.Number(column), actual, row.HalfDigit(column));
}
