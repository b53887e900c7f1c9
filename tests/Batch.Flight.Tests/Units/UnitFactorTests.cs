using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Testing;

namespace Batch.Flight.Tests.Units;

public sealed class UnitFactorTests
{
    private static readonly CheckFile Factors = CheckFile.Read("units.csv");

    public static IEnumerable<object[]> FactorIds => Factors.Ids();

    [Theory]
    [MemberData(nameof(FactorIds))]
    public void A_factor_or_constant_is_the_published_one(string id)
    {
        var row = Factors[id];
        var ours = row["quantity"] switch
        {
            "WGS84 inverse flattening" => Geodesic.InverseFlattening,
            "standard gravity" => StandardAtmosphere.GravityMPerS2,
            "ISA lapse rate to 11 km" => -StandardAtmosphere.LapseKPerM * 1000,
            "ISA sea-level speed of sound" => StandardAtmosphere.SoundSpeedAt(new Celsius(15)).Value,
            "official sunrise zenith" => 90 - Sun.HorizonAltitudeDeg,
            _ => (row["from_unit"], row["to_unit"]) switch
            {
                ("NM", "m") => new NauticalMiles(row.Number("from_value")).Metres,
                ("NM", "ft") => new NauticalMiles(row.Number("from_value")).Metres / Feet.MetresPerFoot,
                ("ft", "m") => new Feet(row.Number("from_value")).Metres,
                ("lb", "kg") => new Pounds(row.Number("from_value")).Kilograms,
                var other => throw new InvalidOperationException($"{other} is not compared"),
            },
        };
        Assert.Equal(row.Number("to_value"), ours, row["exact"] == "yes" && row["quantity"] != "official sunrise zenith" ? 0 : row.HalfDigit("to_value"));
    }
}
