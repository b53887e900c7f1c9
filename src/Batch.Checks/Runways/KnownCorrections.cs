using Batch.Checks.Rules;
using Batch.Flight.Fleet;
using Batch.Flight.Plan;

namespace Batch.Checks.Runways;

/// <summary>Whether wind, slope, surface and water are in the distances, and whether they are such as the flight manual's figures cover.</summary>
internal sealed class KnownCorrections : ICheck
{
    /// <inheritdoc/>
    public string Id => "PERF-06";

    /// <inheritdoc/>
    public string Title => "Wind, slope and surface in the distances";

    /// <inheritdoc/>
    public ImmutableArray<string> Needs => ["Takeoff and Landing table", "wind at the departure", "wind at the destination", "Runways: surface",
        "Runways: slope", "Types: correction for slope", "Types: correction for a tailwind", "Types: correction for a wet runway"];

    /// <inheritdoc/>
    public string Actor => "captain";

    /// <inheritdoc/>
    public ImmutableArray<string> Tunable => ["slope"];

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(LegUnderCheck leg, Ruling ruling) => Side(leg, ruling, isTakeoff: true).Concat(Side(leg, ruling, isTakeoff: false));

    private static IEnumerable<Finding> Side(LegUnderCheck leg, Ruling ruling, bool isTakeoff)
    {
        var (use, missing) = Distances.UseOf(leg, ruling, isTakeoff);
        if (use is null)
        {
            return missing is null ? [] : [missing];
        }

        var place = $"{(isTakeoff ? leg.Plan.From.Ident : leg.Plan.To.Ident)} runway {use.Runway.Ident}";
        var slope = ruling.Amount("slope");
        var steep = ruling.AtMost($"The slope of {place}", Math.Abs(use.Runway.SlopePercent), slope.Value, "%", "limit without demonstrated data", slope,
            use.Runway.Origin.Cell(nameof(Runway.SlopePercent)));
        var left = Left(leg, ruling, use, isTakeoff, place).ToImmutableArray();
        return left.IsEmpty
            ? [steep, ruling.Pass($"The {(isTakeoff ? "takeoff" : "landing")} distance at {place} holds {WindHeld(use)}, its slope and its surface.",
                ruling.Condition("corrections"))]
            : [steep, .. left];
    }

    /// <summary>What of the wind is in the distance.</summary>
    private static string WindHeld(RunwayUse use) =>
        use.Headwind.Value < -LeastWindKt ? $"one and a half times its {Words.Amount(-use.Headwind.Value, "kt")} of tailwind"
        : use.Headwind.Value <= LeastWindKt ? "its wind (none along the runway)"
        : use.Factors.Any(factor => factor.Name.Contains("headwind", StringComparison.Ordinal))
            ? $"half of its {Words.Amount(use.Headwind.Value, "kt")} of headwind"
        : use.IsWindFromAloft ? "none of its headwind (the wind is known from aloft alone)"
        : "none of its headwind (the Types sheet gives no correction for one that leaves a distance)";

    /// <summary>What the distance does not hold.</summary>
    private static IEnumerable<Finding> Left(LegUnderCheck leg, Ruling ruling, RunwayUse use, bool isTakeoff, string place)
    {
        var by = ruling.Condition("corrections");
        var own = leg.Type.Corrections;
        var word = isTakeoff ? "takeoff" : "landing";
        var surface = use.Runway.Origin.Cell(nameof(Runway.Surface));
        Finding Without(string what, string correction, string field) => ruling.Trips(by,
            $"{what} at {place}, and the Types sheet gives no {word} correction for {correction}: the distance is without it.", leg.TypeCell(field));

        if (use.IsWindAssumed)
        {
            yield return ruling.NotChecked(
                $"no wind is known at {(isTakeoff ? leg.Plan.From.Ident : leg.Plan.To.Ident)}, and the {word} distance at {place} is for calm");
        }

        if (use.Runway.Surface is null)
        {
            yield return ruling.NotChecked($"the surface of {place} is not given", surface);
        }
        else if (use.Runway.Surface == RunwaySurface.Gravel)
        {
            yield return ruling.Trips(
                by, $"{place} is gravel, for which the books hold no correction: the {word} distance is that of a paved runway.", surface);
        }

        var against = isTakeoff ? use.Runway.SlopePercent : -use.Runway.SlopePercent;
        if (against > 0 && (isTakeoff ? own.TakeoffUpslopePerPercent : own.LandingDownslopePerPercent) is null)
        {
            yield return Without($"{Words.Amount(against, "%")} of {(isTakeoff ? "upslope" : "downslope")}", "slope",
                isTakeoff ? nameof(RunwayCorrections.TakeoffUpslopePerPercent) : nameof(RunwayCorrections.LandingDownslopePerPercent));
        }

        if (-use.Headwind.Value is var tailwind && tailwind > LeastWindKt && (isTakeoff ? own.TakeoffTailwindPerKnot : own.LandingTailwindPerKnot) is null)
        {
            yield return Without($"{Words.Amount(tailwind, "kt")} of tailwind", "a tailwind",
                isTakeoff ? nameof(RunwayCorrections.TakeoffTailwindPerKnot) : nameof(RunwayCorrections.LandingTailwindPerKnot));
        }

        if (use.IsWet && (isTakeoff ? own.TakeoffWet : own.LandingWet) is null)
        {
            yield return Without("Rain", "a wet runway", isTakeoff ? nameof(RunwayCorrections.TakeoffWet) : nameof(RunwayCorrections.LandingWet));
        }
    }

    /// <summary>A wind along the runway below this is rounding [kt].</summary>
    private const double LeastWindKt = 0.05;
}
