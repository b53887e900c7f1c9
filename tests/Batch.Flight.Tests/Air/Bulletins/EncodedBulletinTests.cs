using System.Globalization;
using Batch.Flight.Air.Bulletins;
using CsCheck;

namespace Batch.Flight.Tests.Air.Bulletins;

/// <summary>Weather written as a bulletin by the code tables (WMO-No. 306, FM 15 and FM 51; FMH-1; AC 00-45H for winds aloft) is read back as it was.</summary>
public sealed class EncodedBulletinTests
{
    private static readonly Instant Month = Instant.FromUtc(2026, 3, 1, 0, 0);

    private static readonly Gen<SurfaceWind> Winds = Gen.Select(Gen.Int[-1, 36], Gen.Int[0, 120], Gen.Int[0, 60], Of("KT", "MPS", "KMH"))
        .Select((tens, speed, more, unit) => new SurfaceWind
        {
            DirectionDeg = tens < 0 ? null : speed == 0 ? 0 : Math.Max(1, tens) * 10,
            IsVariable = tens < 0,
            ReportedSpeed = speed,
            ReportedGust = more > 10 && speed > 0 ? speed + more : null,
            Unit = unit,
        });

    private static readonly Gen<(string Text, double Metres, VisibilityLimit Limit)> Visibilities = Gen.OneOf(
        Gen.Int[0, 98].Select(hundreds => (Text($"{hundreds * 100:0000}"), hundreds * 100.0, VisibilityLimit.Exact)),
        Gen.Const(("9999", 10_000.0, VisibilityLimit.AtLeast)),
        Gen.Int[1, 20].Select(miles => (Text($"{miles}SM"), miles * 1609.344, VisibilityLimit.Exact)),
        Gen.Const(("P6SM", 6 * 1609.344, VisibilityLimit.MoreThan)),
        Gen.Select(Gen.Int[0, 3], Gen.Int[1, 7], Gen.Bool).Select((whole, eighths, less) =>
        {
            var isLess = less && whole == 0;
            var (above, below) = eighths % 4 == 0 ? (eighths / 4, 2) : eighths % 2 == 0 ? (eighths / 2, 4) : (eighths, 8);
            return (Text($"{(isLess ? "M" : "")}{(whole > 0 ? whole.ToString(CultureInfo.InvariantCulture) + " " : "")}{above}/{below}SM"),
                (whole + eighths / 8.0) * 1609.344, isLess ? VisibilityLimit.LessThan : VisibilityLimit.Exact);
        }));

    private static readonly Gen<CloudLayer[]> Skies = Gen.OneOf(
        Of(CloudAmount.SkyClear, CloudAmount.Clear, CloudAmount.NoneSignificant, CloudAmount.NoneDetected)
            .Select(amount => new[] { new CloudLayer(amount, null, "") }),
        Gen.Select(Of(CloudAmount.Few, CloudAmount.Scattered, CloudAmount.Broken, CloudAmount.Overcast, CloudAmount.VerticalVisibility), Gen.Int[-1, 250],
            Of("", "CB", "TCU"))
            .Select((amount, hundreds, kind) =>
                new CloudLayer(amount, hundreds < 0 ? null : new Feet(hundreds * 100), amount == CloudAmount.VerticalVisibility ? "" : kind)).Array[1, 4]);

    private static readonly Gen<string[]> Weathers = Gen.Select(Of("", "-", "+"), Of("", "SH", "TS", "FZ", "BL"), Of("RA", "SN", "DZ", "RASN", "GS"))
        .Select((strength, description, phenomenon) => strength + description + phenomenon).Array[0, 3];

    [Fact]
    public void A_report_is_read_as_it_was_written() =>
        Gen.Select(Winds, Visibilities, Weathers, Skies, Gen.Select(Gen.Int[-60, 50], Gen.Int[0, 20], Gen.Int[870, 1085]), Gen.Int[0, 31 * 24 * 60 - 1])
            .Sample((wind, visibility, weather, sky, air, minutes) =>
        {
            var at = Month + Duration.FromMinutes(minutes);
            var dew = Math.Max(-99, air.Item1 - air.Item2);
            var report = MetarReport.Parse(
                Text($"METAR XAND {Time(at)}Z {Wind(wind)} {visibility.Text} {string.Join(' ', weather)} {Sky(sky)} {Degrees(air.Item1)}/{Degrees(dew)} Q{air.Item3:0000}="),
                at + Duration.FromHours(2));
            Assert.Empty(report.Unread);
            Assert.Equal(at, report.Observed);
            Same(wind, visibility, weather, sky, report.Conditions);
            Assert.Equal((air.Item1, dew, air.Item3),
                ((int)(report.Temperature?.Value ?? 0), (int)(report.DewPoint?.Value ?? 0), (int)(report.Conditions.AltimeterSetting?.Value ?? 0)));
        });

    [Fact]
    public void A_forecast_is_read_as_it_was_written_and_holds_from_hour_to_hour() =>
        Gen.Select(Gen.Select(Winds, Visibilities, Weathers, Skies).Array[1, 5], Gen.Int[0, 31 * 24 - 1], Gen.Int[0, 100]).Sample((parts, startHour, kinds) =>
        {
            var start = Month + Duration.FromHours(startHour);
            var end = start + Duration.FromHours(6 * parts.Length);
            var text = Text($"TAF XAND {Time(start - Duration.FromMinutes(40))}Z {Hour(start)}/{End(end)} {Conditions(parts[0])}");
            for (var i = 1; i < parts.Length; i++)
            {
                var from = start + Duration.FromHours(6 * i);
                text += (kinds + i) % 2 == 0
                    ? Text($"\n  FM{Time(from)} {Conditions(parts[i])}")
                    : Text($"\n  TEMPO {Hour(from)}/{End(from + Duration.FromHours(3))} {Conditions(parts[i])}");
            }

            var report = TafReport.Parse(text, start);
            Assert.Empty(report.Unread);
            Assert.Equal((start, end, parts.Length), (report.ValidFrom, report.ValidTo, report.Groups.Length));
            var prevailing = 0;
            for (var i = 0; i < parts.Length; i++)
            {
                var conditions = report.At(start + Duration.FromHours(6 * i + 1)) ?? throw new InvalidOperationException("not covered");
                Same(parts[i].Item1, parts[i].Item2, parts[i].Item3, parts[i].Item4, report.Groups[i].Conditions);
                var isTemporary = i > 0 && (kinds + i) % 2 != 0;
                if (!isTemporary) prevailing = i;
                Assert.Equal(isTemporary ? 1 : 0, conditions.Temporary.Length);
                Same(parts[prevailing].Item1, parts[prevailing].Item2, parts[prevailing].Item3, parts[prevailing].Item4, conditions.Prevailing);
            }

            Assert.Null(report.At(end));
        });

    [Fact]
    public void Winds_aloft_are_read_as_they_were_written() =>
        Gen.Select(Gen.Int[1, 36], Gen.Int[0, 250], Gen.Int[-70, 30]).Array[9, 9].Sample(levels =>
        {
            int[] altitudes = [3000, 6000, 9000, 12_000, 18_000, 24_000, 30_000, 34_000, 39_000];
            var line = "XYZ";
            for (var i = 0; i < levels.Length; i++)
            {
                var (tens, speed, degrees) = levels[i];
                var isLight = speed < 5;
                var wind = isLight ? "9900" : Text($"{(speed >= 100 ? tens + 50 : tens):00}{Math.Min(speed, 199) % 100:00}");
                if (altitudes[i] > 24_000) degrees = Math.Min(degrees, 0);
                var temperature = altitudes[i] == 3000 ? "" : altitudes[i] > 24_000 ? Text($"{Math.Abs(degrees):00}") : Text($"{degrees:+00;-00}");
                line += " " + wind + temperature;
            }

            var bulletin = WindsAloftBulletin.Parse($"DATA BASED ON 151200Z\nVALID 151800Z   FOR USE 1400-2100Z. TEMPS NEG ABV 24000\n\nFT  3000    6000    9000   12000   18000   24000  30000  34000  39000\n{line}", Month + Duration.FromDays(14));
            Assert.Empty(bulletin.Unread);
            var cells = Assert.Single(bulletin.Stations).Cells;
            for (var i = 0; i < levels.Length; i++)
            {
                var (tens, speed, degrees) = levels[i];
                Assert.Equal(speed < 5, cells[i].IsLightAndVariable);
                Assert.Equal(speed < 5 ? null : Math.Min(speed, 199), cells[i].Wind?.Speed.Value);
                if (speed >= 5) Assert.Equal(tens * 10 % 360, cells[i].Wind?.From.Value);
                Assert.Equal(speed >= 199, cells[i].SpeedAtLeast);
                Assert.Equal(altitudes[i] == 3000 ? null : altitudes[i] > 24_000 ? Math.Min(degrees, 0) : degrees, cells[i].Temperature?.Value + 0);
            }
        });

    private static void Same(
        SurfaceWind wind, (string Text, double Metres, VisibilityLimit Limit) visibility, string[] weather, CloudLayer[] sky, WeatherConditions read)
    {
        Assert.Equal(wind, read.Wind);
        Assert.Equal((visibility.Text, visibility.Limit), (read.Visibility?.Text, read.Visibility?.Limit));
        Assert.Equal(visibility.Metres, read.Visibility?.Metres ?? -1, 1e-6);
        Assert.Equal(weather, read.Weather);
        Assert.Equal(sky, read.Clouds);
    }

    private static string Conditions(
        (SurfaceWind Wind, (string Text, double Metres, VisibilityLimit Limit) Visibility, string[] Weather, CloudLayer[] Sky) part) =>
        $"{Wind(part.Wind)} {part.Visibility.Text} {string.Join(' ', part.Weather)} {Sky(part.Sky)}";

    private static string Wind(SurfaceWind wind) =>
        Text($"{(wind.DirectionDeg is { } direction ? Text($"{direction:000}") : "VRB")}{wind.ReportedSpeed:00}{(wind.ReportedGust is { } gust ? Text($"G{gust:00}") : "")}{wind.Unit}");

    private static string Sky(CloudLayer[] sky) => string.Join(' ',
        sky.Select(layer => layer.Amount is CloudAmount.SkyClear or CloudAmount.Clear or CloudAmount.NoneSignificant or CloudAmount.NoneDetected
        ? layer.Word
        : layer.Word + (layer.Height is { } height ? Text($"{height.Value / 100:000}") : "///") + layer.Kind));

    private static string Degrees(int degrees) => Text($"{(degrees < 0 ? "M" : "")}{Math.Abs(degrees):00}");

    private static string Time(Instant at) => at.InUtc().ToString("ddHHmm", CultureInfo.InvariantCulture);

    private static string Hour(Instant at) => at.InUtc().ToString("ddHH", CultureInfo.InvariantCulture);

    // A period that ends at midnight ends at 24 of the day before.
    private static string End(Instant at) =>
        at.InUtc().Hour > 0 ? Hour(at) : (at - Duration.FromHours(1)).InUtc().ToString("dd", CultureInfo.InvariantCulture) + "24";

    private static Gen<T> Of<T>(params T[] items) => Gen.Int[0, items.Length - 1].Select(i => items[i]);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
