using System.Globalization;
using Batch.Flight.Air.Bulletins;

namespace Batch.Flight.Tests.Air.Bulletins;

/// <summary>
/// Forecasts with times of the form of before November 2008. Decoded by hand from WMO-No. 306, FM 51, as it stood then: validity as day and two hours, changes
/// as two hours, FM as hours and minutes or hours.
/// </summary>
public sealed class OldTafTests
{
    private static readonly Instant Received = Instant.FromUtc(2007, 9, 12, 17, 30);

    // The forecast of an FAA knowledge-test question (Instrument Rating, alternate airport for a flight to ATL).
    private const string Atlanta =
        "TAF KATL 121720Z 121818 20012KT 5SM HZ BKN030 FM2000 3SM TSRA OVC025CB FM2200 33015G20KT P6SM BKN015 OVC040 BECMG 0608 02008KT BKN040 BECMG 1012 00000KT P6SM CLR=";

    private static string Text(Instant? moment) => moment?.ToString("ddHHmm", CultureInfo.InvariantCulture) ?? "";

    [Fact]
    public void The_day_comes_from_the_validity_and_each_hour_once_in_it()
    {
        var report = TafReport.Parse(Atlanta, Received);
        Assert.Empty(report.Unread);
        Assert.Equal((Instant.FromUtc(2007, 9, 12, 17, 20), Instant.FromUtc(2007, 9, 12, 18, 0), Instant.FromUtc(2007, 9, 13, 18, 0)),
            (report.Issued, report.ValidFrom, report.ValidTo));
        Assert.Equal(["121800-131800", "122000-", "122200-", "130600-130800", "131000-131200"],
            report.Groups.Select(group => $"{Text(group.From)}-{Text(group.To)}"));
        var half = report.At(Instant.FromUtc(2007, 9, 12, 20, 30))!.Prevailing;
        Assert.Equal((3 * 1609.344, 2500), (half.Visibility!.Metres, half.Ceiling!.Value.Value));
        Assert.Equal(4000, report.At(Instant.FromUtc(2007, 9, 13, 8, 0))!.Prevailing.Ceiling!.Value.Value);
        Assert.Null(report.At(Instant.FromUtc(2007, 9, 13, 12, 0))!.Prevailing.Ceiling);
    }

    [Theory]
    [InlineData("TAF XAND 122230Z 130024 20012KT 9999", "130000", "140000")]
    [InlineData("TAF XAND 122230Z 0024 20012KT 9999", "130000", "140000")]
    [InlineData("TAF XAND 121100Z 1221 20012KT 9999", "121200", "122100")]
    [InlineData("TAF XAND 121720 121818 20012KT 9999", "121800", "131800")]
    [InlineData("TAF XAND 121818 20012KT 9999", "121800", "131800")]
    [InlineData("TAF AMD XAND 122115Z 122118 20012KT 9999", "122100", "131800")]
    public void The_validity_is_read_in_the_forms_there_were(string text, string from, string to)
    {
        var report = TafReport.Parse(text, Received);
        Assert.Empty(report.Unread);
        Assert.Equal((from, to), (Text(report.ValidFrom), Text(report.ValidTo)));
        Assert.Equal("9999", Assert.Single(report.Groups).Conditions.Visibility?.Text);
    }

    [Fact]
    public void A_validity_runs_over_the_end_of_the_month()
    {
        var report = TafReport.Parse("TAF XAND 311700Z 311818 20012KT CAVOK BECMG 2301 1500 BR", Instant.FromUtc(2007, 8, 31, 17, 0));
        Assert.Equal((Instant.FromUtc(2007, 8, 31, 18, 0), Instant.FromUtc(2007, 9, 1, 18, 0)), (report.ValidFrom, report.ValidTo));
        Assert.Equal((Instant.FromUtc(2007, 8, 31, 23, 0), Instant.FromUtc(2007, 9, 1, 1, 0)), (report.Groups[1].From, report.Groups[1].To));
    }

    // Behind a head four digits are hours; the visibility follows them.
    [Fact]
    public void Changes_and_temperatures_take_hours_without_a_day()
    {
        var report = TafReport.Parse(
            "XAND 121720Z 121818 20012KT 6000 FM20 3000 TEMPO 2202 1000 TSRA PROB40 TEMPO 0206 0500 FG PROB30 0608 0300 FG TX32/21Z TNM02/06Z", Received);
        Assert.Empty(report.Unread);
        Assert.Equal(["121800-131800", "122000-", "122200-130200", "130200-130600", "130600-130800"],
            report.Groups.Select(group => $"{Text(group.From)}-{Text(group.To)}"));
        Assert.Equal(["6000", "3000", "1000", "0500", "0300"], report.Groups.Select(group => group.Conditions.Visibility?.Text));
        Assert.Equal([(32d, "122100"), (-2d, "130600")], report.Temperatures.Select(temperature => (temperature.Temperature.Value, Text(temperature.At))));
        Assert.Equal(BulletinKind.Forecast, BulletinSort.KindOf("XAND 121720Z 121818 20012KT 6000"));
    }

    [Theory]
    [InlineData("TAF XAND 121720Z 121899 20012KT 9999", "121899")]
    [InlineData("TAF XAND 121720Z 129918 20012KT 9999", "129918")]
    [InlineData("TAF XAND 121720Z 121818 20012KT 9999 TEMPO 3000 BR", "3000")]
    [InlineData("TAF XAND 121720Z 121818 20012KT 9999 BECMG 06 3000", "06")]
    [InlineData("TAF XAND 121720Z 121818 20012KT 9999 FM2575 3000", "FM2575")]
    public void Hours_that_are_none_are_named(string text, string group) =>
        Assert.Contains(TafReport.Parse(text, Received).Unread, unread => unread.Group == group);

    // A form of today keeps its days: hours alone could lie on either day of it.
    [Fact]
    public void A_forecast_of_today_with_hours_alone_is_not_guessed()
    {
        var report = TafReport.Parse("TAF XAND 121720Z 1218/1324 20012KT 9999 FM2000 3000 BR", Received);
        Assert.Equal("FM2000", Assert.Single(report.Unread).Group);
        Assert.Null(report.Groups[1].From);
    }

    [Theory]
    [InlineData("20012")]
    [InlineData("20012G25")]
    [InlineData("VRB05")]
    [InlineData("00000")]
    public void A_wind_without_its_unit_is_named_and_not_used(string wind)
    {
        var forecast = TafReport.Parse($"TAF XAND 121720Z 1218/1324 {wind} 9999 BKN030", Received);
        Assert.Equal((wind, "a wind without its unit (KT, MPS or KMH), so it is not used"), (Assert.Single(forecast.Unread).Group, forecast.Unread[0].Why));
        Assert.Null(forecast.Groups[0].Conditions.Wind);
        Assert.Equal("9999", forecast.Groups[0].Conditions.Visibility?.Text);
        var report = MetarReport.Parse($"METAR XAND 121720Z {wind} 9999 BKN030 15/10 Q1013", Received);
        Assert.Equal((wind, "a wind without its unit (KT, MPS or KMH), so it is not used"), (Assert.Single(report.Unread).Group, report.Unread[0].Why));
        Assert.Null(report.Conditions.Wind);
    }
}
