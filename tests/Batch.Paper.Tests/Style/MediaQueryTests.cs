using Batch.Paper.Style;

namespace Batch.Paper.Tests.Style;

/// <summary>Which rules hold on paper.</summary>
public sealed class MediaQueryTests
{
    [Theory]
    [InlineData("", true)]
    [InlineData("print", true)]
    [InlineData("screen", false)]
    [InlineData("screen, print", true)]
    [InlineData("not screen", true)]
    [InlineData("only print and (color)", true)]
    [InlineData("(max-width: 640px)", false)]
    [InlineData("(min-width: 640px)", true)]
    [InlineData("(min-width: 100mm) and (max-width: 200mm)", true)]
    [InlineData("(width <= 40em)", false)]
    [InlineData("(width > 40em)", true)]
    [InlineData("(orientation: portrait)", true)]
    [InlineData("(orientation: landscape)", false)]
    [InlineData("(prefers-color-scheme: dark)", false)]
    [InlineData("(prefers-color-scheme: light)", true)]
    [InlineData("(hover: hover)", false)]
    [InlineData("(hover: none)", true)]
    [InlineData("(pointer: coarse)", false)]
    public void A_condition_is_judged_for_a_page_of_paper(string list, bool holds)
    {
        Assert.Equal(holds, MediaQuery.Matches(list, (680, 1000), out var unknown));
        Assert.Null(unknown);
    }

    [Theory]
    [InlineData("(shape: round)")]
    [InlineData("(min-width: wide)")]
    [InlineData("print and (4 < 3)")]
    public void A_condition_that_cannot_be_judged_does_not_hold_and_is_named(string list)
    {
        Assert.False(MediaQuery.Matches(list, (680, 1000), out var unknown));
        Assert.NotNull(unknown);
    }

    [Fact]
    public void The_width_is_that_of_the_pages_content()
    {
        const string rules = "p { color: #000 } @media (max-width: 95mm) { p { color: #ff0000 } }";
        Assert.Contains("#ff0000", Printed.DisplayList(Print.Small("<p>x</p>", rules), new PrintOptions()), StringComparison.Ordinal);
        Assert.DoesNotContain("#ff0000", Printed.DisplayList(Print.Small("<p>x</p>", rules), new PrintOptions { PageSize = "A4" }), StringComparison.Ordinal);
    }
}
