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
    [InlineData(12, "Leave 60 lb of cargo or bags behind, Winch motor in part if it can be parted")]
    [InlineData(52, "Leave 260 lb of cargo or bags behind")]
    public void Cargo_that_stays_behind_in_part_is_named(int steps, string text) =>
        Assert.Equal(text, Goods.Off([Cargo("Winch motor", 260)], steps, WeightUnit.Pounds)?.Text);

    [Fact]
    public void The_lightest_row_that_is_enough_gives_it() =>
        Assert.Equal("Leave 60 lb of cargo or bags behind", Goods.Off([Cargo("Winch motor", 260), Cargo("Boxes", 60)], 12, WeightUnit.Pounds)?.Text);

    [Fact]
    public void More_than_there_is_cannot_stay_behind() => Assert.Null(Goods.Off([Cargo("Winch motor", 260)], 53, WeightUnit.Pounds));

    /// <summary>Of 90 kg (198.416 lb), 28 kg in steps of 2 kg: 62 kg are typed, no digit more.</summary>
    [Fact]
    public void Kilograms_are_left_behind_and_typed_in_whole_kilograms()
    {
        var edit = Goods.Off([Cargo("Winch motor", Pounds.FromKilograms(90).Value)], 14, WeightUnit.Kilograms);
        Assert.Equal("Leave 62 lb of cargo or bags behind, Winch motor in part if it can be parted", edit?.Text);
        Assert.EndsWith(": 62 kg)", edit?.Sentence, StringComparison.Ordinal);
    }

    /// <summary>30 lb are 13.608 kg; less 2 kg are 11.608 kg: 11.6 kg are typed and tried, so that the whole 2 kg stay behind.</summary>
    [Fact]
    public void What_is_left_of_pounds_is_typed_no_heavier_than_it_was_tried()
    {
        var edit = Goods.Off([Cargo("Winch motor", 30)], 1, WeightUnit.Kilograms);
        Assert.EndsWith(": 11.6 kg)", edit?.Sentence, StringComparison.Ordinal);
        Assert.Equal(11.6, WeightUnit.Kilograms.Of(Assert.Single(edit?.Cargo ?? []).After?.Weight ?? Pounds.Zero), 9);
    }

    /// <summary>45 steps of 2 kg are all of 90 kg, whatever the last digit of the conversion.</summary>
    [Fact]
    public void All_kilograms_can_stay_behind()
    {
        ImmutableArray<Goods.Row> rows = [Cargo("Winch motor", Pounds.FromKilograms(90).Value)];
        Assert.Equal(45, Goods.MostSteps(rows, WeightUnit.Kilograms));
        Assert.Null(Assert.Single(Goods.Off(rows, 45, WeightUnit.Kilograms)?.Cargo ?? []).After);
    }
}
