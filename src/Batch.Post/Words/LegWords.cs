namespace Batch.Post.Words;

/// <summary>Sentences about whole legs, without the full stop.</summary>
internal static class LegWords
{
    public static string Added(LegFacts leg) => $"added, {Journey(leg)}, {leg.Aircraft}";

    public static string Cancelled(LegFacts leg) => $"cancelled, was {Journey(leg)}";

    public static string Journey(LegFacts leg) => $"{LocalTimes.DayAndClock(LocalTimes.At(leg.OffBlocks, leg.FromZone))} {leg.From} to {leg.To}";
}
