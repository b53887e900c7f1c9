using Batch.Checks.Rules;
using Batch.Flight.Plan;
using Batch.Flight.Week;

namespace Batch.Checks.Runways;

/// <summary>Takeoff and landing distances turned into answers.</summary>
internal static class Distances
{
    /// <summary>The computed use, or the answer that there is none.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="ruling">The ruling.</param>
    /// <param name="isTakeoff">Whether the takeoff is meant; else the landing.</param>
    public static (RunwayUse? Use, Finding? Missing) UseOf(LegUnderCheck leg, Ruling ruling, bool isTakeoff) =>
        (isTakeoff ? leg.Plan.Departure : leg.Plan.Arrival) switch
        {
            RunwayResult.Computed computed => (computed.Use, null),
            RunwayResult.NotComputed missing => (null, ruling.NotChecked(
                $"the {(isTakeoff ? "takeoff at " + leg.Plan.From.Ident : "landing at " + leg.Plan.To.Ident)} could not be computed ({missing.Why.TrimEnd('.')})",
                RunwayCell(leg, isTakeoff))),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>A distance against a declared distance.</summary>
    /// <param name="leg">The leg.</param>
    /// <param name="ruling">The ruling.</param>
    /// <param name="use">The use of the runway.</param>
    /// <param name="isTakeoff">Whether the takeoff is meant; else the landing.</param>
    /// <param name="factor">Factor on the corrected distance.</param>
    /// <param name="available">Distance available.</param>
    /// <param name="availableName">Its name.</param>
    /// <param name="by">Amount the factor comes from.</param>
    public static Finding Compare(
        LegUnderCheck leg, Ruling ruling, RunwayUse use, bool isTakeoff, double factor, Feet available, string availableName, RuleAmount? by)
    {
        var airport = isTakeoff ? leg.Plan.From.Ident : leg.Plan.To.Ident;
        var what = (isTakeoff ? "The takeoff" : "The landing") + $" distance at {airport} runway {use.Runway.Ident}"
            + (factor > 1 ? $" times {Words.Amount(factor, "")}" : "");
        return OnKnownAir(ruling, use, airport, ruling.AtMost(what, use.CorrectedDistance.Value * factor, available.Value, "ft", availableName, by,
            RunwayCell(leg, isTakeoff), use.Runway.Origin.ToString()));
    }

    /// <summary>
    /// The answer where wind and temperature are known; else a pass becomes "not checked", because calm or the standard temperature was taken.
    /// </summary>
    /// <param name="ruling">The ruling.</param>
    /// <param name="use">The use of the runway.</param>
    /// <param name="airport">The airport.</param>
    /// <param name="answer">The answer for the air taken.</param>
    public static Finding OnKnownAir(Ruling ruling, RunwayUse use, string airport, Finding answer)
    {
        var missing = new List<string>();
        if (use.IsTemperatureAssumed)
        {
            missing.Add("temperature");
        }

        if (use.IsWindAssumed)
        {
            missing.Add("wind");
        }

        return answer.Verdict != Verdict.Pass || missing.Count == 0 ? answer
            : ruling.NotChecked($"no {Words.List(missing).Replace(" and ", " and no ", StringComparison.Ordinal)} is known at {airport}; with {Words.List(missing.Select(one => one == "wind" ? "calm" : "the standard temperature"))}: {answer.Text.TrimEnd('.')}", [.. answer.Cells]);
    }

    private static string RunwayCell(LegUnderCheck leg, bool isTakeoff) => leg.Cell(isTakeoff ? nameof(Leg.DepartureRunway) : nameof(Leg.ArrivalRunway));
}
