using System.Globalization;
using System.Xml.Linq;
using Batch.Sheets.Pictures;
using Batch.Testing;

namespace Batch.Sheets.Tests;

public class WindBarbTests
{
    private static readonly CheckFile Speeds = CheckFile.Read("wind-barbs.csv");

    public static IEnumerable<object[]> Ids => Speeds.Ids();

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_speed_is_told_by_pennants_feathers_and_half_feathers(string id)
    {
        var row = Speeds[id];
        var (speed, pennants, feathers, halves) = (row.Number("speed"), (int)row.Number("pennants"), (int)row.Number("feathers"), (int)row.Number("halves"));
        var barb = WindBarb.Of(new Knots(speed));
        Assert.Equal((pennants, feathers, halves), (barb.Pennants, barb.Feathers, barb.HasHalf ? 1 : 0));
        var drawn = Drawn(speed, 270, isSouthern: false);
        Assert.Equal(pennants, drawn.Count(element => element.Name.LocalName == "polygon"));
        Assert.Equal(pennants + feathers + halves == 0 ? 0 : 1 + feathers + halves, drawn.Count(element => element.Name.LocalName == "line"));
    }

    [Theory]
    [InlineData(360, 0, -1)]
    [InlineData(90, 1, 0)]
    [InlineData(180, 0, 1)]
    [InlineData(270, -1, 0)]
    public void The_shaft_points_to_where_the_wind_comes_from(double from, int right, int down)
    {
        var (dot, shaft) = (Drawn(10, from, isSouthern: false).Single(element => element.Name.LocalName == "circle"),
            Drawn(10, from, isSouthern: false).First(element => element.Name.LocalName == "line"));
        Assert.Equal((right, down),
            (Math.Sign(Math.Round(Number(shaft, "x2") - Number(dot, "cx"))), Math.Sign(Math.Round(Number(shaft, "y2") - Number(dot, "cy")))));
    }

    [Theory]
    [InlineData(false, 1)]
    [InlineData(true, -1)]
    public void Feathers_stand_toward_the_lower_pressure(bool isSouthern, int side)
    {
        // With a north wind the lower pressure lies to the east in the north and to the west in the south (Buys Ballot's law).
        var feather = Drawn(10, 360, isSouthern).Where(element => element.Name.LocalName == "line").ElementAt(1);
        Assert.Equal(side, Math.Sign(Number(feather, "x2") - Number(feather, "x1")));
        var pennant = (Drawn(50, 360, isSouthern).Single(element => element.Name.LocalName == "polygon").Attribute("points")?.Value ?? "").Split(' ')
            .Select(point => double.Parse(point.Split(',')[0], CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(side, Math.Sign(pennant[1] - pennant[0]));
    }

    [Fact]
    public void Half_a_feather_alone_stands_off_the_end()
    {
        var lines = Drawn(5, 360, isSouthern: false).Where(element => element.Name.LocalName == "line").ToArray();
        Assert.True(Number(lines[1], "y1") > Number(lines[0], "y2") + 2);
    }

    [Fact]
    public void A_barb_up_to_95_knots_keeps_to_its_room()
    {
        for (var speed = 0; speed <= 95; speed += 5)
        {
            for (var from = 0; from < 360; from += 30)
                Assert.All(Drawn(speed, from, isSouthern: false).Where(element => element.Name.LocalName == "line"),
                    line => Assert.True(Math.Abs(Number(line, "x2") - 50) <= WindBarb.Radius && Math.Abs(Number(line, "y2") - 50) <= WindBarb.Radius));
        }
    }

    private static XElement[] Drawn(double speed, double from, bool isSouthern)
    {
        var drawing = new Drawing();
        WindBarb.Of(new Knots(speed)).Draw(drawing, 50, 50, new TrueDegrees(from), isSouthern);
        return [.. XDocument.Parse(drawing.Picture(100, 100, "x", "x").Html).Root?.Elements().Where(element => element.Name.LocalName != "title") ?? []];
    }

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)?.Value ?? "", CultureInfo.InvariantCulture);
}
