using CsCheck;

namespace Batch.Checks.Tests;

/// <summary>A limit, the figure held against it and the margin, as they are printed.</summary>
public sealed class PrintedTrioTests
{
    // Worked by hand: a least value up, what is there down, the margin their difference; a kept limit never shows as broken.
    [Theory]
    [InlineData(796.2, 796.4, 797, 797, 0)]
    [InlineData(796.2, 797.4, 797, 797, 0)]
    [InlineData(796.2, 798.4, 797, 798, 1)]
    [InlineData(796.2, 796.2, 797, 797, 0)]
    [InlineData(796.6, 432.2, 797, 432, -365)]
    [InlineData(796.4, 796.1, 797, 796, -1)]
    [InlineData(797, 796.999, 797, 796, -1)]
    [InlineData(45, 45.00000001, 45, 45, 0)]
    public void A_least_value_is_rounded_up_and_what_is_there_down(double limit, double actual, double printedLimit, double printedActual, double margin) =>
        Assert.Equal(new PrintedTrio(printedLimit, printedActual, margin), PrintedTrio.Of(limit, actual, isLeast: true, actual - limit >= -1e-6));

    [Theory]
    [InlineData(9000, 8999.2, 9000, 9000, 0)]
    [InlineData(9000, 9000.2, 9000, 9001, -1)]
    [InlineData(9000.8, 9000.2, 9000, 9000, 0)]
    [InlineData(-5.5, -7.2, -6, -7, 1)]
    public void A_greatest_value_is_rounded_down_and_what_is_there_up(double limit, double actual, double printedLimit, double printedActual, double margin) =>
        Assert.Equal(new PrintedTrio(printedLimit, printedActual, margin), PrintedTrio.Of(limit, actual, isLeast: false, limit - actual >= -1e-6));

    private static readonly Gen<double> Number = Gen.OneOf(Gen.Double[-20_000, 20_000], Gen.Double[-3, 3], Gen.Int[-3000, 3000].Select(whole => (double)whole));

    // The difference may be nothing, below the noise, or far more than a step.
    [Fact]
    public void The_printed_numbers_agree_and_so_does_their_sign_with_the_state() => Gen.Select(
        Number,
        Gen.OneOf(Gen.Double[-5000, 5000], Gen.Double[-2, 2], Gen.Double[-3e-6, 3e-6], Gen.Const(0.0)),
        Gen.Bool,
        Gen.OneOf(Gen.Const(1.0), Gen.Const(10.0), Gen.Const(60.0), Gen.Const(100.0), Gen.Const(1000.0))).Sample((limit, more, isLeast, steps) =>
    {
        var actual = limit + more;
        var isKept = (isLeast ? actual - limit : limit - actual) >= -1e-6;
        var printed = PrintedTrio.Of(limit, actual, isLeast, isKept, steps);
        Assert.Equal(isLeast ? printed.Actual - printed.Limit : printed.Limit - printed.Actual, printed.Margin, 9);
        Assert.Equal(isKept, printed.Margin >= 0);
        // Never more than a step of rounding in the leg's favour, and that only up to the limit.
        Assert.True(Math.Abs(printed.Limit - limit) <= (1 / steps) + 1e-6, "limit");
        Assert.True(Math.Abs(printed.Actual - actual) <= (1 / steps) + 2e-6, "figure");
        Assert.True(isLeast ? printed.Limit >= limit - 1e-6 : printed.Limit <= limit + 1e-6, "limit on the safe side");
    }, iter: 20_000);
}
