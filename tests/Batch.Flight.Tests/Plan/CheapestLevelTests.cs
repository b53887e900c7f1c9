using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using CsCheck;

namespace Batch.Flight.Tests.Plan;

/// <summary>The thriftiest level is found although not every level is flown.</summary>
public sealed class CheapestLevelTests
{
    [Fact]
    public void It_is_the_one_that_flying_every_candidate_finds()
    {
        var different = 0;
        var all = 0;
        Gen.Select(Gen.Int[0, 10_000], Gen.Double[6500, 9800], Gen.Bool, Gen.Bool).Sample((seed, weightLb, isFast, isShort) =>
        {
            var random = new Random(seed);
            var reports = Enumerable.Range(0, 8 * 7).Select(i => new AirReport
            {
                Place = GeoPoint.Of(40 + (i % 8 / 4.0), -41 + (i % 8 * 0.8)),
                Altitude = new Feet(4000 * (1 + (i / 8))),
                WindFrom = TrueDegrees.Of(360 * random.NextDouble()),
                WindSpeed = new Knots(70 * random.NextDouble()),
                Temperature = new Celsius(10 - (8 * (i / 8)) + (6 * random.NextDouble())),
            }).ToArray();
            var request = ProfileFlyerTests.Skua(
                "LN") with
            { Air = new AirField(reports), TakeoffWeight = new Pounds(weightLb), Setting = isFast ? "fast" : "long range" };
            if (isShort) request = request with { Route = ProfileFlyerTests.EquatorRoute(70) };
            var candidates = LevelCandidates.Of(request.Route, FlightRules.Ifr, request.Type, request.Setting, null, Feet.Zero);
            var ranked = LevelFinder.Rank(request, candidates);
            if (ranked[0].Result is not ProfileResult.Flown { Profile: var best }) return;
            var found = Assert.IsType<ProfileResult.Flown>(CheapestLevel.Fly(request, FlightRules.Ifr, null, null, LevelChoice.Flown, out _)).Profile;
            Interlocked.Increment(ref all);
            if (found.Level != best.Level) Interlocked.Increment(ref different);
            Assert.InRange(found.TripFuel.Value, best.TripFuel.Value, best.TripFuel.Value * 1.001);
        }, iter: 400);
        Assert.True(all > 100);
        Assert.Equal(0, different);
    }
}
