using Batch.Paper.Paint;
using Batch.Paper.Svg;

namespace Batch.Paper.Tests.Svg;

public sealed class PathReaderTests
{
    [Theory]
    [InlineData("M1 2L3 4H5V6Z", "M1,2 L3,4 L5,4 L5,6 Z")]
    [InlineData("m1 2 3 4h2v-1z", "M1,2 L4,6 L6,6 L6,5 Z")]
    [InlineData("M0,0-1.5.5.5", "M0,0 L-1.5,0.5")]
    [InlineData("M0 0C1 1 2 2 3 3S5 5 6 6", "M0,0 C3,3 C6,6")]
    [InlineData("M0 0Q3 3 6 0T12 0", "M0,0 C6,0 C12,0")]
    [InlineData("M10 0A10 10 0 0110 20", "M10,0 C20,10 C10,20")]
    [InlineData("M0 0A0 5 0 0 1 4 4", "M0,0 L4,4")]
    public void Path_data_become_lines_and_curves(string data, string steps)
    {
        var (read, sound) = PathReader.Read(data);
        Assert.Equal(data != "M0,0-1.5.5.5", sound);
        Assert.Equal(steps, string.Join(' ', read.Select(s => s.Verb == PathVerb.Close ? "Z" : s.Verb.ToString()[0] + N(s.X) + "," + N(s.Y))));
    }

    [Fact]
    public void An_arc_of_a_circle_stays_on_it_within_a_thousandth_of_the_radius()
    {
        var (x, y) = (10.0, 0.0);
        foreach (var s in PathReader.Read("M10 0A10 10 0 1 1 0 -10").Steps.Skip(1))
        {
            for (var t = 0.0; t <= 1; t += 0.1)
            {
                var u = 1 - t;
                var px = u * u * u * x + 3 * u * u * t * s.X1 + 3 * u * t * t * s.X2 + t * t * t * s.X;
                var py = u * u * u * y + 3 * u * u * t * s.Y1 + 3 * u * t * t * s.Y2 + t * t * t * s.Y;
                Assert.InRange(Math.Sqrt(px * px + py * py), 9.99, 10.01);
            }

            (x, y) = (s.X, s.Y);
        }
    }

    [Theory]
    [InlineData("translate(3,4) scale(2)", 1, 1, 5, 6)]
    [InlineData("rotate(90 10 10)", 20, 10, 10, 20)]
    [InlineData("matrix(0 1 -1 0 5 5)", 1, 0, 5, 6)]
    [InlineData("skewX(45)", 0, 3, 3, 3)]
    public void Transforms_map_points(string text, double x, double y, double toX, double toY)
    {
        var map = TransformReader.Read(text) ?? throw new InvalidOperationException("not read");
        var (mappedX, mappedY) = map.Map(x, y);
        Assert.Equal((toX, toY), (Math.Round(mappedX, 9), Math.Round(mappedY, 9)));
    }

    [Fact]
    public void Nonsense_is_no_transform() => Assert.Null(TransformReader.Read("turn(3)"));

    private static string N(double value) => (Math.Round(value, 6) + 0.0).ToString("0.######", System.Globalization.CultureInfo.InvariantCulture);
}
