using System.Globalization;
using Batch.Flight.Air.Bulletins;
using Batch.Testing;

namespace Batch.Flight.Tests.Air.Bulletins;

public sealed class TafReportTests
{
    private static readonly CheckFile Groups = CheckFile.Read("taf-groups.csv");
    private static readonly CheckFile Moments = CheckFile.Read("taf-at-time.csv");

    public static IEnumerable<object[]> GroupIds => Groups.Ids();

    public static IEnumerable<object[]> MomentIds => Moments.Ids();

    [Theory]
    [MemberData(nameof(GroupIds))]
    public void A_group_decodes_as_outside(string id)
    {
        var row = Groups[id];
        var received = At(row["issue_day"], row["issue_time"], 1);
        var report = TafReport.Parse(Groups[row["taf_id"] + "-0"]["raw"], received);
        Assert.Empty(report.Unread);
        Assert.Equal(row["amend"], report.Amendment);
        Assert.Equal(row["station"], report.Station);
        Assert.Equal(received, report.Issued);
        Assert.Equal(Validity(row, "valid_from"), report.ValidFrom);
        Assert.Equal(Validity(row, "valid_to"), report.ValidTo);

        var group = report.Groups[(int)row.Number("group_no")];
        var (conditions, wind, visibility) = (group.Conditions, group.Conditions.Wind, group.Conditions.Visibility);
        if (row.Has("from_day")) Assert.Equal(At(row["from_day"], row["from_time"], MonthOf(row, "from_day")), group.From);
        if (row.Has("to_day")) Assert.Equal(At(row["to_day"], row["to_time"], MonthOf(row, "to_day")), group.To);
        else Assert.Null(group.To);
        var shear = group.WindShear is { } s
            ? $"{Decoded.Number(s.Height.Value)}ft:{s.DirectionDeg.ToString("000", CultureInfo.InvariantCulture)}/{Decoded.Number(s.Speed.Value)}kt"
            : "";
        var temperatures = row["group_no"] == "0" ? report.Temperatures.Select(Temperature) : [];
        var found = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["group_type"] = group.Kind == TafGroupKind.Probable ? "PROB" : group.Words.Split(' ')[^1],
            ["prob"] = Decoded.Number(group.ProbabilityPercent),
            ["wind_dir"] = Decoded.Direction(wind),
            ["wind_speed"] = Decoded.Number(wind?.ReportedSpeed),
            ["wind_gust"] = Decoded.Number(wind?.ReportedGust),
            ["wind_unit"] = wind?.Unit ?? "",
            ["wind_calm"] = Decoded.Flag(wind is { IsCalm: true }),
            ["cavok"] = Decoded.Flag(conditions.IsCavok),
            ["vis_raw"] = visibility?.Text ?? "",
            ["vis_m"] = Decoded.Metres(visibility),
            ["vis_qual"] = Decoded.Limit(visibility),
            ["weather"] = string.Join(';', conditions.Weather),
            ["sky"] = Decoded.Sky(conditions),
            ["ceiling_ft"] = Decoded.Number(conditions.Ceiling?.Value),
            ["windshear"] = shear,
            ["qnh_inhg"] = group.AltimeterInches?.ToString("0.00", CultureInfo.InvariantCulture) ?? "",
            ["temps"] = string.Join(';', temperatures),
            ["other_groups"] = string.Join(' ', group.OtherGroups),
        };
        Assert.Equal(found.Select(f => $"{f.Key}={row[f.Key]}"), found.Select(f => $"{f.Key}={f.Value}"));
        Assert.Equal(row.NumberOrNothing("vis_sm"), visibility is { IsInMiles: true } ? visibility.StatuteMiles : null);
        var rows = Groups.Rows.Where(r => r["taf_id"] == row["taf_id"]).Max(r => r.Number("group_no"));
        Assert.InRange(report.Groups.Length, (int)rows + 1, int.MaxValue);
    }

    [Theory]
    [MemberData(nameof(MomentIds))]
    public void The_conditions_of_a_moment_are_those_of_the_rules(string id)
    {
        var row = Moments[id];
        var first = Groups.Rows.First(r => r["taf_id"] == row["taf_id"]);
        var report = TafReport.Parse(row["raw"], At(first["issue_day"], first["issue_time"], 1));
        var day = int.Parse(row["at_day"], CultureInfo.InvariantCulture);
        var moment = At(row["at_day"], row["at_time"], day < int.Parse(first["issue_day"], CultureInfo.InvariantCulture) ? 2 : 1);
        var conditions = report.At(moment);
        Assert.NotNull(conditions);
        var (prevailing, wind, visibility) = (conditions.Prevailing, conditions.Prevailing.Wind, conditions.Prevailing.Visibility);
        var found = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["wind_dir"] = Decoded.Direction(wind),
            ["wind_speed"] = Decoded.Number(wind?.ReportedSpeed),
            ["wind_gust"] = Decoded.Number(wind?.ReportedGust),
            ["wind_unit"] = wind?.Unit ?? "",
            ["cavok"] = Decoded.Flag(prevailing.IsCavok),
            ["vis_raw"] = visibility?.Text ?? "",
            ["vis_m"] = Decoded.Metres(visibility),
            ["vis_qual"] = Decoded.Limit(visibility),
            ["weather"] = string.Join(';', prevailing.Weather),
            ["sky"] = Decoded.Sky(prevailing),
            ["ceiling_ft"] = Decoded.Number(prevailing.Ceiling?.Value),
            ["temporary_groups"] = string.Join(';',
                conditions.Temporary.Select(g => $"{report.Groups.IndexOf(g).ToString(CultureInfo.InvariantCulture)}:{g.Words}")),
        };
        Assert.Equal(found.Select(f => $"{f.Key}={row[f.Key]}"), found.Select(f => $"{f.Key}={f.Value}"));
    }

    [Fact]
    public void While_a_change_is_under_way_the_old_conditions_prevail_and_the_new_are_possible()
    {
        var report = TafReport.Parse("TAF XAND 121100Z 1212/1312 18010KT 9999 SCT030 BECMG 1214/1216 3000 BR BKN006", Instant.FromUtc(2026, 5, 12, 11, 0));
        var under = report.At(Instant.FromUtc(2026, 5, 12, 15, 0));
        Assert.Equal(10000, under?.Prevailing.Visibility?.Metres);
        Assert.Equal([TafGroupKind.Becoming], under?.Temporary.Select(g => g.Kind));
        var after = report.At(Instant.FromUtc(2026, 5, 12, 16, 0));
        Assert.Equal(600, after?.Prevailing.Ceiling?.Value);
        Assert.Empty(after?.Temporary ?? throw new InvalidOperationException("not covered"));
    }

    [Fact]
    public void A_span_of_time_shows_every_change_inside_it()
    {
        var report = TafReport.Parse("TAF XAND 121100Z 1212/1312 18010KT P6SM SKC TEMPO 1219/1220 BKN008 FM122000 20012KT 2SM BR OVC005",
            Instant.FromUtc(2026, 5, 12, 11, 0));
        var eta = Instant.FromUtc(2026, 5, 12, 19, 30);
        var span = report.During(eta - Duration.FromHours(1), eta + Duration.FromHours(1));
        Assert.Equal([0, 1, 0], span.Select(c => c.Temporary.Length));
        Assert.Equal(new double?[] { null, null, 500 }, span.Select(c => c.Prevailing.Ceiling?.Value));
        Assert.Empty(report.During(eta + Duration.FromDays(2), eta + Duration.FromDays(3)));
        Assert.Single(report.During(Instant.FromUtc(2026, 5, 12, 11, 30), Instant.FromUtc(2026, 5, 12, 12, 30)));
    }

    [Fact]
    public void The_heading_of_a_transmission_is_passed_over()
    {
        var report = TafReport.Parse("FTXX41 XAND 121100 AAA\nTAF AMD\nXAND 121100Z 1212/1312 18010KT CAVOK RMK Nxt by 18Z=",
            Instant.FromUtc(2026, 5, 12, 11, 0));
        Assert.Empty(report.Unread);
        Assert.Equal(("XAND", "AMD", "Nxt by 18Z"), (report.Station, report.Amendment, report.Remarks));
    }

    [Fact]
    public void A_change_behind_remarks_is_forecast_all_the_same()
    {
        var report = TafReport.Parse(
            "TAF XAND 121100Z 1212/1312 18010KT P6SM SKC RMK Fcst based on auto obs\n TEMPO 1214/1216 3/4SM FG VV002 FM121800 20010KT 2SM BR OVC004",
            Instant.FromUtc(2026, 5, 12, 11, 0));
        Assert.Empty(report.Unread);
        Assert.Equal("Fcst based on auto obs", report.Remarks);
        Assert.Equal(new double?[] { null, 200, 400 }, report.Groups.Select(g => g.Conditions.Ceiling?.Value));
    }

    [Fact]
    public void Outside_its_validity_it_says_nothing()
    {
        var report = TafReport.Parse("TAF XAND 121100Z 1212/1224 18010KT CAVOK", Instant.FromUtc(2026, 5, 12, 11, 0));
        Assert.Null(report.At(Instant.FromUtc(2026, 5, 12, 11, 59)));
        Assert.NotNull(report.At(Instant.FromUtc(2026, 5, 12, 12, 0)));
        Assert.NotNull(report.At(Instant.FromUtc(2026, 5, 12, 23, 59)));
        Assert.Null(report.At(Instant.FromUtc(2026, 5, 13, 0, 0)));
        Assert.Null(TafReport.Parse("TAF XAND 121100Z 1212/1224 CNL", Instant.FromUtc(2026, 5, 12, 11, 0)).At(Instant.FromUtc(2026, 5, 12, 13, 0)));
    }

    [Fact]
    public void A_validity_runs_over_the_end_of_the_month()
    {
        var report = TafReport.Parse("XAND 281730Z 2818/0118 18010KT P6SM SKC FM010200 20012KT P6SM BKN015", Instant.FromUtc(2026, 2, 28, 17, 40));
        Assert.Equal(Instant.FromUtc(2026, 3, 1, 18, 0), report.ValidTo);
        Assert.Equal(1500, report.At(Instant.FromUtc(2026, 3, 1, 2, 0))?.Prevailing.Ceiling?.Value);
        Assert.Null(report.At(Instant.FromUtc(2026, 3, 1, 1, 59))?.Prevailing.Ceiling);
    }

    [Fact]
    public void Good_visibility_ends_when_a_change_gives_another()
    {
        var report = TafReport.Parse("TAF XAND 121100Z 1212/1312 18010KT CAVOK BECMG 1214/1215 5000 HZ BECMG 1218/1219 20005KT",
            Instant.FromUtc(2026, 5, 12, 11, 0));
        var changed = report.At(Instant.FromUtc(2026, 5, 12, 20, 0))?.Prevailing;
        Assert.False(changed?.IsCavok);
        Assert.Equal(("5000", 200), (changed?.Visibility?.Text, changed?.Wind?.DirectionDeg));
        Assert.Equal("HZ", string.Join(' ', changed?.Weather ?? []));
        Assert.True(report.At(Instant.FromUtc(2026, 5, 12, 13, 0))?.Prevailing.IsCavok);
    }

    [Fact]
    public void A_group_that_cannot_be_read_is_named_and_the_rest_is_used()
    {
        var report = TafReport.Parse("TAF XAND 121100Z 1212/1312 18O10KT 9999 SCT030 TEMPO 3000 BR FM1225ZZ 20010KT", Instant.FromUtc(2026, 5, 12, 11, 0));
        Assert.Equal(["18O10KT", "TEMPO", "FM1225ZZ"], report.Unread.Select(u => u.Group));
        Assert.Equal(3, report.Groups.Length);
        Assert.Equal(report.ValidTo, report.Groups[1].To);
        Assert.Null(report.Groups[1].Conditions.Wind);
    }

    // Forecasts of the kinds found in the metaf library test suite (github nnaumenko/metaf, test/testdata_real.cpp, MIT), shortened: 11/2SM is Canadian for 1
    // 1/2SM.
    [Theory]
    [InlineData("TAF AMD XAND 131639Z 1316/1401 31020G30KT 6SM -SN SCT008 OVC025 TEMPO 1316/1401 11/2SM -SN BLSN OVC015", 1, "11/2SM", 2414.016)]
    [InlineData("TAF XAND 111740Z 1118/1218 07007KT 21/4SM -DZ BR OVC005", 0, "21/4SM", 3621.024)]
    [InlineData("TAF XAND 111740Z 1118/1218 07007KT 11/16SM FG OVC001", 0, "11/16SM", 1106.424)]
    [InlineData("TAF XAND 111740Z 1118/1218 07007KT P1 1/2SM BR OVC005", 0, "P1 1/2SM", 2414.016)]
    [InlineData("TAF XAND 211600Z 2118/2218 15013KT 9999 FEW020 TEMPO 2205/2208 3000E VCFG FEW002", 1, "3000E", 3000.0)]
    [InlineData("TAF XAND 141700Z 1418/1518 11006KT CAVOK PROB40 1420/1424 TSRA FEW015CB FM150900 11005KT 0600 FG", 2, "0600", 600.0)]
    public void A_visibility_is_read_as_it_is_meant(string text, int group, string written, double metres)
    {
        var visibility = TafReport.Parse(text, Instant.FromUtc(2026, 1, 15, 0, 0)).Groups[group].Conditions.Visibility;
        Assert.Equal(written, visibility?.Text);
        Assert.Equal(metres, visibility?.Metres ?? 0, 0.001);
    }

    // The military forecasts among those: words to people hold times that look like visibilities.
    [Theory]
    [InlineData("TAF XAND 1215/1315 09010KT 9999 SCT120 QNH3008INS BECMG 1216/1218 VRB25G50KT QNH2950INS T30/1218Z T24/1306Z LAST NO AMDS AFT 1215 NEXT 1709",
        "LAST NO AMDS AFT 1215 NEXT 1709")]
    [InlineData("TAF AMD XAND 1215/1315 02028G48KT 2400 +RA BECMG 1216/1218 05035G60KT T24/1221Z T28/1307Z AMD 1515", "AMD 1515")]
    [InlineData("XAND 121335Z 1215/1315 02035G50KT 3SM +SHRA BECMG 1216/1218 09045G60KT OVC007 AMD LTD TO CLD VIS AND WIND TIL 1302",
        "AMD LTD TO CLD VIS AND WIND TIL 1302")]
    [InlineData("TAF XAND 121100Z 1215/1315 35010G15KT 9999 FEW200 BECMG 1216/1218 33010G15KT FEW200 WND 33009KT AFT 1317 TX47/1218Z TN29/1302Z",
        "WND 33009KT AFT 1317")]
    [InlineData("TAF XAND 121105Z 1212/1312 23012KT 9999 FEW025 TEMPO 1212/1218 SHRA BKN012 2000FT WIND 25025KT QNH MNM 1010 MAX 1020",
        "2000FT WIND 25025KT QNH MNM 1010 MAX 1020")]
    public void Words_to_people_are_remarks_and_no_conditions(string text, string remark)
    {
        var report = TafReport.Parse(text, Instant.FromUtc(2026, 5, 12, 14, 0));
        Assert.Empty(report.Unread);
        Assert.Equal(remark, report.Remarks);
        Assert.Equal(2, report.Groups.Length);
        Assert.Null(report.Groups[1].Conditions.Visibility);
    }

    // The wind at 2,000 ft closes the forecasts of New Zealand; it is none of the ground.
    [Fact]
    public void A_wind_with_its_height_is_no_surface_wind()
    {
        var report = TafReport.Parse(
            "TAF XAND 121105Z 1212/1312 23012KT 9999 FEW025 TEMPO 1212/1218 SHRA BKN012 2000FT WIND 25025KT BECMG 1218/1220 27015KT 2000FT WIND 28035KT",
            Instant.FromUtc(2026, 5, 12, 14, 0));
        Assert.Empty(report.Unread);
        Assert.Equal([12d, null, 15d], report.Groups.Select(group => group.Conditions.Wind?.ReportedSpeed));
    }

    [Theory]
    [InlineData("3500 HZ/-RA SCT018", "HZ;-RA")]
    [InlineData("3000 -TSRA/RA FEW025CB", "-TSRA;RA")]
    [InlineData("1000 DSTS SCT030", "DSTS")]
    [InlineData("7000 TSVCSH SCT024CB", "TSVCSH")]
    [InlineData("1000 +SNSH OVC010", "+SNSH")]
    [InlineData("6SM -DZSN BR", "-DZSN;BR")]
    public void Weather_is_read_in_the_forms_found(string groups, string weather)
    {
        var report = TafReport.Parse($"TAF XAND 121100Z 1212/1312 18010KT {groups}", Instant.FromUtc(2026, 5, 12, 11, 0));
        Assert.Empty(report.Unread);
        Assert.Equal(weather, string.Join(';', report.Groups[0].Conditions.Weather));
    }

    [Theory]
    [InlineData("VCMI")]
    [InlineData("BL")]
    [InlineData("3/2SM")]
    [InlineData("2/2SM")]
    public void A_group_that_means_nothing_is_named(string group) =>
        Assert.Equal([group], TafReport.Parse($"TAF XAND 121100Z 1212/1312 18010KT {group}", Instant.FromUtc(2026, 5, 12, 11, 0)).Unread.Select(u => u.Group));

    [Fact]
    public void A_forecast_without_a_validity_holds_at_no_time()
    {
        var received = Instant.FromUtc(2026, 5, 12, 11, 0);
        Assert.Null(TafReport.Parse("TAF XAND 121100Z 18010KT 9999", received).At(received + Duration.FromHours(2)));
        Assert.True(TafReport.Parse("TAF XAND 121100Z 1212/1300 FCST NOT AVBL DUE NO OBS", received).IsCancelled);
        Assert.Equal(received, TafReport.Parse("TAF XAND 121100 1212/1312 18010KT 9999", received).Issued);
    }

    [Fact]
    public void A_change_ends_with_the_part_it_was_written_in()
    {
        var report = TafReport.Parse("TAF XAND 121100Z 1212/1312 18010KT 9999 BECMG 1218/1221 27012KT 3000 BR FM122000 20015KT 9999",
            Instant.FromUtc(2026, 5, 12, 11, 0));
        Assert.Equal((200, "9999"), (report.At(Instant.FromUtc(2026, 5, 12, 22, 0))?.Prevailing.Wind?.DirectionDeg,
            report.At(Instant.FromUtc(2026, 5, 12, 22, 0))?.Prevailing.Visibility?.Text));
    }

    [Fact]
    public void Several_reports_of_one_text_are_read_each_by_itself()
    {
        Assert.Equal(2, BulletinText.Each("METAR XAND 121153Z 27015KT 9999 FEW030 18/09 Q1013=\nMETAR XBEL 121150Z 24010KT CAVOK 17/08 Q1014=").Count);
        Assert.Equal(2,
            BulletinText.Each("METAR XAND 121153Z 27015KT 9999 FEW030 18/09 Q1013\nTAF XAND 121100Z 1212/1312 18010KT\n  TEMPO 1214/1216 3000 BR").Count);
        Assert.Single(BulletinText.Each("FTXX41 XAND 121100 AAA\nTAF AMD\nXAND 121100Z 1212/1312 18010KT CAVOK="));
        Assert.Single(BulletinText.Each("TAF\nTAF AMD XAND 121100Z 1212/1312 18010KT CAVOK"));
        Assert.Single(BulletinText.Each(""));
    }

    [Theory]
    [InlineData("")]
    [InlineData("TAF")]
    [InlineData("TAF XAND")]
    [InlineData("TAF XAND 121100Z 1240/1312 18010KT")]
    [InlineData("TAF XAND 121100Z 1212/1212 18010KT")]
    [InlineData("good weather all day")]
    public void Text_that_is_no_forecast_is_said_to_be_none(string text) =>
        Assert.NotEmpty(TafReport.Parse(text, Instant.FromUtc(2026, 5, 12, 11, 0)).Unread);

    private static string Temperature(TafTemperature t)
    {
        var at = t.At?.InUtc();
        return $"{(t.IsHighest ? "TX" : "TN")}:{Decoded.Number(t.Temperature.Value)}@{at?.ToString("dd", CultureInfo.InvariantCulture)}T{at?.ToString("HH", CultureInfo.InvariantCulture)}Z";
    }

    private static Instant? Validity(CheckRow row, string column)
    {
        var parts = row[column].Split('T');
        return At(parts[0], parts[1] + ":00", int.Parse(parts[0], CultureInfo.InvariantCulture) < row.Number("issue_day") ? 2 : 1);
    }

    private static int MonthOf(CheckRow row, string column) => row.Number(column) < row.Number("issue_day") ? 2 : 1;

    // January 2026 has 31 days; a day before the day of issue lies in February.
    private static Instant At(string day, string time, int month)
    {
        var clock = time.Split(':');
        return Instant.FromUtc(2026, month, int.Parse(day, CultureInfo.InvariantCulture), 0, 0)
            + Duration.FromMinutes(int.Parse(clock[0], CultureInfo.InvariantCulture) * 60 + int.Parse(clock[1], CultureInfo.InvariantCulture));
    }
}
