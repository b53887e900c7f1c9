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
    public void A_date_with_slashes_is_read_where_it_can_only_mean_one_day(string text, int month, int day) =>
        Assert.Equal(new LocalDate(2026, month, day), DateText.Read(text).Value);

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

    [Theory]
    [InlineData("7 Dec 26", "2026-12-07")]
    [InlineData("1-Dec-26", "2026-12-01")]
    [InlineData("Dec 7, 26", "2026-12-07")]
    [InlineData("Mon 7 Dec 26", "2026-12-07")]
    [InlineData("7.12.26", "2026-12-07")]
    [InlineData("13/4/26", "2026-04-13")]
    [InlineData("12/01/26", "2026-01-12 or 2026-12-01")]
    public void A_year_of_two_digits_is_not_read_and_the_likely_date_is_named(string text, string likely)
    {
        var reading = DateText.Read(text);
        Assert.False(reading.IsGood);
        Assert.Equal(("has a year of two digits", likely), (reading.Complaint, reading.Expected));
    }

    [Theory]
    [InlineData("31.11.2026", "2026-11-30 or 2026-12-01")]
    [InlineData("29 Feb 2027", "2027-02-28 or 2027-03-01")]
    [InlineData("2026-12-32", "2026-12-31 or 2027-01-01")]
    [InlineData("2026-13-01", DateText.Expected)]
    [InlineData("2026-11-00", DateText.Expected)]
    public void A_day_beyond_its_month_names_the_days_beside_it(string text, string likely)
    {
        var reading = DateText.Read(text);
        Assert.Equal(("is not a date of the calendar", likely), (reading.Complaint, reading.Expected));
    }

    // By hand: 2026-01-01 is day 46,023 (126 years of 365 days and the 31 leap days of 1904 to 2024 are 46,021; 1900-01-01 is day 2 of a count from
    // 1899-12-30). 334 days later, 1 December, is day 46,357.
    [Fact]
    public void The_number_of_a_day_written_as_text_is_not_read_and_the_date_is_named()
    {
        var reading = DateText.Read("46357");
        Assert.Equal(("is the number of a day written as text", "2026-12-01"), (reading.Complaint, reading.Expected));
    }
}
