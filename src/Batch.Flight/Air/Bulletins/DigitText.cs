namespace Batch.Flight.Air.Bulletins;

/// <summary>Tests of characters in groups.</summary>
internal static class DigitText
{
    /// <summary>Whether there is nothing but the digits 0 to 9.</summary>
    public static bool ContainsOnlyDigits(this ReadOnlySpan<char> text) => !text.ContainsAnyExceptInRange('0', '9');
}
