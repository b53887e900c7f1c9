using Batch.Books.Units;
using Batch.Testing;
using UnitsNet;
using UnitsNet.Units;
using Quantity = Batch.Books.Units.Quantity;

namespace Batch.Books.Tests.Units;

public sealed class UnitTableTests
{
    private static readonly CheckFile Published = CheckFile.Read("units.csv");

    public static IEnumerable<object[]> PublishedIds => Published.Ids();

    [Theory]
    [MemberData(nameof(PublishedIds))]
    public void Factors_are_those_published(string id)
    {
        var row = Published[id];
        var dimension = Enum.Parse<Dimension>(row["dimension"]);
        var expected = row.Number("to value");
        var actual = Find(row["from unit"], dimension).To(Find(row["to unit"], dimension), row.Number("from value"));
        Assert.Equal(expected, actual, 1e-8 * expected);
    }

    public static TheoryData<string, string, Enum> Oracle => new()
    {
        { "lb", "Mass", MassUnit.Pound }, { "kg", "Mass", MassUnit.Kilogram },
        { "USG", "Volume", VolumeUnit.UsGallon }, { "imp gal", "Volume", VolumeUnit.ImperialGallon }, { "L", "Volume", VolumeUnit.Liter },
        { "ft", "Length", LengthUnit.Foot }, { "m", "Length", LengthUnit.Meter }, { "nm", "Length", LengthUnit.NauticalMile },
        { "km", "Length", LengthUnit.Kilometer }, { "SM", "Length", LengthUnit.Mile },
        { "in", "Length", LengthUnit.Inch }, { "cm", "Length", LengthUnit.Centimeter }, { "mm", "Length", LengthUnit.Millimeter },
        { "kts", "Speed", SpeedUnit.Knot }, { "km/h", "Speed", SpeedUnit.KilometerPerHour }, { "mph", "Speed", SpeedUnit.MilePerHour },
        { "m/s", "Speed", SpeedUnit.MeterPerSecond },
        { "°C", "Temperature", TemperatureUnit.DegreeCelsius }, { "F", "Temperature", TemperatureUnit.DegreeFahrenheit },
        { "K", "Temperature", TemperatureUnit.Kelvin },
        { "min", "Time", DurationUnit.Minute }, { "hrs", "Time", DurationUnit.Hour },
        { "hPa", "Pressure", PressureUnit.Hectopascal }, { "inHg", "Pressure", PressureUnit.InchOfMercury },
        { "lb/h", "MassFlow", MassFlowUnit.PoundPerHour }, { "kg/h", "MassFlow", MassFlowUnit.KilogramPerHour },
        { "gph", "VolumeFlow", VolumeFlowUnit.UsGallonPerHour }, { "L/h", "VolumeFlow", VolumeFlowUnit.LiterPerHour },
        { "lb/USG", "Density", DensityUnit.PoundPerUSGallon }, { "kg/L", "Density", DensityUnit.KilogramPerLiter },
        { "kg/m3", "Density", DensityUnit.KilogramPerCubicMeter },
        { "lb in", "Moment", TorqueUnit.PoundForceInch }, { "lb ft", "Moment", TorqueUnit.PoundForceFoot }, { "kg m", "Moment", TorqueUnit.KilogramForceMeter },
        { "kg cm", "Moment", TorqueUnit.KilogramForceCentimeter },
    };

    [Theory]
    [MemberData(nameof(Oracle))]
    public void Words_convert_as_an_independent_library_does(string word, string dimensionName, Enum unit)
    {
        var dimension = Enum.Parse<Dimension>(dimensionName);
        var own = Find(word, dimension);
        foreach (var other in Oracle.Where(row => (string)row[1] == dimensionName))
        {
            var expected = UnitConverter.Convert(123.4, unit, (Enum)other[2]);
            Assert.Equal(expected, own.To(Find((string)other[0], dimension), 123.4), 1e-6 * Math.Max(1, Math.Abs(expected)));
        }
    }

    [Fact]
    public void The_same_unit_leaves_the_number_as_it_is() => Assert.Equal(0.1 + 0.2, Find("LBS", Dimension.Mass).To(Find("lb", Dimension.Mass), 0.1 + 0.2));

    [Fact]
    public void A_word_means_what_the_column_measures()
    {
        Assert.Null(UnitTable.Find("kg", Dimension.Length));
        Assert.Null(UnitTable.Find("", Dimension.Mass));
        Assert.Null(UnitTable.Find("stone", Dimension.Mass));
        Assert.Equal(Dimension.TemperatureDifference, UnitTable.Find("°F", Dimension.TemperatureDifference)?.Dimension);
        Assert.Equal(1 / 3.785411784, UnitTable.Find("EUR/USG", Dimension.PricePerVolume)?.Factor);
    }

    [Fact]
    public void Every_quantity_has_the_unit_it_is_kept_in()
    {
        var quantities = typeof(Quantity).GetFields().Select(field => field.GetValue(null)).OfType<Quantity>().ToArray();
        Assert.True(quantities.Length > 15);
        Assert.All(quantities, quantity => Assert.Equal(quantity.Dimensions[0], quantity.Kept.Dimension));
    }

    private static UnitWord Find(string word, Dimension dimension) => UnitTable.Find(word, dimension) ?? throw new ArgumentException(word, nameof(word));
}
