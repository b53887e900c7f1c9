using System.Globalization;
using System.Text;
using Batch.SampleMaker.Books;
using Batch.SampleMaker.Network;

namespace Batch.SampleMaker.Week;

/// <summary>The sheets of winds, bulletins and notices.</summary>
public static class WeatherSheets
{
    private const int HalfDays = 14;

    private static readonly int[] Levels = [3000, 6000, 9000, 12000, 18000, 24000, 30000, 34000];

    private static readonly string[] Places = ["XAND", "XBEL", "XCOR", "XMAR", "XOST", "XROA", "XQUI"];

    private const string Service = "National weather service";

    private static readonly Instant Monday = Instant.FromUtc(2026, 12, 7, 0, 0);

    public static SheetTable Winds() => SheetTable.Of(
        "Winds",
        [
            new("Place", 8), new("From [UTC]", 17, CellFormat.UtcDateTime), new("To [UTC]", 17, CellFormat.UtcDateTime),
            new("Altitude [ft]", 10, CellFormat.Whole), new("Direction [deg]", 10, CellFormat.Whole),
            new("Speed [kt]", 9, CellFormat.Whole), new("Temperature [°C]", 12, CellFormat.Whole),
        ],
        from halfDay in Enumerable.Range(0, HalfDays)
        from place in Places
        from level in Levels
        let wind = Weather.At(Sites.Of(place).Spot, level, halfDay)
        select new object?[] { place, Monday + Duration.FromHours(12 * halfDay), Monday
            + Duration.FromHours(12 * (halfDay + 1)), level, wind.FromDeg, wind.SpeedKt, wind.TemperatureC });

    public static SheetTable Bulletins() => SheetTable.Of(
        "Bulletins",
        [new("Text", 110), new("Received [UTC]", 17, CellFormat.UtcDateTime), new("Source", 26)],
        [
            [WindsAloft(), Received(4, 50), Service],
            ["TAF XAND 070500Z 0706/0812 26012KT 9999 SCT035 BKN120 BECMG 0718/0720 25008KT", Received(5, 5), Service],
            ["TAF XBEL 070500Z 0706/0812 27014KT 9999 BKN035 TEMPO 0712/0715 6000 -RA BKN025", Received(5, 5), Service],
            ["TAF XCOR 070500Z 0706/0812 25016G26KT 9999 SCT025 BKN045", Received(5, 5), Service],
            ["TAF XFEN 070500Z 0706/0812 25010KT 9999 SCT030 FM071400 24008KT 4000 BR BKN008 FM072000 26010KT 9999 BKN035", Received(5, 5), Service],
            ["TAF XMAR 070500Z 0706/0812 26015KT 9999 BKN035", Received(5, 10), Service],
            ["TAF XNOR 070500Z 0706/0812 26014KT 9999 BKN035", Received(5, 10), Service],
            ["TAF XOST 070500Z 0706/0812 26010KT CAVOK", Received(5, 10), Service],
            ["METAR XAND 070520Z 26010KT 9999 SCT035 09/05 Q1016", Received(5, 25), "Airport observer"],
            ["METAR XBEL 070520Z 27012KT 9999 BKN035 10/06 Q1015", Received(5, 25), "Airport observer"],
            ["METAR XCOR 070520Z 25014KT 9999 SCT025 10/06 Q1017", Received(5, 25), "Airport observer"],
            ["METAR XMAR 070520Z 26013KT 9999 BKN035 09/05 Q1014", Received(5, 25), "Airport observer"],
        ]);

    public static SheetTable Notices() => SheetTable.Of(
        "Notices",
        [new("Subject", 12), new("From [UTC]", 17, CellFormat.UtcDateTime), new("To [UTC]", 17, CellFormat.UtcDateTime), new("Effect", 15), new("Text", 70)],
        [
            ["XAND 05", Instant.FromUtc(2026, 12, 8, 6, 0), Instant.FromUtc(2026, 12, 10, 18, 0), "runway closed", "Runway 05/23 closed, painting"],
            ["XAND 23", Instant.FromUtc(2026, 12, 8, 6, 0), Instant.FromUtc(2026, 12, 10, 18, 0), "runway closed", "Runway 05/23 closed, painting"],
            ["XNOR", Instant.FromUtc(2026, 12, 9, 0, 0), Instant.FromUtc(2026, 12, 10, 0, 0), "no fuel", "Avgas pump under repair"],
            ["XHOL", Instant.FromUtc(2026, 12, 10, 8, 0), Instant.FromUtc(2026, 12, 10, 16, 0), "closed", "Closed for the parish fair"],
            ["XELM", Instant.FromUtc(2026, 12, 11, 0, 0), Instant.FromUtc(2026, 12, 14, 0, 0), "no lights", "Runway lights unserviceable"],
            ["XJUN", Instant.FromUtc(2026, 12, 7, 0, 0), Instant.FromUtc(2026, 12, 14, 0, 0), "other", "Loose gravel on the first 300 ft of runway 10"],
        ]);

    private static Instant Received(int hour, int minute) => Instant.FromUtc(2026, 12, 7, hour, minute);

    private static string WindsAloft()
    {
        var text = new StringBuilder(
            "DATA BASED ON 070000Z\nVALID 071200Z FOR USE 0800-1700Z. TEMPS NEG ABV 24000\n\nFT  3000    6000    9000   12000   18000   24000  30000  34000");
        foreach (var station in new[] { "AND", "BEL", "COR", "MAR", "OST", "ROA" })
        {
            text.Append('\n').Append(station);
            foreach (var level in Levels)
            {
                text.Append(' ').Append(Group(Weather.At(Waypoints.Of(station).Spot, level, 1), level));
            }
        }

        return text.ToString();
    }

    private static string Group((int FromDeg, int SpeedKt, int TemperatureC) wind, int level)
    {
        var winds = string.Create(CultureInfo.InvariantCulture, $"{wind.FromDeg / 10:00}{wind.SpeedKt:00}");
        var magnitude = string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(wind.TemperatureC):00}");
        return level switch
        {
            3000 => winds,
            > 24000 => winds + magnitude,
            _ => winds + (wind.TemperatureC < 0 ? "-" : "+") + magnitude,
        };
    }
}
