using System.Globalization;
using Batch.Checks;

namespace Batch.Cli.Pipeline;

/// <summary>How many legs of a week are in which state, in words.</summary>
internal static class LegCounts
{
    /// <summary>Such as <c>32 legs: 20 pass, 3 caution, 8 fail, 1 unplanned</c>.</summary>
    /// <param name="week">The week.</param>
    public static string Of(CheckedWeek week)
    {
        int Count(LegState state) => week.Legs.Count(leg => leg.State == state);
        return string.Create(CultureInfo.InvariantCulture,
            $"{week.Legs.Length} {(week.Legs.Length == 1 ? "leg" : "legs")}: {Count(LegState.Pass)} pass, {Count(LegState.Caution)} caution, {Count(LegState.Fail)} fail, {Count(LegState.Unplanned)} unplanned");
    }
}
