using Batch.Checks.Remedies;
using Batch.Checks.Rules;

namespace Batch.Checks.Tests.Rules;

/// <summary>A level in a sentence has its thousands parted; in the cell to type it has not.</summary>
public sealed class LevelWordsTests
{
    [Theory]
    [InlineData(900, "900 ft", "900 ft")]
    [InlineData(9000, "9,000 ft", "9000 ft")]
    [InlineData(17_000, "17,000 ft", "17000 ft")]
    [InlineData(18_000, "FL180", "FL180")]
    [InlineData(23_100, "23,100 ft", "23100 ft")]
    public void A_level_is_said_and_typed(double feet, string said, string typed) =>
        Assert.Equal((said, typed), (Words.Level(new Feet(feet)), Typed.Level(new Feet(feet))));
}
