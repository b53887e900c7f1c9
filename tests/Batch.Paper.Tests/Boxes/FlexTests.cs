namespace Batch.Paper.Tests.Boxes;

/// <summary>Flex rows and simple grids.</summary>
public sealed class FlexTests
{
    private static Dictionary<string, (double X, double Y)> Places(string body) => Print.Texts(Print.Small(body))
        .ToDictionary(t => t.Text, t => (X: t.X - 5 / 25.4 * 96, t.Y));

    [Fact]
    public void What_may_grow_takes_the_rest_in_the_shares_given()
    {
        var at =
            Places("<div style='display:flex;width:300px'><div style='flex:1 1 0'>a</div><div style='flex:2 1 0'>b</div><div style='width:60px'>c</div></div>");
        Assert.Equal(80, at["b"].X - at["a"].X, 0.1);
        Assert.Equal(240, at["c"].X - at["a"].X, 0.1);
    }

    [Fact]
    public void Gaps_and_the_room_between_are_kept()
    {
        var at = Places("<div style='display:flex;width:300px;justify-content:space-between'><div style='width:50px'>a</div><div style='width:50px'>b</div><div style='width:50px'>c</div></div>");
        Assert.Equal(125, at["b"].X - at["a"].X, 0.1);
        Assert.Equal(250, at["c"].X - at["a"].X, 0.1);
    }

    [Fact]
    public void What_does_not_fit_wraps()
    {
        var at = Places("<div style='display:flex;flex-wrap:wrap;width:300px;gap:4px'><div style='width:148px'>a</div><div style='width:148px'>b</div><div style='width:148px'>c</div></div>");
        Assert.Equal(152, at["b"].X - at["a"].X, 0.1);
        Assert.Equal(at["a"].X, at["c"].X, 0.1);
        Assert.Equal(24, at["c"].Y - at["a"].Y, 0.1);
    }

    [Fact]
    public void Items_are_aligned_across_the_row()
    {
        var at = Places("<div style='display:flex;align-items:center;height:60px'><div>a</div><div style='align-self:flex-end'>b</div><div style='align-self:flex-start'>c</div></div>");
        Assert.Equal(20, at["a"].Y - at["c"].Y, 1);
        Assert.Equal(40, at["b"].Y - at["c"].Y, 1);
    }

    [Fact]
    public void Grid_columns_are_lengths_and_shares()
    {
        var at = Places("<div style='display:grid;grid-template-columns:60px 1fr 2fr;gap:0 30px;width:300px'><div>a</div><div>b</div><div>c</div><div style='grid-column:span 2'>d</div><div>e</div></div>");
        Assert.Equal(90, at["b"].X - at["a"].X, 0.1);
        Assert.Equal(90 + 60 + 30, at["c"].X - at["a"].X, 0.1);
        Assert.Equal(at["c"].X, at["e"].X, 0.1);
        Assert.Equal(20, at["d"].Y - at["a"].Y, 0.1);
    }
}
