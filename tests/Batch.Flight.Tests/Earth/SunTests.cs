using Batch.Flight.Earth;
using Batch.Testing;
using NodaTime.Text;

namespace Batch.Flight.Tests.Earth;

public sealed class SunTests
{
    private static readonly CheckFile Published = CheckFile.Read("sun-published.csv");
    private static readonly CheckFile Computed = CheckFile.Read("sun-computed.csv");

    public static IEnumerable<object[]> PublishedIds => Published.Ids();

    public static IEnumerable<object[]> ComputedIds => Computed.Ids();

    [Theory]
    [MemberData(nameof(PublishedIds))]
    public void A_published_day_agrees_to_the_minute(string id)
    {
        var row = Published[id];
        var offset = Offset.FromHours((int)row.Number("utc_offset_h"));
        var day = Sun.On(LocalDatePattern.Iso.Parse(row["date"]).Value, DateTimeZone.ForOffset(offset), PlaceOf(row));
        foreach (var (column, found) in Events(day))
        {
            if (!row.Has(column)) continue;
            var clock = LocalTimePattern.CreateWithInvariantCulture("HH:mm").Parse(row[column]).Value;
            var expected = (LocalDatePattern.Iso.Parse(row["date"]).Value + clock).WithOffset(offset).ToInstant();
            AssertNear(expected, found, row);
        }
    }

    [Theory]
    [MemberData(nameof(ComputedIds))]
    public void A_local_day_holds_the_events_of_the_reference(string id)
    {
        var row = Computed[id];
        var day = Sun.On(LocalDatePattern.Iso.Parse(row["date_local"]).Value, DateTimeZoneProviders.Tzdb[row["tz"]], PlaceOf(row));
        foreach (var (column, found) in Events(day))
        {
            var text = row[column + "_utc"];
            if (text == "none") Assert.Null(found);
            else AssertNear(InstantPattern.General.Parse(text).Value, found, row);
        }

        Assert.Equal(State(row["day_state"]), day.DayState);
        Assert.Equal(State(row["civil_state"]), day.CivilState);
    }

    [Fact]
    public void The_altitude_at_the_events_is_the_altitude_that_defines_them()
    {
        var place = GeoPoint.Of(47.4, 8.5);
        for (var date = new LocalDate(2026, 1, 1); date.Year == 2026; date = date.PlusDays(11))
        {
            var day = Sun.On(date, DateTimeZone.Utc, place);
            Assert.Equal(-50.0 / 60, Altitude(day.Sunrise), 0.004);
            Assert.Equal(-50.0 / 60, Altitude(day.Sunset), 0.004);
            Assert.Equal(-6, Altitude(day.CivilDawn), 0.004);
            Assert.Equal(-6, Altitude(day.CivilDusk), 0.004);
        }

        double Altitude(Instant? at) => Sun.AltitudeDeg(at ?? throw new InvalidOperationException("no event"), place);
    }

    [Theory]
    [InlineData(69.65, 18.96, "Europe/Oslo")]
    [InlineData(66.9, 0, "UTC")] // the sun turns at the edges of the day
    [InlineData(-71, 178, "UTC")]
    [InlineData(51.5, -0.1, "Europe/London")]
    [InlineData(89.9, 60, "UTC")]
    public void Every_day_of_the_year_agrees_with_the_altitude_minute_by_minute(double latDeg, double lonDeg, string zoneId)
    {
        var place = GeoPoint.Of(latDeg, lonDeg);
        var zone = DateTimeZoneProviders.Tzdb[zoneId];
        var slack = Duration.FromSeconds(latDeg > 89 ? 60 : 5); // near a pole the sun skims the horizon
        for (var date = new LocalDate(2026, 1, 1); date.Year == 2026; date = date.PlusDays(1))
        {
            var day = Sun.On(date, zone, place);
            var (start, end) = (zone.AtStartOfDay(date).ToInstant(), zone.AtStartOfDay(date.PlusDays(1)).ToInstant());
            var (wasUp, firstRise, firstSet) = (IsUp(start), (Instant?)null, (Instant?)null);
            for (var at = start + Duration.FromMinutes(1); at < end; at += Duration.FromMinutes(1))
            {
                var isUp = IsUp(at);
                if (isUp && !wasUp) firstRise ??= at;
                if (!isUp && wasUp) firstSet ??= at;
                wasUp = isUp;
            }

            AssertWithin(firstRise, day.Sunrise);
            AssertWithin(firstSet, day.Sunset);

            void AssertWithin(Instant? seen, Instant? found)
            {
                // A span above or below of less than a minute may stand between two of the minutes looked at; the altitude then shows it.
                var isSeen = seen is { } s && found is { } f && s - f is var d && d >= -slack && d <= slack + Duration.FromMinutes(1);
                var isBrief = found is { } g && (seen is null || seen > g) && Math.Abs(Sun.AltitudeDeg(g, place) - Sun.HorizonAltitudeDeg) < 0.001
                    && IsUp(g - Duration.FromMinutes(1)) == IsUp(g + Duration.FromMinutes(1));
                Assert.True(isSeen || isBrief || (seen is null && found is null), FormattableString.Invariant($"{date}: {seen} seen, {found} found"));
            }
        }

        bool IsUp(Instant at) => !Sun.IsBetweenSunsetAndSunrise(at, place);
    }

    [Fact]
    public void Night_is_after_civil_twilight_and_the_sun_is_down_before_it()
    {
        var place = GeoPoint.Of(39.8617, -104.6732);
        var dusk = Instant.FromUtc(2026, 4, 26, 2, 16);
        Assert.False(Sun.IsNight(dusk - Duration.FromMinutes(2), place));
        Assert.True(Sun.IsNight(dusk + Duration.FromMinutes(2), place));
        Assert.True(Sun.IsBetweenSunsetAndSunrise(dusk - Duration.FromMinutes(2), place));
        Assert.False(Sun.IsBetweenSunsetAndSunrise(Instant.FromUtc(2026, 4, 25, 20, 0), place));
    }

    [Fact]
    public void At_the_poles_the_sun_is_up_for_half_a_year()
    {
        Assert.Equal(SunState.PolarDay, Sun.On(new LocalDate(2026, 6, 1), DateTimeZone.Utc, GeoPoint.Of(90, 0)).DayState);
        Assert.Equal(SunState.PolarNight, Sun.On(new LocalDate(2026, 6, 1), DateTimeZone.Utc, GeoPoint.Of(-90, 0)).DayState);
        Assert.Equal(SunState.PolarNight, Sun.On(new LocalDate(2026, 6, 1), DateTimeZone.Utc, GeoPoint.Of(-90, 0)).CivilState);
    }

    [Fact]
    public void A_day_without_midnight_begins_with_its_first_moment()
    {
        // Havana, 8 March 2026: the clock goes from 00:00 to 01:00.
        var day = Sun.On(new LocalDate(2026, 3, 8), DateTimeZoneProviders.Tzdb["America/Havana"], GeoPoint.Of(23.0, -82.4));
        Assert.Equal(new LocalDate(2026, 3, 8), day.Sunrise?.InZone(DateTimeZoneProviders.Tzdb["America/Havana"]).Date);
        Assert.Equal(7, day.Sunrise?.InZone(DateTimeZoneProviders.Tzdb["America/Havana"]).Hour);
    }

    private static (string Column, Instant? Found)[] Events(SunDay day) =>
        [("sunrise", day.Sunrise), ("sunset", day.Sunset), ("civil_dawn", day.CivilDawn), ("civil_dusk", day.CivilDusk)];

    private static GeoPoint PlaceOf(CheckRow row) => GeoPoint.Of(row.Number("lat"), row.Number("lon"));

    private static SunState State(string text) => text switch
    {
        "normal" => SunState.Normal,
        "sun_up_all_day" or "never_darker_than_civil" => SunState.PolarDay,
        "sun_down_all_day" or "never_lighter_than_civil" or "always_darker_than_civil" => SunState.PolarNight,
        _ => throw new FormatException($"'{text}' is no state of a day."),
    };

    private static void AssertNear(Instant expected, Instant? found, CheckRow row)
    {
        var allowed = Duration.FromMinutes(Math.Abs(row.Number("lat")) > 65 ? 2 : 1);
        Assert.True(
            found is { } f && f - expected is var d && d <= allowed && d >= -allowed,
            FormattableString.Invariant($"{row.Id}: {expected} expected, {found} found"));
    }
}
