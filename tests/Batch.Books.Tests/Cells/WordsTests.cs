using Batch.Books.Cells;
using Batch.Books.Sheets;
using Batch.Books.Units;
using Batch.Flight.Week;

namespace Batch.Books.Tests.Cells;

public sealed class WordsTests
{
    [Theory]
    [InlineData("FL160", 16000)]
    [InlineData("F160", 16000)]
    [InlineData("fl95", 9500)]
    [InlineData("A095", 9500)]
    [InlineData("16000", 16000)]
    [InlineData("9,500 ft", 9500)]
    [InlineData("3000 m", 3000 / 0.3048)]
    public void A_level_is_read(string text, double expectedFt) =>
        Assert.Equal(expectedFt, WrittenLevel.Read(RawCell.OfText(text), default).Value.Altitude.GetValueOrDefault().Value, 1e-6);

    [Fact]
    public void Auto_is_no_level_of_its_own() => Assert.True(WrittenLevel.Read(RawCell.OfText("Auto"), default) is { IsGood: true, Value.Altitude: null });

    [Theory]
    [InlineData("160")]
    [InlineData("high")]
    [InlineData("FL1600")]
    [InlineData("-5000")]
    public void What_is_no_level_is_not_read(string text) => Assert.False(WrittenLevel.Read(RawCell.OfText(text), default).IsGood);

    [Theory]
    [InlineData("minimum", "Minimum { Extra = 0 lb }")]
    [InlineData("MIN", "Minimum { Extra = 0 lb }")]
    [InlineData("minimum+200", "Minimum { Extra = 200 lb }")]
    [InlineData("minimum + 30 USG", "Minimum { Extra = 201 lb }")]
    [InlineData("full", "Full { }")]
    [InlineData("carry", "Carry { }")]
    [InlineData("1,200 lb", "Amount { Block = 1200 lb }")]
    [InlineData("150 USG", "Amount { Block = 1005 lb }")]
    [InlineData("1200", "Amount { Block = 1200 lb }")]
    public void A_fuel_plan_is_read(string text, string expected)
    {
        var reading = WrittenFuelPlan.Read(RawCell.OfText(text), default);
        Assert.True(reading.IsGood, reading.Complaint);
        Assert.Equal(expected, reading.Value.ByWeight(6.7)?.ToString());
    }

    [Theory]
    [InlineData("ful")]
    [InlineData("minimum+")]
    [InlineData("minimum-200")]
    [InlineData("full+200")]
    [InlineData("-100 lb")]
    [InlineData("100 stone")]
    public void What_is_no_fuel_plan_is_not_read(string text) => Assert.False(WrittenFuelPlan.Read(RawCell.OfText(text), default).IsGood);

    [Fact]
    public void Volume_without_a_density_is_no_weight() => Assert.Null(WrittenFuelPlan.Read(RawCell.OfText("150 USG"), default).Value.ByWeight(null));

    [Theory]
    [InlineData("all", "1 2 3 4 5")]
    [InlineData("2", "2")]
    [InlineData("1-3", "1 2 3")]
    [InlineData("1,3", "1 3")]
    [InlineData("1-2, 4", "1 2 4")]
    public void A_choice_of_legs_is_read(string text, string expected)
    {
        var selection = LegsReading.Read(RawCell.OfText(text)).Value ?? LegSelection.Of([]);
        Assert.Equal(expected, string.Join(' ', Enumerable.Range(1, 5).Where(selection.Contains)));
    }

    [Theory]
    [InlineData("3-1")]
    [InlineData("0")]
    [InlineData("one")]
    [InlineData("1-2-3")]
    [InlineData(",")]
    public void What_is_no_choice_of_legs_is_not_read(string text) => Assert.False(LegsReading.Read(RawCell.OfText(text)).IsGood);

    [Fact]
    public void A_choice_that_the_spreadsheet_turned_into_a_date_is_not_read() =>
        Assert.Contains("date", LegsReading.Read(RawCell.OfNumber(46025, NumberLook.Date)).Complaint, StringComparison.Ordinal);

    [Theory]
    [InlineData("9", "09")]
    [InlineData("27L", "27L")]
    [InlineData("rwy 9r", "09R")]
    public void A_runway_gets_its_zero_back(string text, string expected) => Assert.Equal(expected, TextReading.Runway(RawCell.OfText(text)).Value);

    [Theory]
    [InlineData("37")]
    [InlineData("0")]
    [InlineData("9X")]
    public void What_is_no_runway_is_not_read(string text) => Assert.False(TextReading.Runway(RawCell.OfText(text)).IsGood);

    [Theory]
    [InlineData("1:30", 90)]
    [InlineData("90", 90)]
    [InlineData("1.5 h", 90)]
    [InlineData("90 min", 90)]
    public void A_time_span_is_read(string text, double minutes) =>
        Assert.Equal(minutes, QuantityReading.Span(RawCell.OfText(text), default, Quantity.Minutes).Value);

    [Theory]
    [InlineData("1:75")]
    [InlineData("1e300")]
    [InlineData("99999999999 h")]
    public void What_is_no_time_span_is_not_read(string text) => Assert.False(QuantityReading.Span(RawCell.OfText(text), default, Quantity.Minutes).IsGood);
}
