namespace Batch.Sheets.Views;

/// <summary>Names of places in a page, for links.</summary>
internal static class LegAnchor
{
    /// <summary>Such as <c>trip-1-leg-2</c>.</summary>
    /// <param name="trip">Place where the trip begins.</param>
    /// <param name="number">Number of the leg.</param>
    public static string Of(string trip, int number) => trip + "-leg-" + number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
