using Batch.Books.Cells;
using Batch.Flight.Earth;

namespace Batch.Books.Tests.Cells;

public sealed class AngleTextTests
{
    [Theory]
    [InlineData("41.5", 41.5)]
    [InlineData("41.5N", 41.5)]
    [InlineData("N41.5", 41.5)]
    [InlineData("41.5 S", -41.5)]
    [InlineData("-41.5", -41.5)]
    [InlineData("\u221241.5°", -41.5)]
    [InlineData("41 30 N", 41.5)]
    [InlineData("41 30 00 N", 41.5)]
    [InlineData("41°30'00\"N", 41.5)]
    [InlineData("41°30.6'S", -41.51)]
    [InlineData("41:30:36", 41.51)]
    [InlineData("41-30-36N", 41.51)]
    [InlineData("4130N", 41.5)]
    [InlineData("413036S", -41.51)]
    [InlineData("41N", 41)]
    public void A_latitude_is_read(string text, double expected)
    {
        var reading = AngleText.Latitude(RawCell.OfText(text), decimalComma: false);
        Assert.True(reading.IsGood, reading.Complaint);
        Assert.Equal(expected, reading.Value, 1e-12);
    }

    [Theory]
    [InlineData("-39.25", -39.25)]
    [InlineData("39 15 W", -39.25)]
    [InlineData("03915W", -39.25)]
    [InlineData("0391536E", 39.26)]
    [InlineData("180", 180)]
    public void A_longitude_is_read(string text, double expected) =>
        Assert.Equal(expected, AngleText.Longitude(RawCell.OfText(text), decimalComma: false).Value, 1e-12);

    [Theory]
    [InlineData("91")]
    [InlineData("41.5E")]
    [InlineData("-41.5N")]
    [InlineData("41 75 N")]
    [InlineData("41.5 30 N")]
    [InlineData("4170N")]
    [InlineData("north")]
    [InlineData("N")]
    public void What_is_no_latitude_is_not_read(string text) => Assert.False(AngleText.Latitude(RawCell.OfText(text), decimalComma: false).IsGood);

    [Theory]
    [InlineData("4130N03915W")]
    [InlineData("41.5N 39.25W")]
    [InlineData("41.5, -39.25")]
    [InlineData("41 30 N / 39 15 W")]
    [InlineData("413000N0391500W")]
    public void A_coordinate_is_read(string text) => Assert.Equal(new GeoPoint(41.5, -39.25), AngleText.Coordinate(text, decimalComma: false));

    [Theory]
    [InlineData("XAND")]
    [InlineData("4130N")]
    [InlineData("99N039W")]
    public void What_is_no_coordinate_is_not_read(string text) => Assert.Null(AngleText.Coordinate(text, decimalComma: false));

    [Fact]
    public void A_decimal_comma_is_understood() => Assert.Equal(41.5, AngleText.Latitude(RawCell.OfText("41,5N"), decimalComma: true).Value);
}
