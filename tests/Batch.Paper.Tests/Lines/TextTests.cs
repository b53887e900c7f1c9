namespace Batch.Paper.Tests.Lines;

/// <summary>Characters, blanks, and the ends of lines.</summary>
public sealed class TextTests
{
    private static List<string> Lines(string body, string style = "") =>
        [.. Print.Texts(Print.Small(body, style)).GroupBy(t => (t.Page, t.Y)).Select(line => string.Concat(line.Select(t => t.Text)).TrimEnd())];

    [Fact]
    public void A_character_no_face_has_is_a_box_and_is_told_and_the_rest_is_read()
    {
        var printed = Printed.Print(Print.Small("<p>before 漢 after</p>"));
        Assert.Contains("U+6F22", Assert.Single(printed.Unsupported).Text, StringComparison.Ordinal);
        Assert.Equal(["before", "\uFFFD", "after"], Printed.Words(printed)[0]);
    }

    [Fact]
    public void Letters_written_from_right_to_left_are_told_and_never_reversed()
    {
        var printed = Printed.Print(Print.Small("<p>a שלום b</p>"));
        Assert.NotEmpty(printed.Unsupported);
        Assert.Equal(["a", "\uFFFD\uFFFD\uFFFD\uFFFD", "b"], Printed.Words(printed)[0]);
    }

    [Theory]
    [InlineData("<p style='margin-left:400px'>word</p>", "right")]
    [InlineData("<ol style='margin-left:400px'><li><svg width='5' height='5'></svg></li></ol>", "right")]
    [InlineData("<ol style='margin-left:200px'><li><svg width='5' height='5'></svg></li></ol>", "")]
    public void Text_and_numbers_of_lists_off_the_page_are_told(string body, string edge)
    {
        var told = Printed.Print(Print.Small(body)).Unsupported.Where(u => u.Text.Contains("runs off", StringComparison.Ordinal)).ToList();
        if (edge.Length == 0) Assert.Empty(told);
        else Assert.Contains("off the " + edge, Assert.Single(told).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Combining_marks_are_composed() =>
        Assert.Equal(["Žluťoučký", "kůň"], Printed.Words(Printed.Print(Print.Small("<p>Z\u030Clut\u030Couc\u030Cky\u0301 ku\u030An\u030C</p>")))[0]);

    [Fact]
    public void A_soft_hyphen_shows_only_where_a_line_ends()
    {
        Assert.Equal(["extraordinary"], Lines("<p>extra&shy;ordinary</p>"));
        Assert.Equal(["extra-", "ordinary"], Lines("<p style='width:60px'>extra&shy;ordinary</p>"));
    }

    [Fact]
    public void A_hyphen_ends_a_line_and_a_blank_that_does_not_break_does_not()
    {
        Assert.Equal(["one-", "two"], Lines("<p style='width:40px'>one-two</p>"));
        Assert.Equal(["12\u00A0400", "lb"], Lines("<p style='width:40px'>12&nbsp;400 lb</p>"));
    }

    /// <summary>The ends of lines as Chromium 156 has them in a box of no width.</summary>
    [Theory]
    [InlineData("week.xlsx/Legs/F7", "week.xlsx/Legs/F7")]
    [InlineData("and/or", "and/or")]
    [InlineData("a/é", "a/|é")]
    [InlineData("135.223(a)(3)", "135.223(a)|(3)")]
    [InlineData("load(a)", "load(a)")]
    [InlineData("single-engine", "single-|engine")]
    [InlineData("06:00–22:00", "06:00–|22:00")]
    [InlineData("why?because", "why?|because")]
    [InlineData("2026-12-07", "2026-|12-|07")]
    [InlineData("120-27F", "120-|27F")]
    [InlineData("(-5)", "(-5)")]
    [InlineData("=-20", "=-20")]
    [InlineData("<b>9</b>-07", "9-|07")]
    public void A_word_is_parted_where_browsers_part_it(string word, string lines) =>
        Assert.Equal(lines, string.Join('|', Lines("<p style='width:0'>" + word + "</p>")));

    [Fact]
    public void A_long_word_sticks_out_unless_it_may_be_broken_anywhere()
    {
        var word = new string('m', 60);
        Assert.Equal([word], Lines("<p>" + word + "</p>"));
        var broken = Lines("<p style='overflow-wrap:anywhere'>" + word + "</p>");
        Assert.True(broken.Count > 1);
        Assert.Equal(word, string.Concat(broken));
    }

    [Fact]
    public void Blanks_are_collapsed_unless_they_are_kept()
    {
        Assert.Equal(["a b c"], Lines("<p>  a \n b\t <span> c </span> </p>"));
        Assert.Equal(["a   b", " c"], Lines("<p style='white-space:pre'>a   b\n c</p>"));
        Assert.Equal(["a b", "c"], Lines("<p style='white-space:pre-line'>a   b\n c</p>"));
    }

    [Fact]
    public void A_line_that_must_not_wrap_does_not()
    {
        var text = string.Join(' ', Enumerable.Repeat("word", 30));
        Assert.Single(Lines("<p style='white-space:nowrap'>" + text + "</p>"));
        Assert.True(Lines("<p>" + text + "</p>").Count > 1);
    }

    [Fact]
    public void Text_is_set_in_the_case_asked_for() =>
        Assert.Equal(["ALPHA beta Gamma"], Lines("<p><span style='text-transform:uppercase'>alpha</span> <span style='text-transform:lowercase'>BETA</span> <span style='text-transform:capitalize'>gamma</span></p>"));

    [Fact]
    public void Figures_have_one_width_so_that_columns_of_numbers_align()
    {
        var texts = Print.Painted(Print.Small("<p>0123456789</p>")).Single().OfType<Batch.Paper.Paint.DisplayItem.Text>().Single();
        Assert.Single(texts.Advances.Select(a => Math.Round(a, 6)).Distinct());
    }

    [Fact]
    public void Pairs_are_kerned()
    {
        double Width(string text) => Print.Painted(Print.Small("<p>" + text + "</p>")).Single().OfType<Batch.Paper.Paint.DisplayItem.Text>()
            .Single().Advances.Sum();
        Assert.True(Width("AV") < Width("A") + Width("V") - 0.1);
    }

    [Theory]
    [InlineData("left", 0)]
    [InlineData("center", 0.5)]
    [InlineData("right", 1)]
    public void Lines_are_aligned(string align, double share)
    {
        var text = Print.Painted(Print.Small($"<p style='text-align:{align}'>word</p>")).Single().OfType<Batch.Paper.Paint.DisplayItem.Text>().Single();
        Assert.Equal(5 / 25.4 * 96 + share * (90 / 25.4 * 96 - text.Advances.Sum()), text.Place.E, 1.1);
    }

    [Fact]
    public void Justified_lines_reach_both_edges_except_the_last()
    {
        var pieces = Print.Painted(Print.Small("<p style='text-align:justify'>" + string.Join(' ', Enumerable.Repeat("justified", 9)) + "</p>")).Single()
            .OfType<Batch.Paper.Paint.DisplayItem.Text>().ToList();
        Assert.Equal(90 / 25.4 * 96, pieces[0].Advances.Sum(), 1.1);
        Assert.True(pieces[^1].Advances.Sum() < 300);
    }
}
