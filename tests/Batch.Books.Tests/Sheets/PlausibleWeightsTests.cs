using Batch.Books.Tests.Support;

namespace Batch.Books.Tests.Sheets;

/// <summary>Weights that few people of their kind have are asked about at their cell; the limits are common practice, no source.</summary>
public sealed class PlausibleWeightsTests
{
    [Theory]
    [InlineData("child", "17 lb", "Weight of 17 lb is little for a child of two years or more; is it an infant, or was it given in another unit?")]
    [InlineData("child", "20 lb", null)]
    [InlineData("infant", "4 lb", "Weight of 4 lb is little for an infant; was it given in another unit?")]
    [InlineData("infant", "5 lb", null)]
    [InlineData("infant", "17 lb", null)]
    public void Of_a_passenger(string category, string weight, string? doubt)
    {
        var week = GoodBooks.Read((_, book) =>
        {
            book.Set("Manifest", 1, "Category", category);
            book.Set("Manifest", 1, "Weight", weight);
        });
        Assert.Equal(doubt, week.Problems.FirstOrDefault(problem => problem.Text.StartsWith("Weight of", StringComparison.Ordinal))?.Text);
    }

    [Theory]
    [InlineData("Man weight", "30 lb", "Man weight of 30 lb is little for an adult; was it given in another unit?")]
    [InlineData("Man weight", "90 lb", null)]
    [InlineData("Pilot weight", "401 lb", "Pilot weight of 401 lb is much for an adult; was it given in another unit?")]
    [InlineData("Child weight", "17 lb", "Child weight of 17 lb is little for a child of two years or more; was it given in another unit?")]
    [InlineData("Infant weight", "61 lb", "Infant weight of 61 lb is much for an infant; was it given in another unit?")]
    [InlineData("Bag weight", "20 lb", null)]
    public void Of_the_standard_weights(string item, string weight, string? doubt)
    {
        var week = GoodBooks.Read((operatorBook, _) => operatorBook.Add("Operator", item, weight));
        Assert.Equal(doubt, week.Problems.FirstOrDefault(problem => problem.Text.StartsWith(item, StringComparison.Ordinal))?.Text);
    }
}
