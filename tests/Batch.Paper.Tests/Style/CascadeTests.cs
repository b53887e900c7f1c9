namespace Batch.Paper.Tests.Style;

/// <summary>Which of several declarations wins.</summary>
public sealed class CascadeTests
{
    private static string Colour(string body, string style) => Print.Painted(Print.Small(body, style)).Single().OfType<Batch.Paper.Paint.DisplayItem.Text>()
        .Single(t => string.Concat(t.Texts) == "x").Colour.ToString();

    [Theory]
    [InlineData("p { color: #000001 } .c { color: #000002 }", "#000002")]
    [InlineData(".c { color: #000002 } p { color: #000001 }", "#000002")]
    [InlineData("#i { color: #000003 } .c { color: #000002 }", "#000003")]
    [InlineData("p { color: #000001 !important } #i { color: #000003 }", "#000001")]
    [InlineData("div p { color: #000004 } p { color: #000001 }", "#000004")]
    [InlineData("body > p { color: #000005 }", "#000000")]
    [InlineData("div > p { color: #000005 }", "#000005")]
    [InlineData("p[title] { color: #000006 }", "#000006")]
    [InlineData("p:first-child { color: #000007 }", "#000007")]
    [InlineData("p:last-child { color: #000007 }", "#000000")]
    [InlineData("p:nth-child(2n+1) { color: #000008 }", "#000008")]
    [InlineData("p:not(.d) { color: #000009 }", "#000009")]
    [InlineData("p, h1 { color: #00000a }", "#00000a")]
    [InlineData(":root { --ink: #00000b } p { color: var(--ink) }", "#00000b")]
    [InlineData("p { color: var(--none, #00000c) }", "#00000c")]
    [InlineData("div { color: #00000d }", "#00000d")]
    public void The_stronger_rule_wins(string style, string colour) =>
        Assert.Equal(colour, Colour("<div><p id='i' class='c' title='t'>x</p><p>y</p></div>", style));

    [Fact]
    public void The_elements_own_style_goes_over_every_rule_that_is_not_important()
    {
        Assert.Equal("#0000ff", Colour("<p style='color:#0000ff'>x</p>", "p { color: red }"));
        Assert.Equal("#ff0000", Colour("<p style='color:#0000ff'>x</p>", "p { color: red !important }"));
    }

    [Theory]
    [InlineData("1in", 96)]
    [InlineData("25.4mm", 96)]
    [InlineData("2.54cm", 96)]
    [InlineData("72pt", 96)]
    [InlineData("2em", 40)]
    [InlineData("2rem", 32)]
    [InlineData("50%", 50)]
    [InlineData("calc(50% + 10px)", 60)]
    [InlineData("calc(2em - 10px)", 30)]
    public void Lengths_are_understood_in_every_unit_promised(string width, double px)
    {
        var html = Print.Small($"<div style='width:100px;font-size:20px'><div style='width:{width};height:10px;background:#123456'></div></div>");
        var box = Print.Painted(html).Single().OfType<Batch.Paper.Paint.DisplayItem.Shape>().Single().Steps;
        Assert.Equal(px, box[2].X - box[0].X, 0.6);
    }
}
