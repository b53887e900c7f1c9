using Batch.Sheets.Board;

namespace Batch.Sheets.Tests.Board;

public class LanesTests
{
    private static (Instant From, Instant To) Hours(int from, int to) => (Instant.FromUtc(2026, 12, 7, from, 0), Instant.FromUtc(2026, 12, 7, to, 0));

    [Fact]
    public void Legs_one_after_the_other_share_a_lane() => Assert.Equal("0 0 0", string.Join(' ', Lanes.Of([Hours(1, 2), Hours(2, 3), Hours(5, 6)])));

    [Fact]
    public void What_overlaps_lies_under_each_other() =>
        Assert.Equal("0 1 2 0 1", string.Join(' ', Lanes.Of([Hours(1, 5), Hours(2, 6), Hours(3, 9), Hours(5, 8), Hours(7, 8)])));
}
