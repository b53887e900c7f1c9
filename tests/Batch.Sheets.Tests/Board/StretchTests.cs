using Batch.Sheets.Board;

namespace Batch.Sheets.Tests.Board;

public class StretchTests
{
    private static readonly DateTimeZone East = DateTimeZoneProviders.Tzdb["America/New_York"];

    private static Instant At(int month, int day, int hour) => Instant.FromUtc(2026, month, day, hour, 0);

    [Fact]
    public void It_is_whole_local_days()
    {
        var stretch = Stretch.Of([(At(12, 7, 14), At(12, 7, 15)), (At(12, 9, 3), At(12, 9, 4))], East);
        Assert.Equal(At(12, 7, 5), stretch?.From);
        Assert.Equal(At(12, 9, 5), stretch?.To); // 03:00 to 04:00 UTC on the 9th is still the 8th there
    }

    [Fact]
    public void Without_events_there_is_none() => Assert.Null(Stretch.Of([], East));

    [Fact]
    public void Places_are_shares_of_the_whole()
    {
        var stretch = new Stretch(At(12, 7, 0), At(12, 9, 0), DateTimeZone.Utc);
        Assert.Equal(25, stretch.PlaceOf(At(12, 7, 12)));
        Assert.Equal(2.083, stretch.WidthOf(At(12, 7, 12), At(12, 7, 13)), 3);
        Assert.Equal(0, stretch.PlaceOf(At(12, 1, 0)));
        Assert.Equal(100, stretch.PlaceOf(At(12, 30, 0)));
    }

    [Fact]
    public void A_day_of_twenty_five_hours_is_as_long_as_it_is() =>
        Assert.Equal(25, Stretch.Of([(Instant.FromUtc(2026, 11, 1, 12, 0), Instant.FromUtc(2026, 11, 1, 13, 0))], East)?.Hours);

    [Fact]
    public void A_leg_in_a_wrong_year_does_not_stretch_the_line()
    {
        var week = Enumerable.Range(7, 5).Select(day => (At(12, day, 14), At(12, day, 15)));
        var stretch = Stretch.Of([.. week, (Instant.FromUtc(2062, 12, 8, 14, 0), Instant.FromUtc(2062, 12, 8, 15, 0)),
            (Instant.FromUtc(2020, 12, 8, 14, 0), Instant.FromUtc(2020, 12, 8, 15, 0))], East);
        Assert.Equal((At(12, 7, 5), At(12, 12, 5)), (stretch?.From, stretch?.To));
    }
}
