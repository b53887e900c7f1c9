using System.Xml.Linq;
using Batch.Sheets.Pictures;

namespace Batch.Sheets.Tests;

public class DutyBarTests
{
    private static readonly DateTimeZone FiveWest = DateTimeZone.ForOffset(Offset.FromHours(-5));
    private static readonly Instant Morning = Instant.FromUtc(2026, 12, 7, 12, 15);

    internal static DutyTimes Day { get; } = new()
    {
        Report = Morning,
        Release = Morning + Duration.FromHours(9.5),
        Zone = FiveWest,
        Flights = [("T101/1", Morning + Duration.FromMinutes(60), Morning + Duration.FromMinutes(127)), ("T101/2", Morning + Duration.FromMinutes(160),
            Morning + Duration.FromMinutes(186)), ("T101/3", Morning + Duration.FromMinutes(190), Morning + Duration.FromMinutes(210))],
        Limit = Morning + Duration.FromHours(13),
        RestBefore = Duration.FromHours(11),
        RestAfter = Duration.FromHours(16),
    };

    internal static DutyTimes Night { get; } = Day with
    {
        Report = Morning + Duration.FromHours(10),
        Release = Morning + Duration.FromHours(26),
        Limit = Morning + Duration.FromHours(24),
        Flights = []
    };

    [Fact]
    public void Local_hours_stand_above_and_utc_hours_below_at_the_same_instants()
    {
        var texts = Texts(Day);
        var local = texts.Single(text => text.Value == "12" && text.Y < 20).X;
        var utc = texts.Where(text => text.Y > 20).ToDictionary(text => text.Value, text => text.X, StringComparer.Ordinal);
        Assert.Equal(local, (utc["16"] + utc["18"]) / 2, 0.2);
    }

    [Fact]
    public void Report_release_and_limit_are_written_in_local_time() =>
        Assert.All(["report 07:15", "release 16:45", "limit 20:15", "rest 16:00"], text => Assert.Contains(Texts(Day), drawn => drawn.Value == text));

    /// <summary>A release at 16:45:40 is 16:46 in the table of duties.</summary>
    [Fact]
    public void Times_are_rounded_to_the_minute_as_in_the_tables() =>
        Assert.Contains(Texts(Day with { Release = Day.Release + Duration.FromSeconds(40) }), drawn => drawn.Value == "release 16:46");

    [Fact]
    public void Report_and_release_of_a_short_duty_stand_on_one_line_on_either_side_of_it()
    {
        var texts = Texts(Day with { Release = Morning + Duration.FromHours(1), Flights = [] });
        var (report, release) = (texts.Single(text => text.Value == "report 07:15"), texts.Single(text => text.Value == "release 08:15"));
        Assert.Equal(report.Y, release.Y);
        Assert.True(report.X < release.X);
    }

    [Fact]
    public void A_trip_name_wider_than_the_picture_is_drawn_all_the_same()
    {
        var name = new string('A', 300) + "/1";
        Assert.Contains(Texts(Day with { Flights = [(name, Day.Flights[0].OffBlocks, Day.Flights[0].OnBlocks)] }), text => text.Value == name);
    }

    [Fact]
    public void A_duty_over_its_limit_says_so_in_words_and_by_hatching()
    {
        var late = DutyBar.Of(Night).Usual.Html;
        Assert.Contains("over the limit 2:00", late, StringComparison.Ordinal);
        Assert.True(Lines(late) > Lines(DutyBar.Of(Night with { Limit = Night.Release }).Usual.Html) + 5);
    }

    [Fact]
    public void A_duty_that_passes_midnight_begins_an_hour_before_the_report()
    {
        var hours = Texts(Night).Where(text => text.Y < 20 && text.Value.Length == 2).OrderBy(text => text.X).Select(text => text.Value);
        Assert.Equal(["16", "18", "20", "22", "00", "02", "04", "06", "08", "10", "12", "14", "16"], hours);
    }

    [Fact]
    public void The_day_on_which_clocks_go_forward_has_23_hours()
    {
        var zone = DateTimeZoneProviders.Tzdb["America/New_York"];
        var report = new LocalDateTime(2026, 3, 8, 6, 0).InZoneStrictly(zone).ToInstant();
        var texts = Texts(Day with { Zone = zone, Report = report, Release = report + Duration.FromHours(3), Limit = null, Flights = [] })
            .Where(text => text.Y < 20 && text.Value.Length == 2).ToDictionary(text => text.Value, text => text.X, StringComparer.Ordinal);
        Assert.Equal((texts["24"] - texts["00"]) / 23, texts["12"] - texts["10"] - ((texts["24"] - texts["00"]) / 23), 0.2);
        Assert.False(texts.ContainsKey("02"));
    }

    [Fact]
    public void A_zone_with_half_hours_has_its_whole_hours_between_those_of_utc()
    {
        var texts =
            Texts(Day with { Zone = DateTimeZone.ForOffset(Offset.FromHoursAndMinutes(5, 30)), Release = Morning + Duration.FromHours(4), Limit = null });
        var hour = (texts.Single(text => text is { Value: "24", Y: < 20 }).X - texts.Single(text => text is { Value: "00", Y: < 20 }).X) / 24;
        Assert.Equal(texts.Single(text => text is { Value: "12", Y: < 20 }).X - (hour / 2), texts.Single(text => text is { Value: "06", Y: > 20 }).X, 0.2);
    }

    [Fact]
    public void A_release_before_the_report_is_refused() =>
        Assert.Throws<ArgumentException>(() => DutyBar.Of(Day with { Release = Day.Report - Duration.FromMinutes(1) }));

    private static int Lines(string svg) => XDocument.Parse(svg).Descendants().Count(element => element.Name.LocalName == "line");

    private static (string Value, double X, double Y)[] Texts(DutyTimes duty) =>
    [
        .. XDocument.Parse(DutyBar.Of(duty).Usual.Html).Descendants().Where(element => element.Name.LocalName == "text").Select(text => (text.Value,
            double.Parse(text.Attribute("x")?.Value ?? "", System.Globalization.CultureInfo.InvariantCulture),
            double.Parse(text.Attribute("y")?.Value ?? "", System.Globalization.CultureInfo.InvariantCulture))),
    ];
}
