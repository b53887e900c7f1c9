using Batch.Flight.Week;
using Batch.Testing;

namespace Batch.Flight.Tests.Week;

public sealed class WeekWeatherTests
{
    private static readonly Instant Received = Instant.FromUtc(2026, 7, 14, 11, 0);

    [Fact]
    public void A_forecast_that_was_cancelled_is_used_no_more()
    {
        var weather = Weather("TAF XAND 141100Z 1412/1512 18010KT 9999 SCT030", "TAF AMD XAND 141300Z 1414/1512 CNL");
        Assert.NotNull(weather.ForecastAt("XAND", Instant.FromUtc(2026, 7, 14, 13, 30)));
        Assert.Null(weather.ForecastAt("XAND", Instant.FromUtc(2026, 7, 14, 14, 0)));
    }

    [Fact]
    public void Of_two_forecasts_of_one_time_the_later_in_the_book_holds() =>
        Assert.Equal("COR",
            Weather("TAF XAND 141100Z 1412/1512 18010KT 9999", "TAF COR XAND 141100Z 1412/1512 20010KT 9999").ForecastAt("XAND", Some.Noon)?.Amendment);

    [Fact]
    public void A_report_and_a_forecast_in_one_cell_are_both_read()
    {
        var weather =
            Weather("METAR XAND 141150Z 27015KT 9999 FEW030 18/09 Q1013=\nTAF XAND 141100Z 1412/1512 18010KT 9999 SCT030\n  TEMPO 1412/1416 3000 BR=");
        Assert.Empty(weather.Problems);
        Assert.Equal(270, weather.ReportAt("XAND", Some.Noon)?.Conditions.Wind?.DirectionDeg);
        Assert.Equal(2, weather.ForecastAt("XAND", Some.Noon)?.Groups.Length);
    }

    [Fact]
    public void What_a_report_leaves_out_the_forecast_gives()
    {
        var surface = Weather("METAR XAND 141150Z AUTO /////KT 9999 18/09 Q////", "TAF XAND 141100Z 1412/1512 18010KT 9999 SCT030 QNH2992INS")
            .SurfaceAt(Some.Xand, Some.Noon);
        Assert.Equal((180, 10, 18), (surface.Air.WindFrom.Value, surface.Air.WindSpeed.Value, surface.Air.Temperature.Value));
        Assert.Equal(1013.2, surface.AltimeterSetting?.Value ?? 0, 0.1);
        Assert.Contains("Wind at XAND by forecast.", surface.Sources);
        Assert.Contains("Temperature at XAND by report.", surface.Sources);
    }

    [Fact]
    public void A_variable_wind_gives_no_headwind_though_there_is_one_aloft()
    {
        var surface = WeekWeather.Of(Week(["METAR XAND 141150Z VRB04KT 9999 18/09 Q1013"]) with { Winds = [.. Some.Reports(250, 30)] })
            .SurfaceAt(Some.Xand, Some.Noon);
        Assert.Equal(0, surface.Air.WindSpeed.Value);
        Assert.Contains("Wind at XAND by report: variable, computed as calm.", surface.Sources);
    }

    [Fact]
    public void A_wind_aloft_is_no_wind_at_the_ground()
    {
        var aloft = WeekWeather.Of(
            Week([]) with { Winds = [.. Some.Reports(270, 30).Select(report => report with { Altitude = report.Altitude + new Feet(3000) })] });
        Assert.True(aloft.SurfaceAt(Some.Xand, Some.Noon).IsWindFromAloft);
        Assert.False(WeekWeather.Of(Week([]) with { Winds = [.. Some.Reports(270, 30)] }).SurfaceAt(Some.Xand, Some.Noon).IsWindFromAloft);
        Assert.False(Weather().SurfaceAt(Some.Xand, Some.Noon).IsWindFromAloft);
        Assert.False(WeekWeather.Of(Week(["METAR XAND 141150Z 27015KT 9999 18/09 Q1013"]) with
        {
            Winds = [.. Some.Reports(270, 30)
            .Select(report => report with { Altitude = report.Altitude + new Feet(3000) })]
        })
            .SurfaceAt(Some.Xand, Some.Noon).IsWindFromAloft);
    }

    private static WeekWeather Weather(params string[] bulletins) => WeekWeather.Of(Week(bulletins));

    private static OperatorWeek Week(string[] bulletins) => Some.Week([Some.Leg(1, "XAND", "XBEL", Some.Noon, aboardLb: 0)]) with
    {
        Bulletins = [.. bulletins.Select((text, i) => new RawBulletin(text, Received, SomePlans.Row("week.xlsx/Bulletins", i + 2)))],
    };
}
