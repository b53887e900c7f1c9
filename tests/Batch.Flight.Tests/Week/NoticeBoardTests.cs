using Batch.Flight.Week;

namespace Batch.Flight.Tests.Week;

public sealed class NoticeBoardTests
{
    private static readonly Instant Noon = Instant.FromUtc(2026, 12, 7, 12, 0);

    private static Notice Notice(string subject, NoticeEffect effect, int fromHour, int toHour) => new()
    {
        Subject = subject,
        Effect = effect,
        From = Instant.FromUtc(2026, 12, 7, fromHour, 0),
        To = Instant.FromUtc(2026, 12, 7, toHour, 0),
    };

    [Fact]
    public void A_closed_runway_is_named_after_the_airport_and_both_directions_are_closed()
    {
        var board = new NoticeBoard([Notice("XAND 09/27", NoticeEffect.RunwayClosed, 6, 18)]);
        Assert.Equal(["09", "27"], board.ClosedRunways("xand", Noon).Order(StringComparer.Ordinal));
        Assert.Empty(board.ClosedRunways("XBEL", Noon));
    }

    [Fact]
    public void A_notice_holds_from_its_start_to_just_before_its_end()
    {
        var board = new NoticeBoard([Notice("XAND", NoticeEffect.NoFuel, 12, 13)]);
        Assert.NotNull(board.First("XAND", NoticeEffect.NoFuel, Noon));
        Assert.Null(board.First("XAND", NoticeEffect.NoFuel, Noon - Duration.Epsilon));
        Assert.Null(board.First("XAND", NoticeEffect.NoFuel, Noon + Duration.FromHours(1)));
        Assert.Null(board.First("XAND", NoticeEffect.Closed, Noon));
    }

    [Fact]
    public void Notices_about_an_airport_include_those_that_touch_the_interval()
    {
        var board = new NoticeBoard(
            [Notice("XAND", NoticeEffect.Other, 6, 12), Notice("XAND 09", NoticeEffect.RunwayClosed, 13, 14), Notice("XAND", NoticeEffect.Other, 16, 18)]);
        Assert.Equal([NoticeEffect.RunwayClosed], board.About("XAND", Noon, Noon + Duration.FromHours(2)).Select(notice => notice.Effect));
    }
}
