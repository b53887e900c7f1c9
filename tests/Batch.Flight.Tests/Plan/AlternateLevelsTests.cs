using Batch.Flight.Air;
using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Flight.Week;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Plan;

/// <summary>Levels of flights to alternates, found at a weight near the one asked for.</summary>
public sealed class AlternateLevelsTests
{
    [Fact]
    public void The_level_burns_hardly_more_than_the_thriftiest_at_the_very_weight()
    {
        var flown = 0;
        Sample((request, levels) =>
        {
            if (levels.Of(request, Some.Xand, Some.Xbel, FlightRules.Ifr, null) is not { } found) return;
            if (ProfileFlyer.Fly(request with { Level = found.Level }) is not ProfileResult.Flown { Profile: var near }) return;
            var best = Assert.IsType<ProfileResult.Flown>(CheapestLevel.Fly(request, FlightRules.Ifr, null, null, LevelChoice.Flown, out _)).Profile;
            Interlocked.Increment(ref flown);
            Assert.InRange(near.TripFuel.Value, best.TripFuel.Value - 0.001, best.TripFuel.Value * 1.02);
        });
        Assert.InRange(flown, 80, int.MaxValue);
    }

    [Fact]
    public void The_level_does_not_depend_on_what_was_asked_before() => Sample((request, levels) =>
    {
        for (var lb = 6500; lb <= 9800; lb += 300)
            _ = levels.Of(request with { TakeoffWeight = new Pounds(lb), Takeoff = request.Takeoff - Duration.FromHours(lb % 7) },
            Some.Xand, Some.Xbel, FlightRules.Ifr, null);
        var asked = levels.Of(request, Some.Xand, Some.Xbel, FlightRules.Ifr, null);
        Assert.Equal(new AlternateLevels().Of(request, Some.Xand, Some.Xbel, FlightRules.Ifr, null), asked);
    });

    [Fact]
    public void Another_direction_another_ceiling_and_another_wind_are_asked_anew()
    {
        var levels = new AlternateLevels();
        var request = ProfileFlyerTests.Skua("LN");
        Assert.True(levels.Of(request, Some.Xand, Some.Xbel, FlightRules.Ifr, new Feet(9500))?.Level.Value <= 9500);
        Assert.True(levels.Of(request, Some.Xand, Some.Xbel, FlightRules.Ifr, null)?.Level.Value > 9500);
        AirReport calm = new() { Altitude = new Feet(11_500), WindFrom = new TrueDegrees(90), WindSpeed = Knots.Zero };
        var from = request.Takeoff - Duration.FromHours(1);
        var windy = new AirField([calm with { From = from }, calm with { From = from, Altitude = new Feet(12_500), WindSpeed = new Knots(110) }]);
        Assert.True(levels.Of(request with { Air = windy }, Some.Xand, Some.Xbel, FlightRules.Ifr, null)?.Level.Value < 12_500);
    }

    // Flights east along the equator, in the winds of six stations that change every six hours.
    private static void Sample(Action<ProfileRequest, AlternateLevels> look) =>
        Gen.Select(Gen.Int[0, 10_000], Gen.Double[6500, 9800], Gen.Int[0, 1380], Gen.Double[45, 160]).Sample((seed, weightLb, minutes, lengthNm) =>
        {
            var random = new Random(seed);
            var start = ProfileFlyerTests.Skua("LN").Takeoff;
            var reports = Enumerable.Range(0, 6 * 5 * 4).Select(i => new AirReport
            {
                Place = GeoPoint.Of(i % 6 / 3.0, -41 + (i % 6 * 0.8)),
                Altitude = new Feet(5000 * (1 + (i / 6 % 5))),
                From = start + Duration.FromHours(6 * (i / 30)),
                To = start + Duration.FromHours(6 + (6 * (i / 30))),
                WindFrom = TrueDegrees.Of(360 * random.NextDouble()),
                WindSpeed = new Knots(60 * random.NextDouble()),
                Temperature = new Celsius(10 - (10 * (i / 6 % 5)) + (6 * random.NextDouble())),
            });
            var request = ProfileFlyerTests.Skua("LN") with
            {
                Route = ProfileFlyerTests.EquatorRoute(lengthNm),
                Air = new AirField(reports),
                TakeoffWeight = new Pounds(weightLb),
                Takeoff = start + Duration.FromMinutes(minutes),
            };
            look(request, new AlternateLevels());
        }, iter: 250);
}
