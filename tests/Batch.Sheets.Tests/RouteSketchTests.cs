using System.Globalization;
using System.Xml.Linq;
using Batch.Flight.Earth;
using Batch.Flight.Plan;
using Batch.Sheets.Pictures;

namespace Batch.Sheets.Tests;

public class RouteSketchTests
{
    private static LegPlan.Planned Leg { get; } = (LegPlan.Planned)SampleWeek.Made.Plan.Legs[0];

    /// <summary>A square of lines 12 round the point crosses every name near it; without the square none is crossed.</summary>
    [Fact]
    public void A_name_with_no_room_off_the_lines_is_known_to_be_crossed()
    {
        (double X, double Y)[] square = [(88, 88), (112, 88), (112, 112), (88, 112), (88, 88)];
        Assert.True(new NamePlaces(0, 0, 200, 200, [square]).Take(100, 100, 30, 11)?.IsCrossed);
        Assert.False(new NamePlaces(0, 0, 200, 200, []).Take(100, 100, 30, 11)?.IsCrossed);
    }

    [Fact]
    public void Every_fix_and_alternate_of_a_leg_is_named() =>
        Assert.Equal(Leg.Route.Segments.Select(segment => segment.To.Ident).Append(Leg.Leg.From).Append("XCOR").Order(StringComparer.Ordinal),
            Texts(Draw(Leg)).Where(text => text.All(char.IsAsciiLetterUpper) && text != "NM").Order(StringComparer.Ordinal));

    [Fact]
    public void The_way_to_the_alternate_is_dashed_and_the_route_is_not()
    {
        var ways = Draw(Leg).Elements().Where(element => element.Name.LocalName == "polyline").ToArray();
        Assert.NotNull(ways[0].Attribute("stroke-dasharray"));
        Assert.Null(ways[1].Attribute("stroke-dasharray"));
    }

    [Theory]
    [InlineData(41.25, -70.9, 42.12, -67.2)]
    [InlineData(-17.8, 179.0, -16.0, -179.5)]
    [InlineData(78.2, 15.5, 80.1, 24.0)]
    [InlineData(0.5, 10, -0.5, 12)]
    public void The_scale_bar_measures_the_true_distance(double fromLat, double fromLon, double toLat, double toLon)
    {
        var svg = Draw(PictureTests.Between((fromLat, fromLon), (toLat, toLon)));
        var ways = svg.Elements().Where(element => element.Name.LocalName == "polyline").Select(Points).ToArray();
        var (route, bar) = (ways[0], ways[1]);
        var barNm = double.Parse(Texts(svg).Single(text => text.EndsWith(" NM", StringComparison.Ordinal)).Replace(" NM", "", StringComparison.Ordinal),
            CultureInfo.InvariantCulture);
        var drawn = Math.Sqrt(Math.Pow(route[^1].X - route[0].X, 2) + Math.Pow(route[^1].Y - route[0].Y, 2)) * barNm / (bar[2].X - bar[1].X);
        var trueNm = Geodesic.Inverse(new GeoPoint(fromLat, fromLon), new GeoPoint(toLat, toLon)).DistanceM / 1852;
        Assert.Equal(1, drawn / trueNm, 0.01); // the picture is drawn to a tenth of a pixel, the bar is some 50 of them
    }

    [Fact]
    public void North_is_up_and_east_is_right()
    {
        var route = Points(Draw(PictureTests.Between((10, 20), (11, 22))).Elements().First(element => element.Name.LocalName == "polyline"));
        Assert.True(route[^1].X > route[0].X && route[^1].Y < route[0].Y);
    }

    [Fact]
    public void A_route_over_the_date_line_is_drawn_as_the_same_route_elsewhere()
    {
        var here = Points(Draw(PictureTests.Between((-17, 9), (-15, 12))).Elements().First(element => element.Name.LocalName == "polyline"));
        var there = Points(Draw(PictureTests.Between((-17, 178.5), (-15, -178.5))).Elements().First(element => element.Name.LocalName == "polyline"));
        Assert.All(here.Zip(there), pair => Assert.True(Math.Abs(pair.First.X - pair.Second.X) < 0.2 && Math.Abs(pair.First.Y - pair.Second.Y) < 0.2));
    }

    [Theory]
    [InlineData(43, -70, 41, -69.2)]
    [InlineData(41, -70, 43, -70)]
    [InlineData(41, -71, 41, -69)]
    public void Names_stand_beside_the_way(double fromLat, double fromLon, double toLat, double toLon)
    {
        (double Lat, double Lon) At(double share) => (fromLat + (share * (toLat - fromLat)), fromLon + (share * (toLon - fromLon)));
        var svg = Draw(PictureTests.Between((fromLat, fromLon), (toLat, toLon), ("CALDO", At(0.3).Lat, At(0.3).Lon), ("MERIN", At(0.6).Lat, At(0.6).Lon)));
        var way = Points(svg.Elements().First(element => element.Name.LocalName == "polyline"));
        foreach (var name in svg.Elements().Where(element => element.Name.LocalName == "text" && element.Value is "CALDO" or "MERIN"))
        {
            var (x, y) = (Number(name, "x"), Number(name, "y"));
            var width = Drawing.WidthOf(name.Value);
            var left = name.Attribute("text-anchor")?.Value switch { "end" => x - width, "middle" => x - (width / 2), _ => x };
            var struck = way.Zip(way.Skip(1)).Any(piece => Enumerable.Range(0, 101)
                .Select(k => (X: piece.First.X + ((piece.Second.X - piece.First.X) * k / 100), Y: piece.First.Y + ((piece.Second.Y - piece.First.Y) * k / 100)))
                .Any(point => point.X > left && point.X < left
                    + width && point.Y > y - (0.7 * Ink.TextSize) && point.Y < y)); // capitals are some 0.7 of the size high
            Assert.False(struck, name.ToString());
        }
    }

    [Fact]
    public void Names_without_room_are_counted_not_lost()
    {
        var fixes = Enumerable.Range(0, 90).Select(k => ("F" + k.ToString("0000", CultureInfo.InvariantCulture), 41.5 + (0.0001 * k), -70.0)).ToArray();
        var texts = Texts(Draw(PictureTests.Between((41, -71), (42, -69), fixes)));
        var left = int.Parse(texts.Single(text => text.EndsWith("names left out", StringComparison.Ordinal)).Split(' ')[0], CultureInfo.InvariantCulture);
        Assert.Equal(90, left + texts.Count(text => text.StartsWith('F')));
    }

    private static XElement Draw(LegPlan.Planned leg) =>
        XDocument.Parse(RouteSketch.Of(leg, SampleWeek.Made.Plan.Input.Airports).Usual.Html).Root ?? throw new InvalidOperationException();

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)?.Value ?? "", CultureInfo.InvariantCulture);

    private static string[] Texts(XElement svg) => [.. svg.Elements().Where(element => element.Name.LocalName == "text").Select(text => text.Value)];

    private static (double X, double Y)[] Points(XElement line) => [.. (line.Attribute("points")?.Value ?? "").Split(' ').Select(point => point.Split(','))
        .Select(pair => (double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture)))];
}
