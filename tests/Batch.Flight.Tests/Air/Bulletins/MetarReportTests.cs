using System.Globalization;
using Batch.Flight.Air.Bulletins;
using Batch.Testing;

namespace Batch.Flight.Tests.Air.Bulletins;

public sealed class MetarReportTests
{
    private static readonly CheckFile Reports = CheckFile.Read("metar.csv");

    // A month of 31 days; the reports of the check file give only a day.
    private static readonly Instant Received = Instant.FromUtc(2026, 1, 15, 12, 0);

    public static IEnumerable<object[]> ReportIds => Reports.Ids();

    [Theory]
    [MemberData(nameof(ReportIds))]
    public void A_report_decodes_as_outside(string id)
    {
        var row = Reports[id];
        var report = MetarReport.Parse(row["raw"], Received);
        var (conditions, wind, visibility) = (report.Conditions, report.Conditions.Wind, report.Conditions.Visibility);
        var observed = report.Observed?.InUtc();
        var found = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["type"] = report.Kind,
            ["station"] = report.Station,
            ["day"] = observed?.Day.ToString(CultureInfo.InvariantCulture) ?? "",
            ["time_utc"] = observed?.ToString("HH:mm", CultureInfo.InvariantCulture) ?? "",
            ["auto"] = Decoded.Flag(report.IsAutomatic),
            ["cor"] = Decoded.Flag(report.IsCorrected),
            ["wind_dir"] = Decoded.Direction(wind),
            ["wind_speed"] = Decoded.Number(wind?.ReportedSpeed),
            ["wind_gust"] = Decoded.Number(wind?.ReportedGust),
            ["wind_unit"] = wind?.Unit ?? "",
            ["wind_calm"] = Decoded.Flag(wind is { IsCalm: true }),
            ["wind_var_from"] = wind?.VariesFromDeg?.ToString("000", CultureInfo.InvariantCulture) ?? "",
            ["wind_var_to"] = wind?.VariesToDeg?.ToString("000", CultureInfo.InvariantCulture) ?? "",
            ["cavok"] = Decoded.Flag(conditions.IsCavok),
            ["vis_raw"] = visibility?.Text ?? "",
            ["vis_m"] = Decoded.Metres(visibility),
            ["vis_qual"] = Decoded.Limit(visibility),
            ["vis_ndv"] = Decoded.Flag(visibility is { NoDirectionalVariation: true }),
            ["vis_missing"] = Decoded.Flag(report.IsVisibilityMissing),
            ["vis_min"] = report.LeastVisibility,
            ["rvr"] = string.Join(';', report.RunwayRanges.Select(Decoded.Range)),
            ["weather"] = string.Join(';', conditions.Weather),
            ["recent"] = string.Join(';', report.RecentWeather),
            ["sky"] = Decoded.Sky(conditions),
            ["ceiling_ft"] = Decoded.Number(conditions.Ceiling?.Value),
            ["us_flight_category"] = Decoded.Category(conditions),
            ["temp_c"] = Decoded.Number(report.Temperature?.Value + 0),
            ["dewpoint_c"] = Decoded.Number(report.DewPoint?.Value + 0),
            ["qnh_hpa"] = report.AltimeterInches is null ? Decoded.Number(conditions.AltimeterSetting?.Value) : "",
            ["altimeter_inhg"] = report.AltimeterInches?.ToString("0.00", CultureInfo.InvariantCulture) ?? "",
            ["windshear"] = report.WindShear,
            ["trend"] = report.Trend,
            ["remarks"] = report.Remarks,
            ["other_groups"] = string.Join(' ', report.OtherGroups),
        };
        Assert.Equal(found.Select(f => $"{f.Key}={row[f.Key]}"), found.Select(f => $"{f.Key}={f.Value}"));
        AssertConverted(row, "wind_speed_kt", wind?.Speed.Value);
        AssertConverted(row, "wind_gust_kt", wind?.Gust?.Value);
        AssertConverted(row, "vis_sm", visibility is { IsInMiles: true } ? visibility.StatuteMiles : null);
    }

    [Fact]
    public void A_group_that_cannot_be_read_is_named_and_the_rest_is_used()
    {
        var report = MetarReport.Parse("METAR XAND 121153Z 27X15KT 9999 FEW03O 18/09 Q1013", Received);
        Assert.Equal(["27X15KT", "FEW03O"], report.Unread.Select(u => u.Group));
        Assert.Equal(10000, report.Conditions.Visibility?.Metres);
        Assert.Equal(18, report.Temperature?.Value);
        Assert.Equal(1013, report.Conditions.AltimeterSetting?.Value);
        Assert.Null(report.Conditions.Wind);
    }

    [Theory]
    [InlineData("")]
    [InlineData("METAR")]
    [InlineData("hello, world")]
    [InlineData("METAR XAND 991153Z 27015KT")]
    [InlineData("SPECI COR XAND")]
    public void Text_that_is_no_report_is_said_to_be_none(string text) => Assert.NotEmpty(MetarReport.Parse(text, Received).Unread);

    [Fact]
    public void What_was_not_observed_is_missing_and_no_complaint()
    {
        var report = MetarReport.Parse("METAR XAND 121153Z AUTO /////KT //// // ////// ///// Q////=", Received);
        Assert.Empty(report.Unread.Where(u => u.Group is not "/////"));
        Assert.True(report.IsVisibilityMissing);
        Assert.Null(report.Conditions.Wind);
        Assert.Null(report.Temperature);
        Assert.Null(report.Conditions.AltimeterSetting);
        Assert.Null(report.Conditions.Category);
    }

    [Fact]
    public void A_missing_report_is_known_as_such() => Assert.True(MetarReport.Parse("METAR XAND 121200Z NIL=", Received).IsMissing);

    [Fact]
    public void The_month_is_the_nearest_to_when_it_was_received()
    {
        Assert.Equal(Instant.FromUtc(2026, 2, 28, 23, 53), MetarReport.Parse("XAND 282353Z", Instant.FromUtc(2026, 3, 1, 0, 5)).Observed);
        Assert.Equal(Instant.FromUtc(2026, 3, 1, 0, 53), MetarReport.Parse("XAND 010053Z", Instant.FromUtc(2026, 2, 28, 23, 55)).Observed);
        Assert.Equal(Instant.FromUtc(2026, 1, 31, 12, 0), MetarReport.Parse("XAND 311200Z", Instant.FromUtc(2026, 2, 3, 0, 0)).Observed);
    }

    [Theory]
    [InlineData("2SM", "BKN020", FlightCategory.Instrument)]
    [InlineData("3SM", "BKN030", FlightCategory.MarginalVisual)]
    [InlineData("5SM", "BKN031", FlightCategory.MarginalVisual)]
    [InlineData("P5SM", "SCT001", FlightCategory.Visual)]
    [InlineData("M1SM", "SKC", FlightCategory.LowInstrument)]
    [InlineData("10SM", "VV004", FlightCategory.LowInstrument)]
    [InlineData("10SM", "OVC009", FlightCategory.Instrument)]
    public void The_category_is_the_worse_of_ceiling_and_visibility(string visibility, string sky, FlightCategory category) =>
        Assert.Equal(category, MetarReport.Parse($"XAND 121153Z 00000KT {visibility} {sky}", Received).Conditions.Category);

    [Fact]
    public void Any_text_at_all_is_read_without_an_exception()
    {
        string[] pieces = ["METAR", "XAND", "121153Z", "1", "1/0SM", "1/2SM", "R", "R09/", "WS", "VV", "QNH", "T", "99999KT", "360V361", "RMK", "////", "M/M",
            "\u00e9", "00/"];
        for (var i = 0; i < pieces.Length * pieces.Length * pieces.Length; i++)
        {
            var text = $"{pieces[i % pieces.Length]} {pieces[i / pieces.Length % pieces.Length]} {pieces[i / pieces.Length / pieces.Length]}";
            Assert.NotNull(MetarReport.Parse("XAND 121153Z " + text, Received).Conditions);
            Assert.NotNull(MetarReport.Parse(text, Received).Conditions);
        }
    }

    private static void AssertConverted(CheckRow row, string column, double? found)
    {
        Assert.Equal(row.Has(column), found is not null);
        if (found is { } value) Assert.Equal(row.Number(column), value, row.HalfDigit(column));
    }
}
