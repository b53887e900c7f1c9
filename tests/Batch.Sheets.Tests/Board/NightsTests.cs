using Batch.Flight.Earth;
using Batch.Sheets.Board;

namespace Batch.Sheets.Tests.Board;

public class NightsTests
{
    private static readonly Instant Start = Instant.FromUtc(2026, 12, 7, 5, 0);

    [Theory]
    [InlineData(41.25, -70.9)]
    [InlineData(-33, 151)]
    [InlineData(64.1, -21.9)]
    public void It_is_dark_within_a_night_and_light_outside(double lat, double lon)
    {
        var airport = SampleFleet.Airport("XAND", "Andholm", lat, lon, 0, SampleFleet.East);
        var end = Start + Duration.FromDays(7);
        var nights = new Nights().Of([(airport, Start, end)]);
        Assert.InRange(nights.Length, 7, 8);
        for (var at = Start; at < end; at += Duration.FromMinutes(7))
        {
            if (nights.Any(night => (at - night.From) is var a && (at - night.To) is var b && (Within(a) || Within(b)))) continue;
            Assert.Equal(Sun.IsNight(at, airport.Position), nights.Any(night => at >= night.From && at < night.To));
        }
    }

    [Fact]
    public void The_night_goes_on_where_the_aircraft_went()
    {
        var (west, east) = (SampleFleet.Airport("XAND", "Andholm", 41, -75, 0, SampleFleet.East),
            SampleFleet.Airport("XBEL", "Bellsund", 41, -60, 0, SampleFleet.Islands));
        var noon = Instant.FromUtc(2026, 12, 7, 17, 0);
        var stayed = new Nights().Of([(west, noon, noon + Duration.FromDays(1))]);
        var gone = new Nights().Of([(west, noon, noon + Duration.FromHours(2)), (east, noon + Duration.FromHours(2), noon + Duration.FromDays(1))]);
        Assert.Equal(60, (Assert.Single(stayed).From - Assert.Single(gone).From).TotalMinutes, 2.0); // 15 degrees of longitude
    }

    [Fact]
    public void Far_north_the_winter_is_one_night()
    {
        var north = SampleFleet.Airport("XNOR", "Norholm", 80, 15, 0, DateTimeZone.Utc);
        Assert.Equal((Start, Start + Duration.FromDays(7)), Assert.Single(new Nights().Of([(north, Start, Start + Duration.FromDays(7))])));
        var summer = Instant.FromUtc(2026, 6, 20, 0, 0);
        Assert.Empty(new Nights().Of([(north, summer, summer + Duration.FromDays(7))]));
    }

    [Fact]
    public void An_unknown_place_has_no_night() => Assert.Empty(new Nights().Of([(null, Start, Start + Duration.FromDays(7))]));

    private static bool Within(Duration apart) => Math.Abs(apart.TotalMinutes) < 3;
}
