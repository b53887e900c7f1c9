namespace Batch.Paper.Tests.Pages;

/// <summary>Breaks on a page whose content is 100 px high and 300 px wide, with lines of 10 px.</summary>
public sealed class PaginatorTests
{
    private const string Small = "@page{size:340px 140px;margin:20px}body{margin:0;font-size:8px;line-height:10px}p,h1,h2,table,ul{margin:0;font-size:8px}table{border-collapse:collapse}td,th{padding:0}";

    [Fact]
    public void A_block_that_asks_for_a_new_page_gets_one() =>
        Expect("<p>a</p><p style='break-before:page'>b</p><div style='page-break-after:always'>c</div><p>d</p>", "a", "b c", "d");

    [Fact]
    public void The_wish_of_a_first_child_counts_for_its_parent() => Expect("<p>a</p><div><div><p style='break-before:page'>b</p></div></div>", "a", "b");

    [Fact]
    public void Lines_fill_the_page_and_go_on() => Expect(Paragraph("w", 12), Words("w", 1, 10), Words("w", 11, 12));

    [Fact]
    public void No_line_stands_alone_at_the_top_or_the_foot_of_a_page()
    {
        Expect("<div style='height:90px'></div>" + Paragraph("w", 5), "", Words("w", 1, 5));
        Expect(Paragraph("w", 11), Words("w", 1, 9), Words("w", 10, 11));
        Expect("<style>p{orphans:1;widows:1}</style>" + Paragraph("w", 11), Words("w", 1, 10), "w11");
    }

    [Fact]
    public void A_heading_stays_with_what_follows() => Expect("<div style='height:85px'></div><h2>head</h2><p>text</p>", "", "head text");

    [Fact]
    public void A_block_kept_together_moves_whole() =>
        Expect(Paragraph("w", 8) + "<div style='break-inside:avoid'>" + Paragraph("v", 4) + "</div>", Words("w", 1, 8), Words("v", 1, 4));

    [Fact]
    public void A_kept_block_higher_than_a_page_is_broken_all_the_same() =>
        Expect("<div style='break-inside:avoid'>" + Paragraph("w", 15) + "</div>", Words("w", 1, 10), Words("w", 11, 15));

    [Fact]
    public void The_head_of_a_table_is_repeated() =>
        Expect(Table(14), "No " + Words("r", 1, 9), "No " + Words("r", 10, 14));

    [Fact]
    public void The_head_is_repeated_when_a_row_is_split()
    {
        var table = "<table><thead><tr><th>No</th></tr></thead><tbody><tr><td>" + Paragraph("w", 15) + "</td></tr></tbody></table>";
        Expect(table, "No " + Words("w", 1, 9), "No " + Words("w", 10, 15));
    }

    [Fact]
    public void At_least_two_rows_stay_together()
    {
        Expect(Table(10), "No " + Words("r", 1, 8), "No r9 r10");
        Expect("<div style='height:75px'></div>" + Table(4), "", "No " + Words("r", 1, 4));
    }

    [Fact]
    public void A_row_that_fits_a_page_is_not_split() =>
        Expect(Paragraph("w", 6) + "<table><tr><td>" + Paragraph("a", 6) + "</td><td>x</td></tr></table>", Words("w", 1, 6), Words("a", 1, 6) + " x");

    [Fact]
    public void A_rowspan_keeps_its_rows_on_one_page() =>
        Expect("<div style='height:80px'></div><table><tr><td rowspan='3'>s</td><td>a</td></tr><tr><td>b</td></tr><tr><td>c</td></tr></table>", "", "s a b c");

    [Fact]
    public void Margins_at_a_break_are_dropped_but_kept_after_a_forced_one()
    {
        var list = Printed.DisplayList(Printed.Page(Small,
            "<div style='height:95px'></div><p style='margin-top:30px'>a</p><p style='break-before:page;margin-top:30px'>b</p>"), new PrintOptions());
        var tops = list.Split('\n').Where(l => l.Contains("text", StringComparison.Ordinal)).Select(l => l.Trim().Split(' ')[2]).ToList();
        Assert.Equal(["28", "58"], tops);
    }

    [Fact]
    public void Margin_boxes_count_the_pages_and_carry_the_running_title()
    {
        const string boxes = "@page{@bottom-right{content:'page ' counter(page) ' of ' counter(pages)}@top-left{content:string(t)}}@page:first{@top-left{content:none}}h1{string-set:t content();break-before:page}";
        var printed = Printed.Print(Printed.Page(Small + boxes, "<p>a</p><h1>One</h1><p style='break-before:page'>b</p><h1>Two</h1>"));
        Assert.Equal(["a page 1 of 4", "One page 2 of 4 One", "b page 3 of 4 One", "Two page 4 of 4 Two"],
            Printed.Words(printed).Select(w => string.Join(' ', w)));
    }

    [Fact]
    public void A_picture_higher_than_a_page_stops_the_print_with_element_and_line()
    {
        var stopped = Assert.Throws<PaperException>(
            () => Printed.Print(Printed.Page(Small, "<p>a</p>\n<section>\n<svg width='10' height='500'></svg></section>")));
        Assert.Equal(("svg", 4), (stopped.Tag, stopped.Line));
        Assert.Contains("500 px high does not fit on a page of 100 px: <svg> line 4 in <section> line 3 in <body>", stopped.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_higher_than_a_page_stops_the_print() =>
        Assert.Equal("p", Assert.Throws<PaperException>(() => Printed.Print(Printed.Page(Small, "<p style='line-height:300px'>a</p>"))).Tag);

    [Fact]
    public void A_plain_box_higher_than_a_page_is_sliced()
    {
        var list = Printed.DisplayList(Printed.Page(Small, "<div style='height:250px;background:red'></div><p>end</p>"), new PrintOptions());
        Assert.Equal(3, list.Split('\n').Count(l => l.Contains("fill #ff0000", StringComparison.Ordinal)));
        Assert.Contains("page 3\n", list, StringComparison.Ordinal);
        Assert.DoesNotContain("page 4", list, StringComparison.Ordinal);
    }

    [Fact]
    public void Columns_side_by_side_are_split_each_at_its_own_line()
    {
        var body = "<div style='display:flex'><div style='flex:1'>" + Paragraph("a", 12) + "</div><div style='flex:1;line-height:13px'>" + Paragraph("b", 12)
            .Replace("<p>", "<p style='line-height:13px'>", StringComparison.Ordinal) + "</div></div>";
        Expect(body, Words("a", 1, 10) + " " + Words("b", 1, 7), Words("a", 11, 12) + " " + Words("b", 8, 12));
    }

    [Fact]
    public void A_new_page_inside_a_flex_row_is_reported() =>
        Assert.Equal("break-before",
            Assert.Single(Printed.Print("<div style='display:flex'><div><p>a</p><p style='break-before:page'>b</p></div></div>").Unsupported).Property);

    [Fact]
    public void Trailing_margins_make_no_page() => Expect("<div style='height:95px;margin-bottom:60px'>a</div>", "a");

    private static void Expect(string body, params string[] pages) =>
        Assert.Equal(pages, Printed.Words(Printed.Print(Printed.Page(Small, body))).Select(w => string.Join(' ', w)));

    private static string Paragraph(string word, int lines) => "<p>" + string.Join("<br>", Enumerable.Range(1, lines).Select(i => word + i)) + "</p>";

    private static string Words(string word, int from, int to) => string.Join(' ', Enumerable.Range(from, to - from + 1).Select(i => word + i));

    private static string Table(int rows) => "<table><thead><tr><th>No</th></tr></thead><tbody>"
        + string.Concat(Enumerable.Range(1, rows).Select(i => "<tr><td>r" + i + "</td></tr>")) + "</tbody></table>";
}
