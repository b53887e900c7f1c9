using Batch.Books.Cells;
using Batch.Books.Units;

namespace Batch.Books.Tests.Cells;

public sealed class TimeTextTests
{
    [Theory]
    [InlineData("0730")]
    [InlineData("730")]
    [InlineData("07:30")]
    [InlineData("7:30")]
    [InlineData("07:30:00")]
    [InlineData("7:30 am")]
    [InlineData(" 7:30 AM ")]
    public void Half_past_seven_is_read(string text)
    {
        var reading = TimeText.Read(text);
        Assert.True(reading.IsGood, reading.Complaint);
        Assert.Equal(new WrittenTime(null, new LocalTime(7, 30), null), reading.Value);
    }

    [Theory]
    [InlineData("10am", 10)]
    [InlineData("10 p.m.", 22)]
    [InlineData("12 AM", 0)]
    public void A_full_hour_of_a_half_day_is_read(string text, int hour) =>
        Assert.Equal(new WrittenTime(null, new LocalTime(hour, 0), null), TimeText.Read(text).Value);

    [Theory]
    [InlineData("1930Z")]
    [InlineData("1930 UTC")]
    [InlineData("19:30z")]
    [InlineData("7:30 pm Z")]
    public void A_time_marked_UTC_is_read(string text) => Assert.Equal(new WrittenTime(null, new LocalTime(19, 30), Offset.Zero), TimeText.Read(text).Value);

    [Theory]
    [InlineData("2026-12-07T07:30", null)]
    [InlineData("2026-12-07 0730", null)]
    [InlineData("7 Dec 2026 07:30", null)]
    [InlineData("2026-12-07T07:30Z", 0)]
    [InlineData("2026-12-07T07:30:00Z", 0)]
    [InlineData("2026-12-07T07:30-05:00", -5)]
    [InlineData("2026-12-07T07:30:00+0200", 2)]
    public void A_date_with_a_time_is_read(string text, int? offsetHours)
    {
        var reading = TimeText.Read(text);
        Assert.True(reading.IsGood, reading.Complaint);
        Assert.Equal(new WrittenTime(new LocalDate(2026, 12, 7), new LocalTime(7, 30), offsetHours is { } hours ? Offset.FromHours(hours) : null),
            reading.Value);
    }

    [Theory]
    [InlineData("24:00")]
    [InlineData("0760")]
    [InlineData("7")]
    [InlineData("13:00 pm")]
    [InlineData("13pm")]
    [InlineData("noon")]
    [InlineData("25:10")]
    [InlineData("07:30+99:00")]
    [InlineData("Z")]
    public void What_is_no_time_is_not_read(string text) => Assert.False(TimeText.Read(text).IsGood);

    [Theory]
    [InlineData(0.3125, (int)NumberLook.Clock, 7, 30)]
    [InlineData(0.3125, 0, 7, 30)]
    [InlineData(0.31249999999, (int)NumberLook.Clock, 7, 30)]
    [InlineData(730, 0, 7, 30)]
    [InlineData(0, 0, 0, 0)]
    [InlineData(46363.3125, (int)(NumberLook.Date | NumberLook.Clock), 7, 30)]
    public void A_number_of_a_workbook_is_a_time(double number, int look, int hour, int minute) =>
        Assert.Equal(new LocalTime(hour, minute), ClockReading.Written(RawCell.OfNumber(number, (NumberLook)look), default).Value.Time);

    [Theory]
    [InlineData(46363, "2026-12-07")]
    [InlineData(20261207, "2026-12-07")]
    [InlineData(46363.75, "2026-12-07")]
    public void A_number_of_a_workbook_is_a_date(double number, string date) =>
        Assert.Equal(date, DateText.Iso(ClockReading.Date(RawCell.OfNumber(number)).Value));

    [Theory]
    [InlineData(-1)]
    [InlineData(2460)]
    [InlineData(7.5)]
    [InlineData(99999999)]
    public void A_number_that_is_no_time_is_not_read(double number) => Assert.False(ClockReading.Written(RawCell.OfNumber(number), default).IsGood);

    [Fact]
    public void The_end_of_something_without_a_time_is_the_end_of_that_day_and_this_is_said()
    {
        var reading = ClockReading.Instant(RawCell.OfText("2026-12-07"), default, isEnd: true);
        Assert.Equal(Instant.FromUtc(2026, 12, 8, 0, 0), reading.Value);
        Assert.NotEqual("", reading.Complaint);
        Assert.Equal(Instant.FromUtc(2026, 12, 7, 0, 0), ClockReading.Instant(RawCell.OfText("2026-12-07"), default, isEnd: false).Value);
    }

    [Theory]
    [InlineData("7.30 pm", "19:30")]
    [InlineData("7:30p", "19:30")]
    [InlineData("7:30 a", "07:30")]
    [InlineData("19.30", "19:30")]
    [InlineData("19:30 h", "19:30")]
    [InlineData("1930 hrs", "19:30")]
    [InlineData("19.30 L", "19:30")]
    [InlineData("19h", "19:00")]
    [InlineData("noon", "12:00")]
    [InlineData("0.8125", "19:30")]
    [InlineData("24:00", "00:00, with the date of the next day")]
    [InlineData("2400", "00:00, with the date of the next day")]
    [InlineData("25:10", TimeText.Expected)]
    [InlineData("13.30 pm", TimeText.Expected)]
    [InlineData("7", "07:00 or 00:07")]
    [InlineData("19.3", "19:30 or 19:18")]
    [InlineData("soon", TimeText.Expected)]
    public void What_is_no_time_names_the_likely_one(string text, string likely)
    {
        var reading = ClockReading.Written(RawCell.OfText(text), default);
        Assert.False(reading.IsGood);
        Assert.Equal(("is not a time", likely), (reading.Complaint, reading.Expected));
    }

    [Theory]
    [InlineData(19.3, "19:30 or 19:18")]
    [InlineData(19.5, "19:50 or 19:30")]
    [InlineData(7.25, "07:25 or 07:15")]
    [InlineData(7.75, "07:45")]
    [InlineData(7, "07:00 or 00:07")]
    [InlineData(24, "00:24")]
    [InlineData(2460, TimeText.Expected)]
    public void A_number_that_is_no_time_names_the_likely_ones(double number, string likely) =>
        Assert.Equal(likely, ClockReading.Written(RawCell.OfNumber(number), default).Expected);

    [Fact]
    public void A_column_in_UTC_does_not_offer_a_local_time()
    {
        var utc = new CellSetting(Quantity.UtcClock.Find("UTC"), false);
        Assert.Equal(TimeText.Expected, ClockReading.Written(RawCell.OfText("1930L"), utc).Expected);
        Assert.Equal("a date and time in UTC such as 2026-12-07T06:00Z", ClockReading.Instant(RawCell.OfText("1930L"), utc, isEnd: false).Expected);
    }
}
