using Batch.Flight.Plan;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Plan;

public sealed class ProfilePropertyTests
{
    private static readonly Gen<(string Route, double LevelFt, double Lb)> Legs = Gen.Select(
        Gen.Int[0, 2].Select(index => new[] { "", "NORRA V12 GULLS", "LN" }[index]), Gen.Int[6, 17].Select(level => level * 1000.0), Gen.Double[6500, 9900]);

    [Fact]
    public void More_headwind_is_never_less_fuel_or_time() =>
        Gen.Select(Legs, Gen.Double[-40, 60], Gen.Double[0.5, 30]).Sample((leg, headwind, more) =>
        {
            // Flown eastward along the parallel; the course stays within 2 degrees of 090.
            var (before, after) = (Fly(leg with { Route = "" }, headwind), Fly(leg with { Route = "" }, headwind + more));
            return before is null || after is null || (after.TripFuel > before.TripFuel && after.Time > before.Time);
        });

    [Fact]
    public void More_weight_never_burns_less() =>
        Gen.Select(Legs, Gen.Double[-40, 40], Gen.Double[1, 500]).Sample((leg, headwind, more) =>
        {
            var (before, after) = (Fly(leg, headwind), Fly(leg with { Lb = Math.Min(leg.Lb + more, 10_000) }, headwind));
            return before is null || after is null || after.TripFuel > before.TripFuel;
        });

    [Fact]
    public void A_lower_level_burns_more() =>
        Legs.Sample(leg =>
        {
            // In still air on the longest route, where the climb is worth it.
            var (high, low) = (Fly(leg with { Route = "LN" }, 0), Fly(leg with { Route = "LN", LevelFt = leg.LevelFt - 1000 }, 0));
            return high is null || low is null || low.TripFuel > high.TripFuel;
        });

    [Fact]
    public void A_burn_bias_holds_for_all_fuel()
    {
        var request = ProfileFlyerTests.Skua("NORRA V12 GULLS");
        var (plain, thirsty) = (ProfileFlyerTests.Flown(request), ProfileFlyerTests.Flown(request with { BurnBias = 0.04 }));
        // A little less than 4 % more, since the aircraft gets lighter sooner.
        Assert.InRange(thirsty.TripFuel / plain.TripFuel, 1.0395, 1.04);
        Assert.Equal(plain.Time.TotalMinutes, thirsty.Time.TotalMinutes, 0.05);
    }

    [Fact]
    public void The_same_request_gives_the_same_profile()
    {
        var request = ProfileFlyerTests.Skua("NORRA V12 GULLS") with { Air = Some.SteadyWind(250, 37, 4) };
        Assert.Equal(ProfileFlyerTests.Flown(request).Slices.AsEnumerable(), ProfileFlyerTests.Flown(request).Slices);
    }

    private static FlightProfile? Fly((string Route, double LevelFt, double Lb) leg, double headwindKt)
    {
        var request = ProfileFlyerTests.Skua(leg.Route) with
        {
            Level = new Feet(leg.LevelFt),
            TakeoffWeight = new Pounds(leg.Lb),
            Air = Some.SteadyWind(headwindKt >= 0 ? 90 : 270, Math.Abs(headwindKt)),
        };
        return ProfileFlyer.Fly(request) is ProfileResult.Flown(var profile) ? profile : null;
    }
}
