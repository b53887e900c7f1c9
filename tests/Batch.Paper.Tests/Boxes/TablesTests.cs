namespace Batch.Paper.Tests.Boxes;

/// <summary>Where cells and their borders stand.</summary>
public sealed class TablesTests
{
    private static Dictionary<string, (double X, double Y)> Places(string body, string style = "") => Print.Texts(Print.Small(body, style))
        .ToDictionary(t => t.Text, t => (t.X, t.Y));

    [Fact]
    public void A_cell_over_two_columns_and_one_over_two_rows_leave_the_others_their_places()
    {
        var at = Places(
            "<table><tr><td rowspan='2'>tall</td><td colspan='2'>wide</td></tr><tr><td>b</td><td>c</td></tr><tr><td>d</td><td>e</td><td>f</td></tr></table>",
            "td { vertical-align: top }");
        Assert.Equal(at["tall"].X, at["d"].X);
        Assert.Equal(at["wide"].X, at["b"].X);
        Assert.Equal(at["b"].X, at["e"].X);
        Assert.Equal(at["c"].X, at["f"].X);
        Assert.Equal(at["tall"].Y, at["wide"].Y);
        Assert.Equal(at["wide"].Y + 20, at["b"].Y);
        Assert.Equal(at["b"].Y + 20, at["d"].Y);
    }

    [Fact]
    public void A_span_beyond_the_table_ends_with_it()
    {
        var at = Places("<table><tr><td rowspan='9'>a</td><td>b</td></tr><tr><td colspan='7'>c</td></tr></table><p>after</p>", "td { vertical-align: top }");
        Assert.Equal(at["b"].X, at["c"].X);
        Assert.Equal(at["c"].Y + 20, at["after"].Y);
    }

    [Fact]
    public void Columns_of_a_fixed_table_have_the_widths_given_and_share_the_rest()
    {
        var at = Places("<table style='table-layout:fixed;width:300px'><col style='width:100px'><tr><td>a</td><td>b</td><td>cccccccccccccc</td></tr></table>");
        Assert.Equal(100, at["b"].X - at["a"].X, 0.01);
        Assert.Equal(100, at["cccccccccccccc"].X - at["b"].X, 0.01);
    }

    [Fact]
    public void Automatic_columns_follow_their_content()
    {
        var at = Places("<table style='width:300px'><tr><td>a</td><td>a long text in the cell</td><td>z</td></tr></table>");
        Assert.True(at["a long text in the cell"].X - at["a"].X < 80);
        Assert.True(at["z"].X - at["a long text in the cell"].X > 150);
    }

    [Fact]
    public void Of_collapsed_borders_the_wider_one_is_drawn_once()
    {
        var shapes = Print.Painted(
            Print.Small("<table><tr><td style='border:1px solid #00ff00'>a</td><td style='border:3px solid #ff0000'>b</td></tr></table>"))
            .Single().OfType<Batch.Paper.Paint.DisplayItem.Shape>().ToList();
        Assert.NotEmpty(shapes);
        // The side they share is red; green stands on the three outer sides of the first cell only.
        Assert.Equal(3, shapes.Count(s => s.Fill == new Batch.Paper.Style.Colour(0, 255, 0, 1)));
        Assert.Equal(4, shapes.Count(s => s.Fill == new Batch.Paper.Style.Colour(255, 0, 0, 1)));
    }

    [Fact]
    public void Cells_are_aligned_in_their_row()
    {
        var at = Places("<table style='height:0'><tr><td style='height:100px'></td><td style='vertical-align:top'>t</td><td style='vertical-align:middle'>m</td><td style='vertical-align:bottom'>b</td></tr></table>");
        Assert.Equal(40, at["m"].Y - at["t"].Y, 1);
        Assert.Equal(80, at["b"].Y - at["t"].Y, 1);
    }

    [Fact]
    public void A_cell_with_a_height_of_its_own_is_aligned_within_it()
    {
        var at = Places("<table><tr><td style='height:100px;vertical-align:bottom'>b</td><td style='vertical-align:top'>t</td></tr></table>");
        Assert.Equal(80, at["b"].Y - at["t"].Y, 1);
    }

    [Fact]
    public void The_foot_of_a_table_stands_below_its_rows_wherever_it_is_written()
    {
        var at = Places("<table><tfoot><tr><td>foot</td></tr></tfoot><tbody><tr><td>body</td></tr></tbody></table>");
        Assert.True(at["foot"].Y > at["body"].Y);
    }
}
