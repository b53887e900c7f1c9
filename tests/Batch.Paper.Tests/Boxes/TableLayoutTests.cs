using Batch.Paper.Paint;

namespace Batch.Paper.Tests.Boxes;

/// <summary>Widths of tables in a column 400 px wide; places are the left edges of the cells' words.</summary>
public sealed class TableLayoutTests
{
    private const string Style =
        "@page{size:440px 300px;margin:20px}body{margin:0;font-size:10px;line-height:12px}table{border-collapse:collapse}td{padding:0}";

    [Fact]
    public void A_column_of_all_the_width_leaves_the_others_what_they_need()
    {
        var lefts = Lefts("<table><tr><td style='width:100%'>a</td><td style='white-space:nowrap'>b</td></tr></table>");
        Assert.Equal(20, lefts["a"]);
        Assert.InRange(lefts["b"], 405, 415);
    }

    [Fact]
    public void Fixed_layout_follows_the_first_row_and_shares_the_rest() =>
        Assert.Equal([20, 120, 270],
            Lefts("<table style='table-layout:fixed;width:400px'><tr><td style='width:100px'>a</td><td>b</td><td>c</td></tr><tr><td>a long text that wraps</td></tr></table>")
                .Where(l => l.Key.Length == 1 && l.Key is "a" or "b" or "c").Select(l => l.Value));

    [Fact]
    public void A_table_without_a_width_is_as_wide_as_its_text() => Assert.InRange(Lefts("<table><tr><td>a</td><td>b</td></tr></table>")["b"], 25, 28);

    [Fact]
    public void Columns_share_a_given_width_by_what_their_text_wants()
    {
        var lefts = Lefts("<table style='width:400px'><tr><td>wwwwwwwwww</td><td>v</td></tr></table>");
        Assert.InRange(lefts["v"], 360, 410);
    }

    [Fact]
    public void A_cell_with_a_height_is_a_least_height_and_its_text_can_stand_at_its_foot()
    {
        var baselines = Texts("<table><tr><td style='height:50px;vertical-align:bottom'>a</td><td style='vertical-align:top'>b</td></tr></table>")
            .ToDictionary(t => string.Concat(t.Texts), t => t.Place.F);
        Assert.Equal(38, baselines["a"] - baselines["b"]);
    }

    private static Dictionary<string, double> Lefts(string body) => Texts(body).GroupBy(t => string.Concat(t.Texts))
        .ToDictionary(g => g.Key, g => Math.Round(g.First().Place.E, 2));

    private static IEnumerable<DisplayItem.Text> Texts(string body) =>
        Printed.Printer.Painted(Printed.Page(Style, body), new PrintOptions()).Pages.SelectMany(p => p).OfType<DisplayItem.Text>();
}
