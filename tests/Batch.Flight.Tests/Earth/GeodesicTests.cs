using Batch.Flight.Earth;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Earth;

public sealed class GeodesicTests
{
    private static readonly CheckFile Lines = CheckFile.Read("geodesic-test-lines.csv");
    private static readonly CheckFile Published = CheckFile.Read("geodesic-published.csv");
    private static readonly CheckFile Pairs = CheckFile.Read("geodesic-pairs.csv");

    public static IEnumerable<object[]> LineIds => Lines.Ids();

    public static IEnumerable<object[]> PublishedIds => Published.Ids();

    public static IEnumerable<object[]> PairIds => Pairs.Ids();

    [Theory]
    [MemberData(nameof(LineIds))]
    public void A_test_line_is_found_both_ways_within_a_millimetre(string id)
    {
        var row = Lines[id];
        var (from, to) = (Place(row, "1"), Place(row, "2"));
        var inverse = Geodesic.Inverse(from, to);
        Assert.Equal(row.Number("distance_m"), inverse.DistanceM, 0.0001);
        var direct = Geodesic.DirectWithAzimuth(from, row.Number("azi1"), row.Number("distance_m"));
        AssertSamePlace(to, direct.Point, 0.0001);
        if (Math.Abs(row.Number("lat2")) < 89.9) AssertSameAngle(row.Number("azi2"), direct.AzimuthDeg, 1e-8);
        AssertArrives(from, inverse, to, 0.001);

        var back = Geodesic.DirectWithAzimuth(to, row.Number("azi2"), -row.Number("distance_m"));
        AssertSamePlace(from, back.Point, 0.001);
        if (double.Abs(row.Number("arc_deg") - 180) < 1e-9) return; // several shortest lines
        var turnM = 6371000 * Math.Max(1e-9, Math.Sin(row.Number("arc_deg") * Math.PI / 180));
        var azimuthTolerance = Math.Max(1e-9, 0.001 / turnM * 180 / Math.PI);
        AssertSameAngle(row.Number("azi1"), inverse.InitialAzimuthDeg, azimuthTolerance);
        AssertSameAngle(row.Number("azi2"), inverse.FinalAzimuthDeg, azimuthTolerance);
    }

    [Theory]
    [MemberData(nameof(PublishedIds))]
    public void A_published_line_is_found_to_its_printed_precision_on_its_own_ellipsoid(string id)
    {
        var row = Published[id];
        var shape = new Ellipsoid(row.Number("a_m"), 1 / row.Number("inv_f"));
        if (row["kind"].Contains("inverse", StringComparison.Ordinal))
        {
            var line = GeodesicInverse.Solve(shape, row.Number("lat1"), row.Number("lon1"), row.Number("lat2"), row.Number("lon2"));
            Assert.Equal(row.Number("distance_m"), line.DistanceM, row.Number("tol_m"));
            if (row.Has("azi1")) AssertSameAngle(row.Number("azi1"), line.InitialAzimuthDeg, row.Number("tol_deg"));
            if (row.Has("azi2")) AssertSameAngle(row.Number("azi2"), line.FinalAzimuthDeg, row.Number("tol_deg"));
        }

        if (!row["kind"].Contains("direct", StringComparison.Ordinal)) return;
        var end = new GeodesicRay(shape, row.Number("lat1"), row.Number("lon1"), row.Number("azi1")).At(row.Number("distance_m"));
        if (row.Has("lat2")) Assert.Equal(row.Number("lat2"), end.Point.LatitudeDeg, row.Number("tol_deg"));
        if (row.Has("lon2")) AssertSameAngle(row.Number("lon2"), end.Point.LongitudeDeg, row.Number("tol_deg"));
        if (row.Has("azi2")) AssertSameAngle(row.Number("azi2"), end.AzimuthDeg, row.Number("tol_deg"));
    }

    [Theory]
    [MemberData(nameof(PairIds))]
    public void A_pair_of_places_has_the_distance_and_azimuths_of_the_reference(string id)
    {
        var row = Pairs[id];
        var (from, to) = (Place(row, "1"), Place(row, "2"));
        var line = Geodesic.Inverse(from, to);
        Assert.Equal(row.Number("distance_m"), line.DistanceM, 2e-6);
        Assert.Equal(row.Number("distance_nm"), NauticalMiles.FromMetres(line.DistanceM).Value, 2e-6);
        AssertArrives(from, line, to, 0.001);
        if (line.DistanceM < 1 || Math.Abs(from.LatitudeDeg) == 90) return;
        var tolerance = line.DistanceM is > 1000 and < 19_900_000 ? 1e-8 : 1e-5;
        AssertSameAngle(row.Number("azi1"), line.InitialAzimuthDeg, tolerance);
        if (Math.Abs(to.LatitudeDeg) < 90) AssertSameAngle(row.Number("azi2"), line.FinalAzimuthDeg, tolerance);
    }

    [Fact]
    public void Direct_undoes_inverse_between_any_two_places() =>
        Gen.Select(AnyPlace, AnyPlace).Sample(
            (from, to) =>
            {
                var line = Geodesic.Inverse(from, to);
                AssertArrives(from, line, to, 0.001);
                var back = Geodesic.Inverse(to, from);
                Assert.Equal(line.DistanceM, back.DistanceM, 1e-6);
            },
            iter: 20_000);

    [Fact]
    public void Direct_undoes_inverse_between_nearly_antipodal_places() =>
        Gen.Select(AnyPlace, Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Int[0, 9]).Sample(
            (from, latOff, lonOff, power) =>
            {
                var scale = Math.Pow(10, -power);
                var latDeg = Math.Clamp(-from.LatitudeDeg + latOff * scale, -90, 90);
                var to = GeoPoint.Of(latDeg, from.LongitudeDeg + 180 + lonOff * scale);
                var line = Geodesic.Inverse(from, to);
                AssertArrives(from, line, to, 0.001);
                Assert.InRange(line.DistanceM, 19_750_000, 20_003_931.46);
            },
            iter: 20_000);

    [Fact]
    public void Coincident_places_are_no_distance_apart()
    {
        foreach (var place in new[] { GeoPoint.Of(0, 0), GeoPoint.Of(-33, 151), GeoPoint.Of(90, 12), GeoPoint.Of(-90, -7), GeoPoint.Of(45, 180) })
        {
            Assert.Equal(new GeodesicLine(0, 0, 0), Geodesic.Inverse(place, place));
            AssertSamePlace(place, new GeodesicPath(place, place).At(0).Point, 1e-9);
        }

        Assert.Equal(0, Geodesic.Inverse(GeoPoint.Of(10, 180), GeoPoint.Of(10, -180)).DistanceM);
        Assert.Equal(0, Geodesic.Inverse(GeoPoint.Of(90, 0), GeoPoint.Of(90, 77)).DistanceM, 1e-9);
    }

    [Fact]
    public void From_pole_to_pole_is_half_a_meridian()
    {
        // Twice the quarter meridian of WGS84, 10 001 965.7293 m (Karney 2013, section 6).
        Assert.Equal(20003931.4586, Geodesic.Inverse(GeoPoint.Of(90, 0), GeoPoint.Of(-90, 0)).DistanceM, 1e-4);
        Assert.Equal(20003931.4586, Geodesic.Inverse(GeoPoint.Of(0, 20), GeoPoint.Of(0, -160)).DistanceM, 1e-4);
        Assert.Equal(20003931.4586, Geodesic.Inverse(GeoPoint.Of(30, 20), GeoPoint.Of(-30, -160)).DistanceM, 1e-4);
    }

    [Fact]
    public void The_way_from_a_pole_counts_from_the_meridian_of_its_longitude()
    {
        var end = Geodesic.Direct(GeoPoint.Of(90, 30), 180, 1_000_000);
        Assert.Equal(30, end.LongitudeDeg, 1e-9);
        var south = Geodesic.Direct(GeoPoint.Of(-90, 30), 0, 1_000_000);
        Assert.Equal(30, south.LongitudeDeg, 1e-9);
        Assert.Equal(180, Geodesic.Inverse(GeoPoint.Of(90, 30), GeoPoint.Of(50, 30)).InitialAzimuthDeg, 1e-9);
        Assert.Equal(0, Geodesic.Inverse(GeoPoint.Of(50, 30), GeoPoint.Of(90, 0)).InitialAzimuthDeg, 1e-9);
    }

    [Fact]
    public void Longitudes_beyond_half_a_turn_are_the_same_place()
    {
        Assert.Equal(GeoPoint.Of(10, -170), GeoPoint.Of(10, 190));
        Assert.Equal(GeoPoint.Of(10, -180), GeoPoint.Of(10, 180));
        Assert.Equal(GeoPoint.Of(10, -1), GeoPoint.Of(10, 719));
        Assert.Equal(
            Geodesic.Inverse(GeoPoint.Of(10, 179), GeoPoint.Of(11, -179)).DistanceM,
            Geodesic.Inverse(GeoPoint.Of(10, 179), new GeoPoint(11, 181)).DistanceM,
            1e-6);
    }

    [Fact]
    public void A_path_gives_the_places_the_direct_problem_gives()
    {
        var (from, to) = (GeoPoint.Of(41.5, -39.25), GeoPoint.Of(-33.9, 151.2));
        var path = new GeodesicPath(from, to);
        AssertSamePlace(to, path.At(path.Length.Value).Point, 0.001);
        for (var nm = 0.0; nm < path.Length.Value; nm += 321)
        {
            AssertSamePlace(Geodesic.Direct(from, path.InitialCourse.Value, nm * 1852), path.At(nm).Point, 1e-6);
            Assert.Equal(path.Length.Value - nm, Geodesic.Inverse(path.At(nm).Point, to).DistanceM / 1852, 1e-6);
        }
    }

    [Theory]
    [InlineData(90.0001, 0)]
    [InlineData(double.NaN, 0)]
    [InlineData(0, double.NaN)]
    [InlineData(0, double.PositiveInfinity)]
    public void A_place_that_is_none_is_refused(double latDeg, double lonDeg) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GeoPoint.Of(latDeg, lonDeg));

    [Theory]
    [InlineData(41.5, -39.25, "4130N03915W")]
    [InlineData(-0.5, 7, "0030S00700E")]
    [InlineData(10.99999, -9.99999, "1100N01000W")]
    public void A_place_prints_as_in_a_flight_plan(double latDeg, double lonDeg, string text) => Assert.Equal(text, GeoPoint.Of(latDeg, lonDeg).ToString());

    private static readonly Gen<GeoPoint> AnyPlace =
        Gen.Select(Gen.OneOf(Gen.Double[-90, 90], Gen.Int[-2, 2].Select(i => i * 45.0)), Gen.OneOf(Gen.Double[-180, 180], Gen.Int[-2, 2].Select(i => i * 90.0)))
            .Select((lat, lon) => GeoPoint.Of(lat, lon));

    private static GeoPoint Place(CheckRow row, string end) => GeoPoint.Of(row.Number("lat" + end), row.Number("lon" + end));

    private static void AssertArrives(GeoPoint from, GeodesicLine line, GeoPoint to, double toleranceM)
    {
        var end = Geodesic.DirectWithAzimuth(from, line.InitialAzimuthDeg, line.DistanceM);
        AssertSamePlace(to, end.Point, toleranceM);
    }

    // Straight distance between the two places, from their positions in space.
    private static void AssertSamePlace(GeoPoint expected, GeoPoint actual, double toleranceM)
    {
        var (a, b) = (InSpace(expected), InSpace(actual));
        var distanceM = Math.Sqrt((a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y) + (a.Z - b.Z) * (a.Z - b.Z));
        Assert.True(distanceM <= toleranceM, FormattableString.Invariant(
            $"{expected.LatitudeDeg:R} {expected.LongitudeDeg:R} expected, {actual.LatitudeDeg:R} {actual.LongitudeDeg:R} found, {distanceM:R} m apart"));
    }

    private static (double X, double Y, double Z) InSpace(GeoPoint p)
    {
        const double F = 1 / 298.257223563;
        var (lat, lon) = (p.LatitudeDeg * Math.PI / 180, p.LongitudeDeg * Math.PI / 180);
        var normal = 6378137 / Math.Sqrt(1 - F * (2 - F) * Math.Sin(lat) * Math.Sin(lat));
        return (normal * Math.Cos(lat) * Math.Cos(lon), normal * Math.Cos(lat) * Math.Sin(lon), normal * (1 - F) * (1 - F) * Math.Sin(lat));
    }

    private static void AssertSameAngle(double expectedDeg, double actualDeg, double toleranceDeg)
    {
        var difference = Math.Abs(Math.IEEERemainder(expectedDeg - actualDeg, 360));
        Assert.True(difference <= toleranceDeg,
            FormattableString.Invariant($"{expectedDeg:R} expected, {actualDeg:R} found, {difference:R} deg apart, {toleranceDeg:R} allowed"));
    }
}
