using Batch.Checks.Remedies.Kinds;
using Batch.Flight.Week;

namespace Batch.Checks.Tests.Remedies;

/// <summary>What of cargo and bags stays behind, and how it is said.</summary>
public sealed class GoodsTests
{
    private static Goods.Row Cargo(string what, double pounds) =>
        new(new Pounds(pounds), new CargoLine { Trip = "T1", Legs = LegSelection.All, What = what, Weight = new Pounds(pounds) }, null, "");

    /// <summary>60 lb off one piece of 260 lb: half a motor flies nowhere. 260 lb off it leave it behind whole.</summary>
    [Theory]
    [InlineData(60, "Leave 60 lb of cargo or bags behind, Winch motor in part if it can be parted")]
    [InlineData(260, "Leave 260 lb of cargo or bags behind")]
    public void Cargo_that_stays_behind_in_part_is_named(double off, string text) =>
        Assert.Equal(text, Goods.Off([Cargo("Winch motor", 260)], new Pounds(off))?.Text);

    [Fact]
    public void The_lightest_row_that_is_enough_gives_it() =>
        Assert.Equal("Leave 60 lb of cargo or bags behind", Goods.Off([Cargo("Winch motor", 260), Cargo("Boxes", 60)], new Pounds(60))?.Text);

    [Fact]
    public void More_than_there_is_cannot_stay_behind() => Assert.Null(Goods.Off([Cargo("Winch motor", 260)], new Pounds(265)));
}
