using System.Globalization;
using Batch.Flight.Air;
using Batch.Flight.Plan;
using Batch.Flight.Route;
using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Plan;

public sealed class LevelTests
{
    [Fact]
    public void Candidates_fit_the_direction_the_minima_the_ceiling_and_the_tables()
    {
        // V12 has 6,000 ft; eastbound odd thousands; the tables end at 28,000 ft.
        Assert.Equal("7000 9000 11000 13000 15000 17000 19000 21000 23000 25000 27000", Candidates("NORRA V12 GULLS", FlightRules.Ifr, null));
        Assert.Equal("7000 9000 11000", Candidates("NORRA V12 GULLS", FlightRules.Ifr, new Feet(12_500)));
        // The grid has 8,000 ft on the direct line.
        Assert.Equal("9000 11000", Candidates("", FlightRules.Ifr, new Feet(12_500)));
        Assert.Equal("9500 11500", Candidates("", FlightRules.Vfr, new Feet(12_500)));
        Assert.Equal("", Candidates("", FlightRules.Ifr, new Feet(8000)));
    }

    [Fact]
    public void Visual_candidates_near_the_ground_are_free()
    {
        // From XCOR to XAND westbound over squares of 2,000 ft: 2,000 to 3,500 ft are within 3,000 ft of the surface at 500 ft, then even thousands plus 500.
        var route = RouteOf("", "XCOR", "XAND");
        Assert.False(LevelCandidates.IsMostlyEastbound(route));
        var levels = LevelCandidates.Of(route, FlightRules.Vfr, Some.Type(), "fast", new Feet(9000), new Feet(500));
        Assert.Equal("2000 2500 3000 3500 4500 6500 8500", Text(levels));
    }

    [Fact]
    public void The_longer_part_decides_the_direction()
    {
        // First 36 NM east to XCOR, then the longer way west and south.
        Assert.False(LevelCandidates.IsMostlyEastbound(
            RouteOf("XCOR 37N046W", "XAND", "XDUN") with { Segments = RouteOf("XCOR 37N046W", "XAND", "XDUN").Segments[..2] }));
        Assert.True(LevelCandidates.IsMostlyEastbound(RouteOf("XCOR", "XAND", "XBEL")));
    }

    [Fact]
    public void A_type_without_tables_has_no_candidates() =>
        Assert.Empty(LevelCandidates.Of(RouteOf("", "XAND", "XBEL"), FlightRules.Ifr, Some.Type() with { Tables = new() }, "fast", null, Feet.Zero));

    [Fact]
    public void The_thriftiest_level_comes_first()
    {
        var request = ProfileFlyerTests.Skua("LN");
        var ranked = LevelFinder.Rank(request, [new(9000), new(11_000), new(13_000), new(15_000), new(17_000)]);
        var burns = ranked.Select(trial => Assert.IsType<ProfileResult.Flown>(trial.Result).Profile.TripFuel.Value).ToList();
        Assert.Equal(burns.Order(), burns);
        Assert.Equal(17_000, ranked[0].Level.Value);

        // With 80 kt on the nose from 12,000 ft up the lower levels are better.
        AirReport calm = new() { Altitude = new Feet(11_500), WindFrom = new TrueDegrees(90), WindSpeed = Knots.Zero };
        var air = new AirField([calm, calm with { Altitude = new Feet(12_500), WindSpeed = new Knots(80) }]);
        Assert.Equal(11_000, LevelFinder.Rank(request with { Air = air }, [new(9000), new(11_000), new(13_000), new(15_000)])[0].Level.Value);
    }

    [Fact]
    public void Levels_that_cannot_be_flown_come_last_with_their_reason()
    {
        // Plank 1 over 100 NM: 9,000 ft fit, 15,000 ft do not; the tables end at 20,000 ft.
        var ranked = LevelFinder.Rank(ProfileFlyerTests.Plain(ProfileFlyerTests.EquatorRoute(100)), [new(9000), new(15_000), new(30_000)]);
        Assert.Equal([9000.0, 30_000, 15_000], ranked.Select(trial => trial.Level.Value));
        Assert.IsType<ProfileResult.NotFlyable>(ranked[1].Result);
        Assert.IsType<ProfileResult.TooShort>(ranked[2].Result);
    }

    [Theory]
    [InlineData(60, FlightRules.Ifr, 6000)] // 8 NM for every 1,000 ft and 6.67 NM of cruise: 6,666 ft
    [InlineData(60, FlightRules.Vfr, 6500)]
    [InlineData(70, FlightRules.Ifr, 7000)] // 7,916 ft
    [InlineData(15, FlightRules.Ifr, 1000)] // 1,041 ft
    public void A_short_leg_gets_the_highest_level_that_leaves_two_minutes(double lengthNm, FlightRules rules, double levelFt)
    {
        var request = ProfileFlyerTests.Plain(ProfileFlyerTests.EquatorRoute(lengthNm));
        var profile = Assert.IsType<ProfileResult.Flown>(LevelFinder.FlyHighest(request, rules, out var note)).Profile;
        Assert.Equal(levelFt, profile.Level.Value);
        Assert.Equal(string.Create(CultureInfo.InvariantCulture,
            $"The route is too short for FL100; {levelFt:#,##0} ft is the highest level that leaves two minutes of cruise."), note);
        Assert.IsType<ProfileResult.TooShort>(ProfileFlyer.Fly(request with { Level = new Feet(levelFt + (rules == FlightRules.Vfr ? 500 : 1000)) }));

        // Whatever level was right at another weight.
        foreach (var known in new[] { levelFt - 1000, levelFt, levelFt + 1000, 40_000 })
        {
            Assert.Equal(levelFt,
                Assert.IsType<ProfileResult.Flown>(LevelFinder.FlyHighest(request, rules, out var again, new Feet(known))).Profile.Level.Value);
            Assert.Equal(note, again);
        }
    }

    [Fact]
    public void A_leg_long_enough_keeps_its_level()
    {
        var result = LevelFinder.FlyHighest(ProfileFlyerTests.Plain(ProfileFlyerTests.EquatorRoute(200)), FlightRules.Ifr, out var note);
        Assert.Equal(10_000, Assert.IsType<ProfileResult.Flown>(result).Profile.Level.Value);
        Assert.Empty(note);
    }

    [Fact]
    public void A_leg_too_short_for_every_level_says_so() =>
        Assert.IsType<ProfileResult.TooShort>(LevelFinder.FlyHighest(ProfileFlyerTests.Plain(ProfileFlyerTests.EquatorRoute(10)), FlightRules.Ifr, out _));

    private static string Candidates(string route, FlightRules rules, Feet? ceiling) =>
        Text(LevelCandidates.Of(RouteOf(route, "XAND", "XBEL"), rules, Some.Type(), "long range", ceiling, Feet.Zero));

    private static string Text(ImmutableArray<Feet> levels) => string.Join(' ', levels.Select(level => level.ToString().Split(' ')[0]));

    private static FlownRoute RouteOf(string text, string from, string to)
    {
        var book = Some.Book();
        return Assert.IsType<RouteResult.Resolved>(
            RouteReader.Resolve(book, book.Airport(from) ?? Some.Xand, book.Airport(to) ?? Some.Xand, text, Some.Day, null)).Route;
    }
}
