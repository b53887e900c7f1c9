using Batch.Books.Cells;

namespace Batch.Books.Tests.Cells;

public sealed class DateTextTests
{
    [Theory]
    [InlineData("2026-12-07")]
    [InlineData("2026/12/7")]
    [InlineData("20261207")]
    [InlineData("7 Dec 2026")]
    [InlineData("07 december 2026")]
    [InlineData("7-Dec-2026")]
    [InlineData("07DEC2026")]
    [InlineData("Dec 7, 2026")]
    [InlineData("7.12.2026")]
    [InlineData("Mon 7 Dec 2026")]
    [InlineData("Monday, 7 Dec 2026")]
    public void The_seventh_of_December_is_read(string text)
    {
        var reading = DateText.Read(text);
        Assert.True(reading.IsGood, reading.Complaint);
        Assert.Equal(new LocalDate(2026, 12, 7), reading.Value);
    }

    [Theory]
    [InlineData("13/4/2026", 4, 13)]
    [InlineData("4/13/2026", 4, 13)]
    [InlineData("3/3/2026", 3, 3)]
    public void A_date_with_slashes_is_read_where_it_can_only_mean_one_day(string text, int month, int day) => Assert.Equal(new LocalDate(2026, month, day), DateText.Read(text).Value);

    [Fact]
    public void A_date_that_could_be_two_days_is_not_read_and_both_are_named()
    {
        var reading = DateText.Read("3/4/2026");
        Assert.False(reading.IsGood);
        Assert.Equal("2026-04-03 or 2026-03-04", reading.Expected);
    }

    [Theory]
    [InlineData("30 Feb 2026")]
    [InlineData("2026-13-01")]
    [InlineData("7 Dec 26")]
    [InlineData("7.12.26")]
    [InlineData("Tue 7 Dec 2026")]
    [InlineData("next Monday")]
    [InlineData("0001-01-01")]
    [InlineData("99999999")]
    public void What_is_no_date_is_not_read(string text) => Assert.False(DateText.Read(text).IsGood);
}
