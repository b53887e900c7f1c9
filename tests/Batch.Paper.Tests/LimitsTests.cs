using System.Diagnostics;

namespace Batch.Paper.Tests;

/// <summary>Documents made to hurt: the printer stops with a reason or prints, and does neither late nor never.</summary>
public sealed class LimitsTests
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Theory]
    [InlineData("div")]
    [InlineData("b")]
    [InlineData("table")]
    [InlineData("ul><li")]
    public void A_nesting_too_deep_is_refused_before_it_is_read(string tag)
    {
        var html = Print.Small(string.Concat(Enumerable.Repeat("<" + tag + ">\n", 100_000)) + "x");
        var clock = Stopwatch.StartNew();
        var stopped = Assert.Throws<PaperException>(() => Printed.Print(html));
        Assert.Contains("nested deeper", stopped.Reason, StringComparison.Ordinal);
        Assert.InRange(stopped.Line, 2, 300);
        Assert.InRange(clock.Elapsed, TimeSpan.Zero, Patience);
    }

    [Theory]
    [InlineData("div")]
    [InlineData("span")]
    [InlineData("section")]
    public void A_nesting_just_allowed_is_printed(string tag)
    {
        var html = Print.Small(string.Concat(Enumerable.Repeat("<" + tag + ">", 190)) + "deep" + string.Concat(Enumerable.Repeat("</" + tag + ">", 190)));
        Assert.Equal(["deep"], Printed.Words(Printed.Print(html))[0]);
    }

    [Fact]
    public void Unclosed_paragraphs_and_cells_are_not_taken_for_depth()
    {
        var html = Print.Small(Print.Each(0, 400, "<p>w#"));
        Assert.Equal(400, Printed.Words(Printed.Print(html)).Sum(p => p.Count));
    }

    [Fact]
    public void A_document_too_long_is_refused()
    {
        var stopped = Assert.Throws<PaperException>(() => Printed.Print(new string('x', 33 * 1024 * 1024)));
        Assert.Contains("longer than", stopped.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_document_is_printed_in_time_that_grows_with_its_length()
    {
        var html = Print.Small("<table>" + Print.Each(0, 4000, "<tr><td>row</td><td>#</td></tr>") + "</table>");
        var clock = Stopwatch.StartNew();
        var printed = Printed.Print(html);
        Assert.InRange(clock.Elapsed, TimeSpan.Zero, Patience);
        Assert.Equal(8000, Printed.Words(printed).Sum(p => p.Count));
        Assert.Equal(445, printed.Pages);
    }

    [Theory]
    [InlineData("--a: var(--b); --b: var(--a); color: var(--a)")]
    [InlineData("width: calc(1px + 1px + 1px); height: calc(")]
    [InlineData("font-size: 1e300px")]
    [InlineData("margin: -99999px")]
    [InlineData("width: 9999999mm; padding: 9999px")]
    [InlineData("line-height: 0; font-size: 0")]
    [InlineData("letter-spacing: -50px")]
    [InlineData("text-indent: -9999px")]
    [InlineData("opacity: nan")]
    public void Odd_values_neither_stop_nor_hang_the_printer(string declarations)
    {
        var clock = Stopwatch.StartNew();
        Assert.InRange(Printed.Print(Print.Small("<div style='" + declarations + "'>text</div>")).Pages, 1, 60);
        Assert.InRange(clock.Elapsed, TimeSpan.Zero, Patience);
    }

    [Theory]
    [InlineData("")]
    [InlineData("just text")]
    [InlineData("<")]
    [InlineData("<!-- <p>")]
    [InlineData("<p><table></p><td>x<tr></table></div></b>")]
    [InlineData("<svg><path d='M1e9 1e9L-1e9 nan'/><rect width='1e99' height='3'/></svg>")]
    [InlineData("<table><tr><td colspan='1000' rowspan='65534'>x</td></tr></table>")]
    [InlineData("<style>p { color: red")]
    [InlineData("<style>@page { size: 0 0 }</style>x")]
    [InlineData("<style>} } ; @page { @ { } } /* </style>x")]
    [InlineData("<p>\0\u0001\uFFFF\uD800</p>")]
    public void Broken_documents_are_printed_as_far_as_they_go(string html) => Assert.InRange(Printed.Print(html).Pages, 1, 3);

    [Fact]
    public void Margins_that_leave_no_room_are_refused() =>
        Assert.Contains("no room", Assert.Throws<PaperException>(() => Printed.Print(Print.Small("x", "@page { margin: 60mm }"))).Reason,
            StringComparison.Ordinal);

    [Fact]
    public void A_print_can_be_cancelled()
    {
        using var cancelled = new CancellationTokenSource();
        cancelled.Cancel();
        Assert.ThrowsAny<OperationCanceledException>(() => Printed.Print(Print.Small("x"), new PrintOptions { CancellationToken = cancelled.Token }));
    }
}
