using Batch.Flight.Route;
using Batch.Flight.Week;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Route;

public sealed class SemicircularTests
{
    private static readonly CheckFile File = CheckFile.Read("cruising-levels.csv");

    public static IEnumerable<object[]> Rows => File.Ids();

    [Theory]
    [MemberData(nameof(Rows))]
    public void Levels_fit_as_the_rule_says(string id)
    {
        var row = File[id];
        var rules = row["rules"] == "IFR" ? FlightRules.Ifr : FlightRules.Vfr;
        var fits = Semicircular.Fits(rules, MagneticDegrees.Of(row.Number("course")), new Feet(row.Number("level")), new Feet(row.Number("surface")));
        Assert.Equal(row["fits"] == "yes", fits);
    }

    [Fact]
    public void Every_listed_level_fits_and_rises() =>
        Gen.Select(Gen.Enum<FlightRules>(), Gen.Double[0, 359.99]).Sample((rules, course) =>
        {
            var levels = Semicircular.Levels(rules, Semicircular.IsEastbound(new MagneticDegrees(course)));
            return levels.Length > 5
                && levels.All(level => Semicircular.Fits(rules, new MagneticDegrees(course), level, new Feet(-5000)))
                && levels.SequenceEqual(levels.Order());
        });

    [Fact]
    public void No_level_fits_both_directions_above_the_free_height() =>
        Gen.Select(Gen.Enum<FlightRules>(), Gen.Int[7, 102]).Sample((rules, step) =>
            !(Semicircular.Fits(rules, new MagneticDegrees(90), new Feet(step * 500), Feet.Zero)
                && Semicircular.Fits(rules, new MagneticDegrees(270), new Feet(step * 500), Feet.Zero)));

    [Fact]
    public void A_converted_level_a_hair_beside_its_thousand_fits_like_the_thousand()
    {
        var converted = new Feet(140 * (100 * 0.3048) / 0.3048);
        Assert.NotEqual(14000, converted.Value);
        Assert.True(Semicircular.Fits(FlightRules.Ifr, new MagneticDegrees(254), converted, Feet.Zero));
    }
}
