namespace Batch.Paper.Tests.Style;

public sealed class UnsupportedTests
{
    [Theory]
    [InlineData("<style>\np { frobnicate: 1px }\n</style>", "style", "frobnicate", 2, 5)]
    [InlineData("<style>\np { color: rot }\n</style><p>x</p>", "p", "color", 2, 5)]
    [InlineData("<style>\n\n  p::before { color: red }\n</style>", "style", "p::before", 3, 3)]
    [InlineData("<style>@font-face { src: url(x) }</style>", "style", "@font-face", 1, 8)]
    [InlineData("<style>@media (shape: round) { p { color: red } }</style>", "style", "@media", 1, 8)]
    [InlineData("<style>@page left { margin: 0 }</style>", "style", "@page left", 1, 8)]
    [InlineData("<style>@page { @top-left { content: attr(x) } }</style>", "@page", "content", 1, 28)]
    [InlineData("<p>\n <marquee>x</marquee></p>", "marquee", "", 2, 2)]
    [InlineData("<p>\n<b style='float:left'>x</b>", "b", "float", 2, 1)]
    [InlineData("<div>\n<div style='display: table-row'><b>x</b></div></div>", "div", "display", 2, 1)]
    [InlineData("<div style='display: flex'>\n <b style='display: table-cell'>x</b></div>", "b", "display", 2, 2)]
    [InlineData("<p align='right'>x", "p", "align", 1, 1)]
    [InlineData("<p>\n\n<svg width='9' height='9'><filter/></svg>", "filter", "", 3, 27)]
    [InlineData("<svg width='9' height='9'>\n<path d='M0 0 L9 x'/></svg>", "path", "d", 2, 1)]
    [InlineData("<p>\n<i>\u0645\u0631</i>", "i", "", 2, 1)]
    [InlineData("<link rel='stylesheet' href='x.css'>", "link", "href", 1, 1)]
    public void What_is_not_honoured_is_named_with_line_and_column(string html, string tag, string property, int line, int column)
    {
        var found = Printed.Print(html).Unsupported;
        Assert.Contains((tag, property, line, column), found.Select(u => (u.Tag, u.Property, u.Line, u.Column)));
    }

    [Theory]
    [InlineData("@media screen { p { frobnicate: 1 } }")]
    [InlineData("@media (prefers-color-scheme: dark) { p { frobnicate: 1 } }")]
    [InlineData("@media not print { p { frobnicate: 1 } }")]
    [InlineData(":root { --any-thing: 5 } p { color: var(--none, red); margin: var(--m, 2px) 3px }")]
    [InlineData("/* p { frobnicate: 1 } */ p:first-child:not(.x) > b[title=\"}\"] { color: #123 }")]
    public void Other_media_comments_and_custom_properties_are_no_complaint(string css) =>
        Assert.Empty(Printed.Print("<style>" + css + "</style><p>x</p>").Unsupported);

    [Fact]
    public void Parts_of_a_table_made_of_other_elements_are_honoured() =>
        Assert.Empty(Printed.Print("<div style='display: table'><div style='display: table-row'><p style='display: table-cell'>x</p></div></div>").Unsupported);

    [Fact]
    public void Styles_for_paper_win_over_those_for_the_screen()
    {
        var list = Printed.DisplayList("<style>p{color:#111111}@media screen{p{color:#222222}}@media (prefers-color-scheme:dark){p{color:#333333}}@media print{p{color:#444444}}.no{display:none}</style><p>x</p><p class=no>y</p>", new PrintOptions());
        Assert.Contains("#444444 \"x\"", list, StringComparison.Ordinal);
        Assert.DoesNotContain("\"y\"", list, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_of_unknown_elements_is_still_printed() =>
        Assert.Equal("a b c", Printed.Text(Printed.Print("<p>a <blink>b</blink></p><fancy-box>c</fancy-box>")));
}
