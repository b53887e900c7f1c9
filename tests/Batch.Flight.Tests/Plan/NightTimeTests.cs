using Batch.Flight.Plan;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

/// <summary>Night time of a leg that flies into the dusk.</summary>
public sealed class NightTimeTests
{
    // A minute later off blocks is about a minute more of night: the end of twilight is found on the way, not at the nearest piece of it.
    [Fact]
    public void It_grows_with_every_minute()
    {
        var minutes = Enumerable.Range(0, 12 * 60)
            .Select(later => Only(later)).OfType<LegPlan.Planned>()
            .Where(plan => plan.Daylight.Night > Duration.Zero && plan.Daylight.Night < plan.Times.Air)
            .Select(plan => plan.Daylight.Night.TotalMinutes).ToArray();
        Assert.True(minutes.Length > 20, $"{minutes.Length} departures fly into the night");
        Assert.All(minutes.Zip(minutes.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 0.5, 1.5));
    }

    private static LegPlan Only(int minutesLater) =>
        Assert.Single(Some.Planned(Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon + Duration.FromMinutes(minutesLater))])).Legs);
}
