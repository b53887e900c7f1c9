using Batch.Flight.Week;

namespace Batch.Sheets.Views;

/// <summary>Names of places in a page, for links.</summary>
internal static class LegAnchor
{
    /// <summary>Such as <c>trip-1-leg-2</c>.</summary>
    /// <param name="trip">Place where the trip begins.</param>
    /// <param name="leg">The leg.</param>
    public static string Of(string trip, LegKey leg) => trip + "-leg-" + Mark(leg);

    /// <summary>What tells the leg from others of its trip, such as <c>2</c>, or <c>row-5</c> where its number could not be read.</summary>
    /// <param name="leg">The leg.</param>
    public static string Mark(LegKey leg) =>
        leg.Row > 0
            ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"row-{leg.Row}")
            : leg.Number.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
