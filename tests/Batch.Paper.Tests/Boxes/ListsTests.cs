namespace Batch.Paper.Tests.Boxes;

/// <summary>Markers of lists.</summary>
public sealed class ListsTests
{
    private static string[] Texts(string body) => [.. Print.Texts(Print.Small(body)).Select(t => t.Text)];

    [Fact]
    public void Items_are_numbered_from_the_start_given_and_from_a_value_on() =>
        Assert.Equal(["9.", "nine", "20.", "twenty", "21.", "more"], Texts("<ol start='9'><li>nine</li><li value='20'>twenty</li><li>more</li></ol>"));

    [Theory]
    [InlineData("lower-roman", "iv.")]
    [InlineData("upper-alpha", "D.")]
    [InlineData("decimal", "4.")]
    public void Numbers_are_written_in_the_style_asked_for(string style, string marker) =>
        Assert.Equal(marker, Texts($"<ol start='4' style='list-style-type:{style}'><li>x</li></ol>")[0]);

    [Fact]
    public void Lists_within_lists_are_numbered_anew_and_set_further_in()
    {
        var html = Print.Small("<ol><li>a<ol><li>b<ul><li>c</li></ul></li></ol></li><li>d</li></ol>");
        var texts = Print.Texts(html);
        Assert.Equal(["1.", "a", "1.", "b", "c", "2.", "d"], texts.Select(t => t.Text));
        Assert.Equal([40, 80, 120, 40], texts.Where(t => t.Text is "a" or "b" or "c" or "d").Select(t => Math.Round(t.X - 5 / 25.4 * 96)));
        Assert.Single(Print.Painted(html).Single().OfType<Batch.Paper.Paint.DisplayItem.Shape>());
    }

    [Fact]
    public void A_list_without_markers_has_none() => Assert.Equal(["x"], Texts("<ol style='list-style:none'><li>x</li></ol>"));
}
