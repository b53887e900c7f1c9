namespace Batch.Flight.Plan;

/// <summary>Words made into a sentence.</summary>
internal static class PlainSentence
{
    /// <summary>The words with a capital letter in front and a full stop behind.</summary>
    /// <param name="words">The words, not empty.</param>
    public static string Of(string words) => char.ToUpperInvariant(words[0]) + words[1..] + ".";
}
