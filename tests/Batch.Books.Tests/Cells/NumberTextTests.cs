using Batch.Books.Cells;

namespace Batch.Books.Tests.Cells;

public sealed class NumberTextTests
{
    [Theory]
    [InlineData("1200", false, 1200)]
    [InlineData("1,200", false, 1200)]
    [InlineData("1,234,567.5", false, 1234567.5)]
    [InlineData("1 200", false, 1200)]
    [InlineData("1\u00A0200.5", false, 1200.5)]
    [InlineData("-4.5", false, -4.5)]
    [InlineData("\u22124.5", false, -4.5)]
    [InlineData("+3", false, 3)]
    [InlineData("1200,5", true, 1200.5)]
    [InlineData("1.234.567,5", true, 1234567.5)]
    [InlineData("1.200,5", true, 1200.5)]
    [InlineData("6.7", true, 6.7)]
    [InlineData("0.125", true, 0.125)]
    public void A_number_is_read(string text, bool decimalComma, double expected)
    {
        var reading = NumberText.Read(text, decimalComma);
        Assert.True(reading.IsGood, reading.Complaint);
        Assert.Equal(expected, reading.Value);
        Assert.Equal("", reading.Complaint);
    }

    [Theory]
    [InlineData("85,5", 85.5)]
    [InlineData("1.380,5", 1380.5)]
    [InlineData("1.234.567,25", 1234567.25)]
    [InlineData("0,125", 0.125)]
    [InlineData("12,3456", 12.3456)]
    public void A_decimal_comma_beside_decimal_points_is_read_and_said(string text, double expected)
    {
        var reading = NumberText.Read(text, decimalComma: false);
        Assert.Equal(expected, reading.Value);
        Assert.Contains("decimal comma", reading.Complaint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_that_could_be_two_numbers_is_not_read()
    {
        var reading = NumberText.Read("1.200", decimalComma: true);
        Assert.False(reading.IsGood);
        Assert.Equal("1200 or 1,200", reading.Expected);
    }

    [Theory]
    [InlineData("")]
    [InlineData("abc")]
    [InlineData("1.2.3")]
    [InlineData("12 34")]
    [InlineData("1,2,3")]
    [InlineData("1e400")]
    [InlineData("1E5")]
    [InlineData("NaN")]
    [InlineData("--1")]
    [InlineData("9999999999999999")]
    public void What_is_no_number_is_not_read(string text) => Assert.False(NumberText.Read(text, decimalComma: false).IsGood);
}
