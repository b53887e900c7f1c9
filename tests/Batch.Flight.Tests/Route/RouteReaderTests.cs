using System.Globalization;
using Batch.Flight.Earth;
using Batch.Flight.Route;
using Batch.Testing;
using CsCheck;

namespace Batch.Flight.Tests.Route;

public sealed class RouteReaderTests
{
    private static readonly NavigationBook Book = Some.Book();
    private static readonly string[] KnownWords =
        ["XAND", "XBEL", "NORRA", "TIDES", "OTTER", "LN", "V12", "V20", "B7", "DCT", "N0250F160", "TWINS", "41N039W", "NOR180040", "/", "VFR"];

    [Fact]
    public void An_empty_text_is_the_direct_line()
    {
        var route = Resolve("");
        var segment = Assert.Single(route.Segments);
        Assert.Equal(["XAND", "XBEL"], Idents(route));
        Assert.Equal("DCT", segment.Via);
        Assert.Equal("DCT", Assert.Single(route.Elements));
        Assert.Equal(Geodesic.Inverse(Some.Xand.Position, Some.Xbel.Position).DistanceM / 1852, route.Length.Value, 1e-9);
    }

    [Theory]
    [InlineData("NORRA V12 GULLS", "XAND NORRA TIDES OTTER GULLS XBEL")]
    [InlineData("norra v12 otter dct gulls", "XAND NORRA TIDES OTTER GULLS XBEL")]
    [InlineData("DCT TIDES V12 OTTER DCT", "XAND TIDES OTTER XBEL")]
    [InlineData("XAND DCT NORRA DCT XBEL", "XAND NORRA XBEL")]
    [InlineData("TIDES XCOR GULLS", "XAND TIDES XCOR GULLS XBEL")]
    [InlineData("OTTER B7 ATSIX", "XAND OTTER LN ATSIX XBEL")]
    [InlineData("NORRA V12 B7 ATSIX", "XAND NORRA TIDES OTTER LN ATSIX XBEL")]
    [InlineData("TIDES V20 LN", "XAND TIDES TWINS LN XBEL")]
    [InlineData("NORRA V12 V20 LN", "XAND NORRA TIDES TWINS LN XBEL")]
    [InlineData("TIDES TIDES", "XAND TIDES XBEL")]
    [InlineData("41N039W 4130N03715W", "XAND 41N039W 4130N03715W XBEL")]
    [InlineData("XAND/N0250F160 NORRA XBEL", "XAND NORRA XBEL")]
    public void Elements_become_points_in_the_direction_flown(string text, string points)
    {
        var route = Resolve(text);
        Assert.Equal(points, string.Join(' ', Idents(route)));
        for (var index = 1; index < route.Segments.Length; index++)
        {
            Assert.Equal(route.Segments[index - 1].To, route.Segments[index].From);
            Assert.Equal(route.Segments[index - 1].Start + route.Segments[index - 1].Length, route.Segments[index].Start);
        }

        Assert.Equal(route.Length, route.Segments[^1].Start + route.Segments[^1].Length);
    }

    [Theory]
    [InlineData("NORRA V12 GULLS", "XAND", "XBEL", "2000/altitude grid 5000/airway V12 6000/airway V12 4000/airway V12 2000/altitude grid")]
    [InlineData("GULLS V12 NORRA", "XBEL", "XAND", "2000/altitude grid 4000/airway V12 6000/airway V12 5000/airway V12 2000/altitude grid")]
    [InlineData("", "XAND", "XBEL", "8000/altitude grid")]
    [InlineData("TIDES V20 LN", "XAND", "XBEL", "2000/altitude grid 7000/airway V20 2000/altitude grid 2000/altitude grid")]
    public void Minimum_altitudes_come_from_the_airway_else_from_the_grid(string text, string from, string to, string minima)
    {
        var route = Resolve(text, from, to);
        Assert.Equal(minima, string.Join(' ',
            route.Segments.Select(segment => string.Create(CultureInfo.InvariantCulture, $"{segment.MinimumAltitude?.Value}/{segment.MinimumSource}"))));
    }

    [Fact]
    public void A_grid_square_that_the_line_just_cuts_counts()
    {
        // From 40.98 N 038.5 W to 41.02 N 037.0 W: north of 41 N only in the last half, but west of 037 W there, so the 8,000 ft square is cut.
        var grid = new SafeAltitudeGrid([
            new SafeAltitudeCell(40, -40, 5, new Feet(1000), Origin.None),
            new SafeAltitudeCell(41, -38, 0.25, new Feet(9000), Origin.None),
        ]);
        Assert.Equal(9000, grid.HighestAlong(new GeodesicPath(new GeoPoint(40.98, -38.5), new GeoPoint(41.05, -37.7)), out var isCovered)?.Value);
        Assert.True(isCovered);
        // Some 3 NM south of it all the way.
        Assert.Equal(1000, grid.HighestAlong(new GeodesicPath(new GeoPoint(40.93, -38.5), new GeoPoint(40.94, -37.5)), out _)?.Value);
        // On the far side of the earth there is no square.
        Assert.Null(grid.HighestAlong(new GeodesicPath(new GeoPoint(-40, 140), new GeoPoint(-41, 142)), out isCovered));
        Assert.False(isCovered);
    }

    [Fact]
    public void The_highest_square_is_the_same_as_by_close_sampling()
    {
        var cells = ImmutableArray.CreateBuilder<SafeAltitudeCell>();
        for (var south = -80; south < 80; south += 2)
            for (var west = 170; west < 190; west += 2)
                cells.Add(new SafeAltitudeCell(south, west >= 180 ? west - 360 : west, 2, new Feet(1000 + (south * 37 + west * 91) % 53 * 100), Origin.None));
        var grid = new SafeAltitudeGrid(cells.ToImmutable());
        var place = Gen.Select(Gen.Double[-70, 70], Gen.Double[171, 189]).Select((lat, lon) => new GeoPoint(lat, lon > 180 ? lon - 360 : lon));
        Gen.Select(place, place).Sample(
            (from, to) =>
            {
                var path = new GeodesicPath(from, to);
                double? highest = null;
                for (var nm = 0.0; nm <= path.Length.Value; nm += 0.5)
                {
                    var point = path.At(nm).Point;
                    foreach (var cell in cells)
                    {
                        var east = point.LongitudeDeg - cell.WestDeg;
                        if (east < 0) east += 360;
                        if (point.LatitudeDeg >= cell.SouthDeg && point.LatitudeDeg <= cell.SouthDeg + 2 && east <= 2)
                            highest = Math.Max(highest ?? 0, cell.MinimumAltitude.Value);
                    }
                }

                // Close sampling may miss a corner; it can never find more.
                var found = grid.HighestAlong(path, out _)?.Value;
                return found >= highest || (found is null && highest is null);
            },
            iter: 30);
    }

    [Fact]
    public void Of_two_places_the_shorter_route_is_taken_and_said()
    {
        var route = Resolve("TWINS");
        Assert.Equal(new GeoPoint(41, -38.2), route.Segments[0].To.Position);
        Assert.Contains(route.Notes, note => note.Contains("TWINS can be one of 2 places; the one at 4100N03812W", StringComparison.Ordinal));
    }

    [Fact]
    public void A_bearing_counts_from_the_own_north_of_its_point()
    {
        // NOR has a declination of 10 W: magnetic 190 is true 180.
        var route = Resolve("NOR190060");
        var point = route.Segments[0].To.Position;
        var line = Geodesic.Inverse(new GeoPoint(41, -39.9), point);
        Assert.Equal(180, line.InitialAzimuthDeg, 1e-9);
        Assert.Equal(60 * 1852, line.DistanceM, 1e-3);
        Assert.Equal("NOR190060", route.Segments[0].To.Ident);
    }

    [Fact]
    public void A_bearing_without_own_north_counts_by_the_magnetic_model()
    {
        var route = Resolve("TIDES180040");
        var line = Geodesic.Inverse(new GeoPoint(41.5, -38.5), route.Segments[0].To.Position);
        Assert.Equal(180 + MagneticModel.VariationDeg(new GeoPoint(41.5, -38.5), Feet.Zero, Some.Day), line.InitialAzimuthDeg, 1e-6);
    }

    [Fact]
    public void Variation_is_the_own_one_of_the_point_else_the_models_at_the_level()
    {
        var route = RouteOf(RouteReader.Resolve(Book, Some.Xand, Some.Xbel, "NOR TIDES", Some.Day, new Feet(16000)));
        Assert.Equal(MagneticModel.VariationDeg(Some.Xand.Position, new Feet(16000), Some.Day), route.Segments[0].VariationDeg);
        Assert.Equal(-10, route.Segments[1].VariationDeg);
        Assert.Equal(MagneticDegrees.Of(route.Segments[1].TrueCourse.Value + 10), route.Segments[1].MagneticCourse);
    }

    [Fact]
    public void Levels_asked_for_in_the_text_are_kept_where_they_hold()
    {
        var route = Resolve("N0250F160 NORRA/N0240F180 TIDES N0240A085 GULLS/K0400S0600 LN/M050VFR");
        Assert.Equal([16000, 18000, 8500, 6000 / 0.3048, null], route.Segments.Select(segment => segment.LevelFromHere?.Value));
        Assert.Equal("NORRA TIDES GULLS LN", string.Join(' ', route.Elements));
        Assert.Single(route.Notes, note => note.Contains("speeds come from the cruise table", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("NORA", 1, "neither a fix", "NOR NORRA")]
    [InlineData("NORRA V13 GULLS", 2, "neither a fix", "V12 V20")]
    [InlineData("NORRA V12 LN", 3, "V12 does not pass LN", "")]
    [InlineData("XCOR V12 GULLS", 2, "V12 does not pass XCOR", "")]
    [InlineData("V12 GULLS", 1, "V12 does not pass XAND", "")]
    [InlineData("NORRA V12", 2, "the fix where it is left", "NORRA TIDES OTTER")]
    [InlineData("NORRA V12 DCT GULLS", 2, "the fix where it is left", "NORRA TIDES OTTER")]
    [InlineData("NORRA DCT V12 GULLS", 3, "DCT leads to a point", "")]
    [InlineData("LN V20 TIDES", 2, "may not be flown from LN to TIDES", "")]
    [InlineData("ATSIX B7 LN V12 OTTER", 4, "V12 does not pass LN", "")]
    [InlineData("ATSIX B7 OTTER", 2, "may not be flown from ATSIX to OTTER", "")]
    [InlineData("NORRA V12 NORRA", 2, "joined and left at NORRA", "")]
    [InlineData("4660N07805W", 1, "minutes", "")]
    [InlineData("46N78W", 1, "coordinate", "")]
    [InlineData("NRO180040", 1, "no bearing can be taken", "NOR")]
    [InlineData("NOR361040", 1, "bearing goes to 360", "")]
    [InlineData("NORRA/F160", 1, "After a slash", "")]
    [InlineData("C/48N050W/M082F290F350", 1, "cruise climb", "")]
    [InlineData("NORRA VFR GULLS", 2, "flight rules", "")]
    public void What_is_not_understood_is_named_with_its_place(string text, int position, string why, string near)
    {
        var result = RouteReader.Resolve(Book, Some.Xand, Some.Xbel, text, Some.Day, null);
        var unresolved = Assert.IsType<RouteResult.Unresolved>(result);
        Assert.Equal(position, unresolved.Position);
        Assert.Equal(text.Split(' ')[position - 1], unresolved.Element);
        Assert.Contains(why, unresolved.Why, StringComparison.Ordinal);
        Assert.Equal(near, string.Join(' ', unresolved.Near));
    }

    [Fact]
    public void A_hole_in_the_grid_is_said()
    {
        var route = Resolve("30N038W");
        Assert.Contains(route.Notes, note => note.StartsWith("The altitude grid does not cover all of XAND to 30N038W", StringComparison.Ordinal));
    }

    [Fact]
    public void Any_text_gives_a_route_or_a_complaint_at_one_of_its_words()
    {
        var word = Gen.OneOf(
            Gen.Int[0, KnownWords.Length - 1].Select(index => KnownWords[index]),
            Gen.String[Gen.Char['/', 'Z'], 1, 12]);
        word.Array[0, 8].Sample(words =>
        {
            var text = string.Join(' ', words);
            return RouteReader.Resolve(Book, Some.Xand, Some.Xbel, text, Some.Day, null) switch
            {
                RouteResult.Resolved(var route) =>
                    route.From.Ident == "XAND" && route.To.Ident == "XBEL" && route.Segments.All(segment => segment.Length.Value > 0),
                RouteResult.Unresolved wrong => wrong.Why.Length > 0 && words[wrong.Position - 1].Equals(wrong.Element, StringComparison.OrdinalIgnoreCase),
                _ => false,
            };
        });
    }

    private static FlownRoute Resolve(string text, string from = "XAND", string to = "XBEL") =>
        RouteOf(RouteReader.Resolve(Book, Book.Airport(from) ?? Some.Xand, Book.Airport(to) ?? Some.Xbel, text, Some.Day, null));

    private static FlownRoute RouteOf(RouteResult result) => Assert.IsType<RouteResult.Resolved>(result).Route;

    private static IEnumerable<string> Idents(FlownRoute route) => route.Segments.Select(segment => segment.From.Ident).Append(route.To.Ident);
}
