using Batch.Sheets.Figures;
using Batch.Testing;
using NodaTime.Text;

namespace Batch.Sheets.Tests.Figures;

public sealed class ClockTimeTests
{
    private static readonly CheckFile Clocks = CheckFile.Read("local-clock.csv");

    public static IEnumerable<object[]> Ids => Clocks.Ids();

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_local_clock_beside_an_instant_is_that_of_its_zone(string id)
    {
        var row = Clocks[id];
        var clock = new ClockTime(InstantPattern.General.Parse(row["utc"]).Value, DateTimeZoneProviders.Tzdb[row["tz"]]);
        var expected = LocalDateTimePattern.GeneralIso.Parse(row["local"]).Value.PlusSeconds(30);
        Assert.Equal(expected.ToString("uuuu-MM-dd HH:mm", System.Globalization.CultureInfo.InvariantCulture), $"{clock.LocalDate} {clock.LocalClock()}");
        // Where the zone has no letters the sheet shows its distance from UTC.
        Assert.Equal(char.IsLetter(row["abbreviation"][0]) ? row["abbreviation"] : Distance(row["abbreviation"]), clock.ZoneName);
    }

    // UTC+12:45 for +1245, UTC−1 for -01.
    private static string Distance(string offset)
    {
        var minutes = offset.Length > 3 && offset[3..] != "00" ? ":" + offset[3..] : "";
        return "UTC" + (offset[0] == '-' ? "\u2212" : "+") + offset[1..3].TrimStart('0') + minutes;
    }
}
