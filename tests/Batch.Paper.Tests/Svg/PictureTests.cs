using Batch.Paper.Paint;

namespace Batch.Paper.Tests.Svg;

/// <summary>Pictures in a document.</summary>
public sealed class PictureTests
{
    private static List<DisplayItem> Items(string svg) => Print.Painted(Print.Small(svg)).Single();

    [Theory]
    [InlineData("<text font-size='10'>t</text>", 10)]
    [InlineData("<g font-size='8'><text>t</text></g>", 8)]
    [InlineData("<text style='font-size:12px'>t</text>", 12)]
    [InlineData("<text font-size='6pt'>t</text>", 8)]
    public void A_size_of_letters_is_in_user_units_and_scaled_with_the_picture(string text, double size)
    {
        var painted = Items("<svg viewBox='0 0 100 50' width='200' height='100'>" + text + "</svg>").OfType<DisplayItem.Text>().Single();
        Assert.Equal(size, painted.Size, 0.001);
        Assert.Equal(2, painted.Place.A, 0.001);
    }

    [Fact]
    public void The_view_box_is_centred_and_keeps_its_shape()
    {
        var shape = Items("<svg viewBox='0 0 100 100' width='200' height='100'><rect width='100' height='100'/></svg>").OfType<DisplayItem.Shape>().Single();
        Assert.Equal(100, shape.Steps[2].X - shape.Steps[0].X, 0.001);
        Assert.Equal(5 / 25.4 * 96 + 50, shape.Steps[0].X, 0.6);
    }

    [Fact]
    public void Transforms_are_applied_from_the_outside_in()
    {
        var shape = Items("<svg width='100' height='100'><g transform='translate(10 20) scale(2)'><line transform='rotate(90)' x1='0' y1='0' x2='10' y2='0' stroke='#000'/></g></svg>")
            .OfType<DisplayItem.Shape>().Single();
        Assert.Equal(0, shape.Steps[1].X - shape.Steps[0].X, 0.001);
        Assert.Equal(20, shape.Steps[1].Y - shape.Steps[0].Y, 0.001);
        Assert.Equal(2, shape.Pen?.Width ?? 0, 0.001);
    }

    [Theory]
    [InlineData("start", 0)]
    [InlineData("middle", -0.5)]
    [InlineData("end", -1)]
    public void Text_is_anchored_as_a_whole_with_its_spans(string anchor, double share)
    {
        var texts = Items($"<svg width='300' height='50'><text x='150' y='20' text-anchor='{anchor}'>one <tspan font-weight='bold'>two</tspan></text></svg>")
            .OfType<DisplayItem.Text>().ToList();
        var width = texts.Sum(t => t.Advances.Sum());
        Assert.Equal(5 / 25.4 * 96 + 150 + share * width, texts[0].Place.E, 0.6);
        Assert.Equal(texts[0].Place.E + texts[0].Advances.Sum(), texts[1].Place.E, 0.001);
    }

    [Fact]
    public void Paths_are_drawn_with_curves_arcs_and_relative_steps()
    {
        var steps = Items("<svg width='100' height='100'><path d='M10 10h20v20H10zm5,5q5-5 10 0t10 0s1 1 2 2c1 1 2 2 3 3a5 5 0 1110 0' stroke='#000'/></svg>")
            .OfType<DisplayItem.Shape>().Single().Steps;
        Assert.Contains(steps, s => s.Verb == PathVerb.Curve);
        Assert.Equal(2, steps.Count(s => s.Verb == PathVerb.Move));
        Assert.Equal(40, steps[^1].X - steps[0].X, 0.001);
    }

    [Fact]
    public void Nothing_is_drawn_outside_the_picture()
    {
        var items = Items("<svg width='100' height='50'><rect x='-500' y='-500' width='2000' height='2000'/></svg>");
        Assert.Equal((100, 50), items.OfType<DisplayItem.Clip>().Select(c => (c.Width, c.Height)).Single());
        Assert.Single(items.OfType<DisplayItem.EndClip>());
    }
}
