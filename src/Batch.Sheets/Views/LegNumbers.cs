using System.Globalization;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Sheets.Views;

/// <summary>The legs of a trip that a manifest or cargo line is for.</summary>
internal static class LegNumbers
{
    /// <summary>Such as <c>1, 2</c>, or <c>all</c>.</summary>
    public static string Of(LegSelection selection, ImmutableArray<LegPlan> legs)
    {
        var meant = legs.Select(leg => leg.Key.Number).Where(selection.Contains).ToArray();
        return meant.Length == legs.Length ? "all" : string.Join(", ", meant.Select(number => number.ToString(CultureInfo.InvariantCulture)));
    }
}
