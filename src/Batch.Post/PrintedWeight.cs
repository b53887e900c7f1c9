namespace Batch.Post;

/// <summary>The unit in which weights, kept in pounds, are written for people.</summary>
/// <param name="Unit">Its sign, such as <c>kg</c>.</param>
/// <param name="PerPound">How many of it are in a pound, above 0.</param>
public sealed record PrintedWeight(string Unit, double PerPound)
{
    /// <summary>Pounds.</summary>
    public static readonly PrintedWeight Pounds = new("lb", 1);

    /// <summary>A weight as a whole number of the unit.</summary>
    /// <param name="pounds">The weight [lb].</param>
    public int Whole(int pounds) => (int)Math.Round(pounds * PerPound, MidpointRounding.AwayFromZero);
}
