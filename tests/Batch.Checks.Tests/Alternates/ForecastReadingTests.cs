using Batch.Flight.Air.Bulletins;

namespace Batch.Checks.Tests.Alternates;

public sealed class ForecastReadingTests
{
    private static readonly Instant Received = Instant.FromUtc(2026, 7, 14, 11, 0);

    [Fact]
    public void A_hidden_sky_of_unknown_height_counts_as_no_ceiling_to_fly_under()
    {
        var worst = Worst(14, 13, "TAF XAND 141100Z 1412/1512 18010KT 9999 SCT030 TEMPO 1412/1416 0400 FG VV///");
        Assert.Equal((0, 400), (worst?.Ceiling?.Value, worst?.VisibilityMetres));
    }

    [Fact]
    public void Of_several_forecasts_each_time_has_the_last_one_that_covers_it()
    {
        string[] texts = ["TAF XAND 141100Z 1412/1512 18010KT 9999 BKN010", "TAF XAND 150500Z 1506/1606 18010KT 9999 BKN030",
            "TAF AMD XAND 151700Z 1518/1606 CNL"];
        Assert.Equal(1000, Worst(14, 13, texts)?.Ceiling?.Value);
        Assert.Equal(3000, Worst(15, 10, texts)?.Ceiling?.Value);
        Assert.Null(Worst(15, 20, texts));
        Assert.Equal(Instant.FromUtc(2026, 7, 15, 5, 0), ForecastReading.Of(texts.Select(text => TafReport.Parse(text, Received))).Issues["XAND"].Issued);
    }

    private static ForecastPeriod? Worst(int day, int hour, params string[] texts)
    {
        var at = Instant.FromUtc(2026, 7, day, hour, 0);
        return ForecastReading.Of(texts.Select(text => TafReport.Parse(text, Received))).WorstBetween("XAND", at, at + Duration.FromMinutes(30));
    }
}
