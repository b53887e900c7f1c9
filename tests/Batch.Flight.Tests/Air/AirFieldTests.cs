using Batch.Flight.Air;
using Batch.Flight.Earth;
using CsCheck;

namespace Batch.Flight.Tests.Air;

public sealed class AirFieldTests
{
    private static readonly Instant Noon = Instant.FromUtc(2026, 5, 12, 12, 0);
    private static readonly GeoPoint Here = GeoPoint.Of(40, -100);

    [Fact]
    public void Nothing_known_is_still_air_and_standard_temperature_and_says_so()
    {
        var sample = new AirField([]).At(Here, new Feet(10000), Noon);
        Assert.Equal(new AirSample(TrueDegrees.Of(0), Knots.Zero, sample.Temperature, true, true), sample);
        Assert.Equal(StandardAtmosphere.TemperatureAt(new Feet(10000)).Value, sample.Temperature.Value, 1e-9);
    }

    [Fact]
    public void Between_levels_the_components_are_linear_not_the_direction()
    {
        var field = new AirField([Report(Here, 6000, 350, 20, 10), Report(Here, 10000, 10, 20, 2)]);
        var middle = field.At(Here, new Feet(8000), Noon);
        Assert.Equal(0, Math.IEEERemainder(middle.WindFrom.Value, 360), 1e-9);
        Assert.Equal(20 * Math.Cos(10 * Math.PI / 180), middle.WindSpeed.Value, 1e-9);
        Assert.Equal(6, middle.Temperature.Value, 1e-9);
        Assert.False(middle.WindAssumed || middle.TemperatureAssumed);
        var quarter = field.At(Here, new Feet(7000), Noon);
        Assert.Equal(8, quarter.Temperature.Value, 1e-9);
    }

    [Fact]
    public void Opposite_winds_cancel_to_a_calm_between_them()
    {
        var field = new AirField([Report(Here, 6000, 90, 20, 0), Report(Here, 10000, 270, 20, 0)]);
        Assert.Equal(Knots.Zero, field.At(Here, new Feet(8000), Noon).WindSpeed);
    }

    [Fact]
    public void Beyond_the_levels_wind_is_held_and_temperature_follows_the_standard()
    {
        var field = new AirField([Report(Here, 6000, 240, 20, 10), Report(Here, 30000, 270, 60, -40)]);
        var below = field.At(Here, new Feet(-2000), Noon);
        Assert.Equal((240, 20), (Math.Round(below.WindFrom.Value, 9), Math.Round(below.WindSpeed.Value, 9)));
        Assert.Equal(10 + 8000 * 0.3048 * 0.0065, below.Temperature.Value, 1e-9);
        var above = field.At(Here, new Feet(45000), Noon);
        Assert.Equal((270, 60), (Math.Round(above.WindFrom.Value, 9), Math.Round(above.WindSpeed.Value, 9)));
        Assert.Equal(-40 - (11000 - 30000 * 0.3048) * 0.0065, above.Temperature.Value, 1e-9);
    }

    [Fact]
    public void Between_two_places_the_nearer_counts_by_the_square_of_its_nearness()
    {
        var west = GeoPoint.Of(0, 0);
        var east = GeoPoint.Of(0, 3);
        var field = new AirField([Report(west, 9000, 360, 30, 0), Report(east, 9000, 360, 60, 9)]);
        var third = field.At(GeoPoint.Of(0, 1), new Feet(9000), Noon);
        Assert.Equal((4 * 30 + 60) / 5.0, third.WindSpeed.Value, 1e-9);
        Assert.Equal(9 / 5.0, third.Temperature.Value, 1e-9);
        Assert.Equal(60, field.At(east, new Feet(9000), Noon).WindSpeed.Value, 1e-9);
        Assert.Equal(30, field.At(west, new Feet(9000), Noon).WindSpeed.Value, 1e-9);
    }

    [Fact]
    public void Only_the_nearest_four_places_count()
    {
        var near = Enumerable.Range(0, 4).Select(i => Report(GeoPoint.Of(40 + (i < 2 ? 1 : -1), -100 + (i % 2 == 0 ? 1 : -1)), 9000, 90, 10, 0));
        var far = Enumerable.Range(0, 40).Select(i => Report(GeoPoint.Of(44, -120 + i), 9000, 270, 100, 30));
        var sample = new AirField(far.Concat(near)).At(Here, new Feet(9000), Noon);
        Assert.Equal(10, sample.WindSpeed.Value, 1e-9);
        Assert.Equal(0, sample.Temperature.Value, 1e-9);
    }

    [Fact]
    public void Places_are_near_across_the_antimeridian()
    {
        var field = new AirField([Report(GeoPoint.Of(0, 179), 9000, 90, 10, 0), Report(GeoPoint.Of(0, 170), 9000, 90, 90, 0)]);
        Assert.InRange(field.At(GeoPoint.Of(0, -179), new Feet(9000), Noon).WindSpeed.Value, 10, 14);
    }

    [Fact]
    public void A_report_for_everywhere_counts_only_where_no_place_reports()
    {
        var field = new AirField(
        [
            Report(null, 9000, 90, 50, 5),
            Report(Here, 9000, 180, 10, 0) with { From = Noon, To = Noon + Duration.FromHours(6) },
        ]);
        Assert.Equal(10, field.At(GeoPoint.Of(-30, 20), new Feet(9000), Noon).WindSpeed.Value, 1e-9);
        Assert.Equal(50, field.At(Here, new Feet(9000), Noon + Duration.FromHours(6)).WindSpeed.Value, 1e-9);
        Assert.Equal(50, field.At(Here, new Feet(9000), Noon - Duration.Epsilon).WindSpeed.Value, 1e-9);
    }

    [Fact]
    public void A_report_is_valid_from_its_start_to_before_its_end()
    {
        var field = new AirField([Report(Here, 9000, 180, 10, 0) with { From = Noon, To = Noon + Duration.FromHours(1) }]);
        Assert.False(field.At(Here, new Feet(9000), Noon).WindAssumed);
        Assert.True(field.At(Here, new Feet(9000), Noon - Duration.Epsilon).WindAssumed);
        Assert.True(field.At(Here, new Feet(9000), Noon + Duration.FromHours(1)).WindAssumed);
    }

    [Fact]
    public void Of_several_valid_reports_the_one_that_starts_latest_wins_whatever_their_order()
    {
        AirReport[] reports =
        [
            Report(Here, 9000, 180, 10, 0),
            Report(Here, 9000, 180, 20, 0) with { From = Noon - Duration.FromHours(6) },
            Report(Here, 9000, 180, 30, 0) with { From = Noon - Duration.FromHours(1), To = Noon + Duration.FromHours(1) },
        ];
        foreach (var order in new[] { reports, [.. reports.Reverse()] })
        {
            var field = new AirField(order);
            Assert.Equal(30, field.At(Here, new Feet(9000), Noon).WindSpeed.Value, 1e-9);
            Assert.Equal(20, field.At(Here, new Feet(9000), Noon + Duration.FromHours(2)).WindSpeed.Value, 1e-9);
            Assert.Equal(10, field.At(Here, new Feet(9000), Noon - Duration.FromHours(9)).WindSpeed.Value, 1e-9);
        }
    }

    [Fact]
    public void A_place_without_temperature_leaves_temperature_to_the_others()
    {
        var field = new AirField([Report(Here, 9000, 180, 10, null), Report(GeoPoint.Of(45, -100), 9000, 180, 30, -7)]);
        var sample = field.At(Here, new Feet(9000), Noon);
        Assert.Equal(10, sample.WindSpeed.Value, 1e-9);
        Assert.Equal(-7, sample.Temperature.Value, 1e-9);
        var windOnly = new AirField([Report(Here, 9000, 180, 10, null)]).At(Here, new Feet(9000), Noon);
        Assert.Equal((false, true), (windOnly.WindAssumed, windOnly.TemperatureAssumed));
        Assert.Equal(StandardAtmosphere.TemperatureAt(new Feet(9000)).Value, windOnly.Temperature.Value, 1e-9);
    }

    [Fact]
    public void A_report_that_is_no_number_is_refused()
    {
        Assert.Throws<ArgumentException>(() => new AirField([Report(Here, double.NaN, 180, 10, 0)]));
        Assert.Throws<ArgumentException>(() => new AirField([Report(Here, 9000, 180, -1, 0)]));
        Assert.Throws<ArgumentException>(() => new AirField([Report(Here, 9000, 180, 10, double.PositiveInfinity)]));
    }

    [Fact]
    public void The_field_never_blows_harder_than_its_reports_nor_leaves_their_temperatures() =>
        Gen.Select(
            Gen.Select(Gen.Double[30, 50], Gen.Double[-120, -80], Gen.Int[0, 4], Gen.Double[0, 360], Gen.Double[0, 150])
                .Select((lat, lon, level, from, speed) => Report(GeoPoint.Of(lat, lon), 3000 + level * 6000, from, speed, 10 - level * 12)).Array[1, 12],
            Gen.Double[25, 55],
            Gen.Double[3000, 27000]).Sample((reports, latDeg, altitudeFt) =>
            {
                reports = [.. reports.DistinctBy(r => (r.Place, r.Altitude))]; // of two for one level the later listed wins
                var sample = new AirField(reports).At(GeoPoint.Of(latDeg, -101), new Feet(altitudeFt), Noon);
                Assert.InRange(sample.WindSpeed.Value, 0, reports.Max(r => r.WindSpeed.Value) + 1e-9);
                Assert.InRange(sample.Temperature.Value, -110, 70);
                Assert.Equal(sample, new AirField(reports.Reverse()).At(GeoPoint.Of(latDeg, -101), new Feet(altitudeFt), Noon));
            });

    [Fact]
    public void The_field_is_the_plain_weighted_mean_of_the_nearest_four() =>
        Gen.Select(
            Gen.Select(Gen.Double[-80, 80], Gen.Double[-180, 180], Gen.Double[0, 150], Gen.Double[-40, 30])
                .Select((lat, lon, speed, temperature) => Report(GeoPoint.Of(lat, lon), 9000, 90, speed, temperature)).Array[1, 40],
            Gen.Double[-85, 85],
            Gen.Double[-180, 180]).Sample((reports, latDeg, lonDeg) =>
            {
                var here = GeoPoint.Of(latDeg, lonDeg);
                var nearest = reports.Select(r => (Report: r, Arc: Arc(here, r.Place ?? default))).OrderBy(r => r.Arc).ToArray();
                var isTie = nearest.Length > 4 && nearest[4].Arc - nearest[3].Arc < 1e-9; // which of the two is fourth is open
                nearest = [.. nearest.Take(4)];
                if (isTie || nearest[0].Arc < 1e-5 || reports.DistinctBy(r => r.Place).Count() < reports.Length) return;
                var weights = nearest.Sum(r => 1 / (r.Arc * r.Arc));
                var sample = new AirField(reports).At(here, new Feet(9000), Noon);
                Assert.Equal(nearest.Sum(r => r.Report.WindSpeed.Value / (r.Arc * r.Arc)) / weights, sample.WindSpeed.Value, 1e-6);
                Assert.Equal(nearest.Sum(r => (r.Report.Temperature?.Value ?? 0) / (r.Arc * r.Arc)) / weights, sample.Temperature.Value, 1e-6);
            },
            iter: 2000);

    [Fact]
    public void Sampling_takes_no_memory()
    {
        var field = new AirField(Enumerable.Range(0, 50).Select(i => Report(GeoPoint.Of(30 + i % 7, -120 + i), 9000, 90, 10, i % 3 == 0 ? null : 5)));
        field.At(Here, new Feet(9000), Noon);
        var before = GC.GetAllocatedBytesForCurrentThread();
        var sum = 0.0;
        for (var i = 0; i < 1000; i++) sum += field.At(Here, new Feet(9000 + i), Noon).WindSpeed.Value;
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(sum > 0);
    }

    // The haversine formula.
    private static double Arc(GeoPoint a, GeoPoint b)
    {
        const double Rad = Math.PI / 180;
        var (halfLat, halfLon) = ((b.LatitudeDeg - a.LatitudeDeg) * Rad / 2, (b.LongitudeDeg - a.LongitudeDeg) * Rad / 2);
        var h = Math.Sin(halfLat) * Math.Sin(halfLat) + Math.Cos(a.LatitudeDeg * Rad) * Math.Cos(b.LatitudeDeg * Rad) * Math.Sin(halfLon) * Math.Sin(halfLon);
        return 2 * Math.Asin(Math.Min(1, Math.Sqrt(h)));
    }

    [Fact]
    public void The_square_of_an_arc_by_its_series_is_that_by_the_arcsine()
    {
        for (var arc = 1e-6; arc < 3; arc *= 1.01)
        {
            var chord = 2 * Math.Sin(arc / 2);
            Assert.Equal(1, AirSlice.ArcSquared(chord * chord) / (arc * arc), 4e-15);
        }
    }

    private static AirReport Report(GeoPoint? place, double altitudeFt, double fromDeg, double speedKt, double? temperatureC) => new()
    {
        Place = place,
        Altitude = new Feet(altitudeFt),
        WindFrom = TrueDegrees.Of(fromDeg),
        WindSpeed = new Knots(speedKt),
        Temperature = temperatureC is { } t ? new Celsius(t) : null,
    };
}
