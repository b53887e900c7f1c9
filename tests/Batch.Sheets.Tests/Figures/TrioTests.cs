using System.Globalization;
using Batch.Sheets.Figures;
using CsCheck;

namespace Batch.Sheets.Tests.Figures;

/// <summary>A limit, what is held against it and the margin, as a sheet writes them in the unit that the template chooses.</summary>
public class TrioTests
{
    private static double Read(string text) => double.Parse(
        text.Replace('\u2212', '-').Replace("+", "", StringComparison.Ordinal).Replace(",", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);

    private static (string Required, string Aboard, string Margin) Written(double required, double aboard, double factor = 1)
    {
        var (limit, actual, margin) = Quantity.Trio(Quantity.OfFuel(new Pounds(required), 6.7), Quantity.OfFuel(new Pounds(aboard), 6.7), isLeast: true);
        return (limit.Text(factor, 0), actual.Text(factor, 0), margin.Text(factor, 0));
    }

    // Leg T117/1 of the sample printed 797, 796 and a margin of 0; leg T116/1 was 364 lb short in words and 365 in the table.
    [Fact]
    public void Fuel_that_is_enough_does_not_read_as_short()
    {
        Assert.Equal(("797", "797", "0"), Written(796.2, 796.4));
        Assert.Equal(("797", "432", "\u2212365"), Written(796.3, 432.1));
    }

    [Fact]
    public void The_three_agree_in_pounds_kilograms_gallons_and_litres() => Gen.Select(
        Gen.Double[1, 12_000],
        Gen.OneOf(Gen.Double[-900, 900], Gen.Double[-1.5, 1.5], Gen.Const(0.0)),
        Gen.OneOf(Gen.Const(1.0), Gen.Const(Pounds.KilogramsPerPound), Gen.Const(1 / 6.7), Gen.Const(3.785411784 / 6.7))).Sample((required, more, factor) =>
    {
        var (limit, actual, margin) = Written(required, required + more, factor);
        Assert.Equal(Read(actual) - Read(limit), Read(margin), 6);
        Assert.Equal(more >= -1e-6, Read(margin) >= 0);
    }, iter: 5000);

    [Fact]
    public void A_weight_that_fits_by_a_fraction_is_written_at_its_limit()
    {
        var (limit, actual, margin) = Quantity.Trio(Quantity.Of(new Pounds(9000.8)), Quantity.Of(new Pounds(9000.2)), isLeast: false);
        Assert.Equal(("9,000 lb", "9,000 lb", "0 lb"),
            (limit.ToString(CultureInfo.InvariantCulture), actual.ToString(CultureInfo.InvariantCulture), margin.ToString(CultureInfo.InvariantCulture)));
        Assert.False(margin.IsNegative);
    }
}
