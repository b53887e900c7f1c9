using System.Globalization;
using Batch.Flight.Air;
using Batch.Flight.Air.Bulletins;
using Batch.Flight.Earth;
using Batch.Testing;

namespace Batch.Flight.Tests.Air.Bulletins;

public sealed class WindsAloftTests
{
    private static readonly CheckFile Cells = CheckFile.Read("winds-aloft.csv");
    private static readonly CheckFile Rules = CheckFile.Read("winds-aloft-rules.csv");
    private static readonly Instant Received = Instant.FromUtc(2026, 1, 15, 12, 0);

    private const string Bulletin = """
        FBUS31 KWNO 180158
        FD1US1
        DATA BASED ON 180000Z
        VALID 180600Z   FOR USE 0200-0900Z. TEMPS NEG ABV 24000

        FT  3000    6000    9000   12000   18000   24000  30000  34000  39000
        DBQ 3312 3216+02 3223+00 3127-01 3031-14 2944-26 286141 288149 780056
        GLD      1923    2022+03 2119+00 2023-13 2332-25 236539 237448 248554
        SLN 1607 1106+07 9900+03 3111+02 2413-11 2634-23 257037 257447 750554
        """;

    public static IEnumerable<object[]> CellIds => Cells.Ids();

    public static IEnumerable<object[]> RuleIds => Rules.Ids();

    [Theory]
    [MemberData(nameof(CellIds))]
    public void A_cell_decodes_as_outside(string id)
    {
        var row = Cells[id];
        var basedOn = row.Has("based_on") ? $"DATA BASED ON {row["based_on"]}Z\n" : "";
        var text =
            $"{basedOn}VALID {row["valid"]}Z   FOR USE {row["use_from"]}-{row["use_to"]}Z. TEMPS NEG ABV 24000\n{row["header_line"]}\n{row["station_line"]}\n";
        var bulletin = WindsAloftBulletin.Parse(text, Received);
        Assert.Empty(bulletin.Unread);
        Assert.Equal(row["valid"], bulletin.Valid?.InUtc().ToString("ddHHmm", CultureInfo.InvariantCulture));
        Assert.Equal(row["based_on"], bulletin.BasedOn?.InUtc().ToString("ddHHmm", CultureInfo.InvariantCulture) ?? "");
        Assert.Equal(row["use_from"], bulletin.UseFrom?.InUtc().ToString("HHmm", CultureInfo.InvariantCulture));
        Assert.Equal(row["use_to"], bulletin.UseTo?.InUtc().ToString("HHmm", CultureInfo.InvariantCulture));
        Assert.InRange((bulletin.UseTo - bulletin.UseFrom)?.TotalHours ?? 0, 1, 12);
        Assert.InRange(bulletin.Valid ?? default, bulletin.UseFrom ?? default, bulletin.UseTo ?? default);
        var station = Assert.Single(bulletin.Stations);
        Assert.Equal(row["station"], station.Station);
        var cell = station.Cells.SingleOrDefault(c => c.Altitude.Value == row.Number("altitude_ft"));
        if (row["missing"] == "yes") Assert.Null(cell);
        else AssertCell(row, cell);
    }

    [Theory]
    [MemberData(nameof(RuleIds))]
    public void A_single_group_decodes_by_the_rules(string id) =>
        AssertCell(Rules[id], WindsAloftCell.Decode(Rules[id]["group"], new Feet(Rules[id].Number("altitude_ft")), out _));

    [Fact]
    public void A_bulletin_becomes_reports_of_the_air_in_its_period_of_use()
    {
        var bulletin = WindsAloftBulletin.Parse(Bulletin, Instant.FromUtc(2026, 5, 18, 3, 0));
        Assert.Empty(bulletin.Unread);
        var reports = bulletin.ToAirReports(s => s == "SLN" ? null : GeoPoint.Of(40, s == "DBQ" ? -90 : -101), out var unplaced);
        Assert.Equal("SLN", string.Join(' ', unplaced));
        Assert.Equal(9 + 8, reports.Length);
        Assert.All(reports, r => Assert.Equal((Instant.FromUtc(2026, 5, 18, 2, 0), Instant.FromUtc(2026, 5, 18, 9, 0)), (r.From, r.To)));
        var sample = new AirField(reports).At(GeoPoint.Of(40, -90), new Feet(34000), Instant.FromUtc(2026, 5, 18, 8, 59));
        Assert.Equal((280, 81, -49), (Math.Round(sample.WindFrom.Value, 9), Math.Round(sample.WindSpeed.Value, 9), sample.Temperature.Value));
    }

    [Fact]
    public void A_period_of_use_around_midnight_begins_the_day_before()
    {
        var bulletin = WindsAloftBulletin.Parse(Bulletin.Replace("VALID 180600Z   FOR USE 0200-0900Z", "VALID 190000Z   FOR USE 2100-0600Z",
            StringComparison.Ordinal), Instant.FromUtc(2026, 5, 18, 20, 0));
        Assert.Equal((Instant.FromUtc(2026, 5, 18, 21, 0), Instant.FromUtc(2026, 5, 19, 6, 0)), (bulletin.UseFrom, bulletin.UseTo));
    }

    [Fact]
    public void A_cell_that_cannot_be_read_is_named_and_the_rest_is_used()
    {
        var bulletin = WindsAloftBulletin.Parse(
            Bulletin.Replace("3216+02", "4516+02", StringComparison.Ordinal).Replace("2944-26", "294426 ", StringComparison.Ordinal)
                .Replace("2119+00", "21x9+00", StringComparison.Ordinal),
            Instant.FromUtc(2026, 5, 18, 3, 0));
        Assert.Equal(["DBQ 4516+02", "DBQ 294426", "GLD 21X9+00"], bulletin.Unread.Select(u => u.Group));
        Assert.Equal((7, 7, 9), (bulletin.Stations[0].Cells.Length, bulletin.Stations[1].Cells.Length, bulletin.Stations[2].Cells.Length));
    }

    [Fact]
    public void Lost_blanks_are_said_where_the_column_is_not_known()
    {
        var bulletin = WindsAloftBulletin.Parse(
            "VALID 180600Z   FOR USE 0200-0900Z\nFT 3000 6000 9000 12000\nDBQ 3312 3216+02 3223+00 3127-01\nGLD 1923 2022+03 2119+00\n", Received);
        Assert.Equal(4, bulletin.Stations[0].Cells.Length);
        Assert.NotEmpty(bulletin.Unread);
        Assert.All(bulletin.Unread, u => Assert.StartsWith("GLD", u.Group, StringComparison.Ordinal));
    }

    [Fact]
    public void A_bulletin_without_time_gives_no_reports_and_says_so()
    {
        var bulletin = WindsAloftBulletin.Parse(Bulletin.Replace("VALID", "INVALI", StringComparison.Ordinal), Received);
        Assert.Contains(bulletin.Unread, u => u.Group == "VALID");
        Assert.Empty(bulletin.ToAirReports(_ => GeoPoint.Of(0, 0), out _));
        Assert.NotEmpty(WindsAloftBulletin.Parse("nothing of the kind", Received).Unread);
    }

    [Fact]
    public void A_second_bulletin_in_the_text_is_said_not_to_be_read()
    {
        var bulletin = WindsAloftBulletin.Parse(Bulletin + "\n" + Bulletin.Replace("180600Z", "181200Z", StringComparison.Ordinal),
            Instant.FromUtc(2026, 5, 18, 3, 0));
        Assert.Equal(3, bulletin.Stations.Length);
        Assert.Contains(bulletin.Unread, u => u.Why.Contains("second bulletin", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Bulletin, BulletinKind.WindsAloft)]
    [InlineData("TAF XAND 121100Z 1212/1312 18010KT CAVOK", BulletinKind.Forecast)]
    [InlineData("XAND 121100Z 1212/1312 18010KT CAVOK", BulletinKind.Forecast)]
    [InlineData("METAR XAND 121153Z 27015KT 9999 FEW030 18/09 Q1013", BulletinKind.Report)]
    [InlineData("XAND 121153Z 27015KT 9999 FEW030 18/09 Q1013 TEMPO 3000", BulletinKind.Report)]
    public void The_kind_of_a_bulletin_is_told_from_its_text(string text, BulletinKind kind) => Assert.Equal(kind, BulletinSort.KindOf(text));

    private static void AssertCell(CheckRow row, WindsAloftCell? cell)
    {
        Assert.NotNull(cell);
        Assert.Equal(row["group"], cell.Group);
        Assert.Equal(row.NumberOrNothing("temp_c"), cell.Temperature?.Value + 0);
        var isAtLeast = row["wind_kt"].EndsWith("or more", StringComparison.Ordinal);
        Assert.Equal(row["wind_dir"], cell.Wind is { } wind ? Decoded.Number(wind.From.Value == 0 && row["wind_dir"] == "360" ? 360 : wind.From.Value) : "");
        Assert.Equal(row["wind_kt"].Replace(" or more", "", StringComparison.Ordinal), Decoded.Number(cell.Wind?.Speed.Value));
        if (isAtLeast) Assert.True(cell.SpeedAtLeast);
    }
}
